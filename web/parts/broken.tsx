import type { ComponentChildren } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import { pageWords } from '../words.ts';

/** Shows its children; where drawing them fails, says so, what is safe and what to do, instead of an empty page. */
export function UnlessBroken({ children }: { readonly children: ComponentChildren }) {
  const [error] = useErrorBoundary();
  if (error === undefined) return <>{children}</>;
  const words = pageWords.broken;
  return (
    <section class="refusal" role="alert">
      <h2>{words.heading}</h2>
      <p>{words.safe}</p>
      <p>
        <b>{words.next}</b>
      </p>
      <button type="button" class="button is-main" onClick={() => location.reload()}>
        {pageWords.status.reload}
      </button>
    </section>
  );
}
