import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { errorIn } from '../../src/core/words/errors.ts';
import { coreWords, pageWords } from '../words.ts';

/** Why the server refused something: what was expected, what came, what is safe, what to do next. */
export function Refusal({ error, onPutAway }: { readonly error: ErrorReport; readonly onPutAway: () => void }) {
  const words = pageWords.refusal;
  const { says, expected, came, next } = errorIn(error, coreWords);
  return (
    <section class="refusal" role="alert">
      <h2>{words.heading}</h2>
      <p>{says}</p>
      <p>
        {words.expected}: {expected}. {words.came}: {came}.
      </p>
      <p>{words.safe}</p>
      <p>
        <b>{next}</b> <code>{error.code}</code>
      </p>
      <button type="button" class="button" onClick={onPutAway}>
        {words.putAway}
      </button>
    </section>
  );
}
