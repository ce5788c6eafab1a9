import { factsBehind } from '../../facts/derive/reads.ts';
import { inside, type Report } from '../pack/findings.ts';
import type { Pack } from '../pack-types.ts';
import { readsOf } from '../reads.ts';
import type { DefinitionOf } from './every-cell.ts';
import type { PlaceOf } from './places.ts';

/**
 * Reports questions that never come: none of their facts is read by a rule or worked into one that is, they are neither of the
 * field's profile nor the place, and they are not for the dose.
 */
export function findNeverAsked(
  { questions, rules }: Pick<Pack, 'questions' | 'rules'>,
  definitionOf: DefinitionOf,
  places: PlaceOf,
  report: Report,
): void {
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const read = factsBehind(rules.flatMap(({ when }) => [...readsOf(when, byId).facts]));
  for (const { id, facts, form, forDose } of questions) {
    const isAsked =
      form === 'place' ||
      forDose === true ||
      facts.some((fact) => read.has(fact) || definitionOf(fact).profile === true);
    if (isAsked) continue;
    const expected = 'a fact that some rule reads, or that goes into one';
    report(
      'QUESTION_NEVER_ASKED',
      inside(places.question(id), 'facts'),
      { expected, came: facts.join(', ') },
      'warning',
    );
  }
}
