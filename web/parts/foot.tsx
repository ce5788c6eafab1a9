import type { PageState } from '../chat/page-state.ts';
import { coreWords, pageWords } from '../words.ts';
import { LearnLinks } from './learn-links.tsx';

/** What the program is not, and whether the page can go on without a signal, at the foot of every page. */
export function Foot({ canBeAlone }: Pick<PageState, 'canBeAlone'>) {
  return (
    <footer class="foot">
      <LearnLinks />
      <p>
        <a class="lone-link" href="#bench">
          {pageWords.bench}
        </a>
      </p>
      {[coreWords.verdict.safety, ...pageWords.foot, pageWords.offline.can[canBeAlone]].map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </footer>
  );
}
