import type { FactId } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import { type Place, type Report, show } from './findings.ts';

const countryCode = /^[A-Z]{2}(-[A-Z0-9]{1,3})?$/;

/** True for a choice of the fact (for a country, anything that looks like an ISO 3166 code); else it is reported. */
export function choiceFits(
  choice: unknown,
  fact: FactId,
  definition: FactDefinition,
  place: Place,
  report: Report,
): boolean {
  if (typeof choice === 'string') {
    if (definition.type === 'country' ? countryCode.test(choice) : definition.choices?.includes(choice)) return true;
  }
  if (typeof choice === 'number') {
    report('RULE_NUMBER_INSIDE', place, { expected: 'a choice as text', came: show(choice), fact });
    return false;
  }
  const choices = definition.choices ?? [];
  report('RULE_CHOICE_UNKNOWN', place, {
    expected: definition.type === 'country' ? 'an ISO 3166 code such as GB-ENG' : `one of ${choices.join(', ')}`,
    came: show(choice),
    among: choices,
    fact,
  });
  return false;
}
