import { coreWords, pageWords } from '../words.ts';

/** What the program is not, at the foot of every page. */
export function Foot() {
  return (
    <footer class="foot">
      {[coreWords.verdict.safety, ...pageWords.foot].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </footer>
  );
}
