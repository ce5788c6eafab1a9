import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { createStore, type Store } from '../store.ts';
import { useStore } from '../use-store.ts';
import { type Comfort, standardComfort } from './settings.ts';

/** The settings of this device, for every part of the page. */
export const ComfortContext = createContext<Store<Comfort>>(createStore(standardComfort));

/** The settings as they are now, and how to change them. */
export function useComfort(): readonly [Comfort, (change: Partial<Comfort>) => void] {
  const store = useContext(ComfortContext);
  return [useStore(store), store.set];
}
