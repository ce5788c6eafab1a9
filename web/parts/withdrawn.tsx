import { pageWords } from '../words.ts';

/** Stands where a spray-today stood that has grown too old. */
export function Withdrawn({ onLookAgain }: { readonly onLookAgain: () => void }) {
  const words = pageWords.verdict;
  return (
    <section class="withdrawn" role="alert">
      <h2 data-heading="verdict" tabIndex={-1}>
        {words.withdrawn}
      </h2>
      <p>{words.withdrawnWhy}</p>
      <button type="button" class="button is-main" onClick={onLookAgain}>
        {words.lookAgain}
      </button>
    </section>
  );
}
