import type { CheckedAnswer, LearnerAnswer } from './check-answer.ts';

/**
 * What became of the rule that a learner named, with its distances, in a sentence: "Soil too warm: does not apply; soil temperature at
 * 30 cm: 1.6 C room left." Null where none was named, or where it is told among the rules that decided.
 */
export function ownReason(
  { trace, deciding }: Pick<CheckedAnswer, 'trace' | 'deciding'>,
  { rule }: Pick<LearnerAnswer, 'rule'>,
): string | null {
  const named = trace.find((one) => one.rule === rule);
  if (!named || deciding.some((one) => one.rule === rule)) return null;
  return `${[`${named.title}: ${named.outcomeText}`, ...named.margins].join('; ')}.`;
}
