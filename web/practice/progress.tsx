import type { Review } from '../../src/core/practice/schedule.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import { tellProgress } from '../../src/core/practice/tell-progress.ts';
import type { PracticeWorld } from '../../src/core/practice/types.ts';
import { Fold } from '../parts/fold.tsx';

interface ProgressProps {
  readonly reviews: readonly Review[];
  /** Epoch seconds UTC. */
  readonly now: number;
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
}

/** How often days of each rule were seen, how often answered right, and when one comes again. */
export function Progress({ reviews, now, world: { pack }, speech }: ProgressProps) {
  return (
    <Fold title={speech.practice.progress}>
      <ul>
        {tellProgress(reviews, pack, speech, now).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Fold>
  );
}
