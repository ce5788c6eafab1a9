import { useEffect, useState } from 'preact/hooks';
import type { Store } from './store.ts';

/** What the store holds; the part is drawn again when it changes. */
export function useStore<S extends object>(store: Store<S>): S {
  const [state, setState] = useState(store.get());
  useEffect(() => {
    setState(store.get());
    return store.listen(() => setState(store.get()));
  }, [store]);
  return state;
}
