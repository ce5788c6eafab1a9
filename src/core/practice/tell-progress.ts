import type { Pack } from '../rules/pack-types.ts';
import { describeNext } from '../words/practice-due.ts';
import { titlesOf } from '../words/say-rule.ts';
import { progressOf, type Review } from './schedule.ts';
import type { PracticeSpeech } from './tell-day.ts';

/** How far a learner is: a line for each rule of the pack that was seen, then all others in one. `now` is in epoch seconds UTC. */
export function tellProgress(
  reviews: readonly Review[],
  { rules }: Pick<Pack, 'rules'>,
  { words, practice }: PracticeSpeech,
  now: number,
): string[] {
  const titleOf = titlesOf(rules, words);
  const rows = progressOf(
    rules.map(({ id }) => id),
    reviews,
  );
  const seen = rows.flatMap(({ rule, seen, right, due }) =>
    due === null ? [] : [`${practice.progressLine(titleOf(rule), seen, right)}; ${describeNext(due - now, practice)}`],
  );
  const unseen = rows.flatMap(({ rule, due }) => (due === null ? [titleOf(rule)] : []));
  return unseen.length === 0 ? seen : [...seen, practice.notSeen(unseen.length, unseen.join('; '))];
}
