import type { TermView } from '../../src/core/dialogue/view-types.ts';
import { Fold } from './fold.tsx';

/** The trade terms just said: a tap on one opens its explanation. */
export function Terms({ terms }: { readonly terms: readonly TermView[] }) {
  return (
    <>
      {terms.map(({ id, word, text }) => (
        <Fold key={id} title={`${word}?`} class="fold term">
          <p>{text}</p>
        </Fold>
      ))}
    </>
  );
}
