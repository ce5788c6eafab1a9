import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { pageWords } from '../words.ts';

type Loaded<P> = { readonly part: ComponentType<P> } | 'loading' | 'failed';

/** A part of the page that is loaded when it is first drawn; says that it is on its way, and what to do where it does not come. */
export function lazily<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  let kept: ComponentType<P> | null = null;
  return function Lazy(props: P) {
    const [loaded, setLoaded] = useState<Loaded<P>>(() => (kept ? { part: kept } : 'loading'));
    useEffect(() => {
      if (loaded !== 'loading') return;
      load().then(
        (part) => {
          kept = part;
          setLoaded({ part });
        },
        () => setLoaded('failed'),
      );
    }, [loaded]);
    if (loaded === 'loading') return <p role="status">{pageWords.lazy.loading}</p>;
    if (loaded === 'failed') {
      return (
        <div role="alert">
          <p>{pageWords.lazy.failed}</p>
          <button type="button" class="button" onClick={() => setLoaded('loading')}>
            {pageWords.lazy.again}
          </button>
        </div>
      );
    }
    const Part = loaded.part;
    return <Part {...props} />;
  };
}
