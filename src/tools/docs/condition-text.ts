import { membersOf, operatorOf, parameterOf } from '../../core/rules/reads.ts';
import type { Comparison, Condition } from '../../core/rules/types.ts';
import type { Parameters } from '../../core/units/parameter.ts';

const operatorWords = {
  below: 'below',
  atMost: 'at most',
  above: 'above',
  atLeast: 'at least',
  is: 'is',
  isNot: 'is not',
  oneOf: 'is one of',
  noneOf: 'is none of',
  has: 'has',
} as const;

/** A condition as one line of text, limits filled in: "`soil.temperature30cmC` above 10 C". */
export function conditionText(condition: Condition, parameters: Parameters): string {
  if ('fact' in condition) return comparisonText(condition, parameters);
  if ('rule' in condition) return `rule \`${condition.rule}\` is met`;
  if ('not' in condition) return `not (${conditionText(condition.not, parameters)})`;
  const members = membersOf(condition).map((member) => {
    const text = conditionText(member, parameters);
    return 'fact' in member || 'rule' in member || 'not' in member ? text : `(${text})`;
  });
  if ('all' in condition) return members.join(' and ');
  return 'any' in condition ? members.join(' or ') : `either way of knowing: ${members.join(', or ')}`;
}

function comparisonText(comparison: Comparison, parameters: Parameters): string {
  const { op, operand } = operatorOf(comparison);
  const id = parameterOf(comparison);
  const parameter = id === null ? undefined : parameters.get(id);
  const value = parameter ? parameter.value : operand;
  const shown = Array.isArray(value) ? value.join(', ') : String(value);
  const unit = parameter && !['month-day', 'list'].includes(parameter.unit) ? ` ${parameter.unit}` : '';
  return `\`${comparison.fact}\` ${operatorWords[op]} ${shown}${unit}`;
}
