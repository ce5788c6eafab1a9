import type { VerdictView } from '../../src/core/dialogue/view-types.ts';
import { pageWords } from '../words.ts';

/** The forecast with its age and source, and the rules that judged. */
export function Basis({ verdict }: { readonly verdict: VerdictView }) {
  return (
    <div class="basis">
      <h3>{pageWords.verdict.basis}</h3>
      <p>{verdict.forecastText}</p>
      <p>{verdict.packText}</p>
    </div>
  );
}
