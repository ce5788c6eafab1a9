import { progressOf, type Review } from '../../src/core/practice/schedule.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { PracticeWorld } from '../../src/core/practice/types.ts';
import { describeNext } from '../../src/core/words/practice-due.ts';
import { titlesOf } from '../../src/core/words/say-rule.ts';
import { Fold } from '../parts/fold.tsx';

interface ProgressProps {
  readonly reviews: readonly Review[];
  /** Epoch seconds UTC. */
  readonly now: number;
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
}

/** How often days of each rule were seen, how often answered right, and when one comes again. */
export function Progress({ reviews, now, world: { pack }, speech: { words, practice } }: ProgressProps) {
  const titleOf = titlesOf(pack.rules, words);
  const ids = pack.rules.map(({ id }) => id);
  return (
    <Fold title={practice.progress}>
      <ul>
        {progressOf(ids, reviews).map(({ rule, seen, right, due }) => (
          <li key={rule}>
            {due === null
              ? practice.notSeen(titleOf(rule))
              : `${practice.progressLine(titleOf(rule), seen, right)}; ${describeNext(due - now, practice)}`}
          </li>
        ))}
      </ul>
    </Fold>
  );
}
