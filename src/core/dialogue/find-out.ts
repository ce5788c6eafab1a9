import type { Pack } from '../rules/pack-types.ts';
import { jobsOf } from '../words/jobs.ts';
import { questionsInOrder } from './asking-order.ts';
import type { Decision } from './decision-types.ts';
import { deferredFacts } from './deferred.ts';

/**
 * What a person can do about an answer: the jobs that lift a hold; where nothing certain stands in the way, each open question
 * once with how to find out, in the order of asking, and the reasons' own sentences where no question asks for what is missing.
 */
export function jobsFor(
  decision: Pick<Decision, 'reasons' | 'missing' | 'trace'>,
  pack: Pack,
  language: string,
): string[] {
  const { reasons, missing, trace } = decision;
  if (reasons.some(({ outcome }) => outcome === 'met')) return jobsOf(reasons);
  const deferred = deferredFacts(trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'unknown'));
  const open = new Set(missing.filter((fact) => !deferred.has(fact)));
  const asked = questionsInOrder(pack)
    .filter(({ forDose, form, facts }) => forDose !== true && form !== 'place' && facts.some((fact) => open.has(fact)))
    .map(({ text }) => text[language] ?? text['en'])
    .map((text) => `${text?.ask ?? ''} ${text?.how ?? ''}`.trim());
  return asked.length > 0 ? asked : [...new Set(reasons.map(({ text }) => text))];
}
