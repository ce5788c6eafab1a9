import type { WordedReason } from '../dialogue/decision-types.ts';
import type { Verdict } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';
import { joinWords } from './units.ts';

/** What a verdict is compared by. */
export interface Compared {
  readonly verdict: Verdict['verdict'];
  readonly reasons: readonly WordedReason[];
}

/** How a verdict differs from the one before: "It was wait; now spray today, because no longer in the way: soil too warm." */
export function describeChange(before: Compared, after: Compared, words: Catalogue): string {
  const what = differences(before, after, words);
  const { names, change } = words.verdict;
  const [was, is] = [names[before.verdict], names[after.verdict]];
  if (before.verdict === after.verdict) return what === '' ? change.same(is) : change.sameBut(is, what);
  return what === '' ? change.now(was, is) : change.nowBecause(was, is, what);
}

function differences(before: Compared, after: Compared, words: Catalogue): string {
  const { change } = words.verdict;
  const left = before.reasons.filter((reason) => outcomeIn(after, reason.rule) === null);
  const gone = left.filter(({ outcome }) => outcome === 'met');
  const cleared = left.filter(({ outcome }) => outcome === 'unknown');
  const come = after.reasons.filter(({ rule, outcome }) => outcome === 'met' && outcomeIn(before, rule) !== 'met');
  const lost = after.reasons.filter(
    ({ rule, outcome }) => outcome === 'unknown' && outcomeIn(before, rule) !== 'unknown',
  );
  const said = [
    [come, change.come],
    [lost, change.lost],
    [gone, change.gone],
    [cleared, change.cleared],
  ] as const;
  return said
    .filter(([reasons]) => reasons.length > 0)
    .map(([reasons, say]) => say(titles(reasons, words)))
    .join('; ');
}

function outcomeIn({ reasons }: Compared, rule: string): WordedReason['outcome'] | null {
  return reasons.find((reason) => reason.rule === rule)?.outcome ?? null;
}

function titles(reasons: readonly WordedReason[], words: Catalogue): string {
  return joinWords(
    reasons.map(({ title }) => words.values.inSentence(title)),
    words.values.and,
  );
}
