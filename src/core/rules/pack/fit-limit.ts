import Big from 'big.js';
import { definitionIn, type FactId, type FactRegistry } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import type { Parameter } from '../../units/parameter.ts';
import type { Place, Report } from './findings.ts';
import { show } from './findings.ts';
import { choiceFits } from './fit-choice.ts';

/** True where a parameter can be the limit of a fact: same unit, right kind of value, fact kept fine enough; else reported. */
export function limitFits(
  parameter: Parameter,
  fact: FactId,
  registry: FactRegistry,
  place: Place,
  report: Report,
): boolean {
  const definition = definitionIn(registry, fact);
  const unit = unitOfLimits(definition);
  if (parameter.unit !== unit) {
    report('PARAMETER_UNIT_MISFIT', place, {
      expected: `a parameter in ${unit}, the unit of ${fact}`,
      came: `${parameter.id} in ${parameter.unit}`,
      fact,
      parameter: parameter.id,
    });
    return false;
  }
  const { value } = parameter;
  if (Array.isArray(value)) return value.every((choice) => choiceFits(choice, fact, definition, place, report));
  if (typeof value !== 'number') return true;
  const { precision } = definition;
  if (precision !== undefined && Big(precision).times(10).lte(lastDecimalPlace(value))) return true;
  report('FACT_TOO_COARSE', place, {
    expected: `a step of at most ${lastDecimalPlace(value).div(10).toString()} for the limit ${show(value)}`,
    came: `${fact} kept in steps of ${precision}`,
    fact,
    parameter: parameter.id,
  });
  return false;
}

/** The unit that a limit of this fact must have: `month-day` for a date, `list` for choices, else the fact's own. */
function unitOfLimits({ type, unit }: FactDefinition): string {
  if (type === 'date') return 'month-day';
  return type === 'number' ? (unit ?? 'none') : 'list';
}

/** The place value of a number's last decimal digit: 0.1 for 9.6; 1 for every whole number. */
export function lastDecimalPlace(value: number): Big {
  const { c, e } = Big(value);
  const exponent = Math.min(0, e - c.length + 1);
  return Big(`1e${exponent}`);
}
