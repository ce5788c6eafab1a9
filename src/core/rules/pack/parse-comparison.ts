import { definitionIn, type FactId, factIdsOf, isFactOf } from '../../facts/registry/index.ts';
import { isOrderOperator, operators, operatorsOf } from '../operators.ts';
import type { Comparison } from '../types.ts';
import { inside, isObject, type Place, type Report, show } from './findings.ts';
import { choiceFits } from './fit-choice.ts';
import { limitFits } from './fit-limit.ts';
import type { ConditionWorld } from './parse-condition.ts';

/** Parses a comparison, an object with `fact` and exactly one operator; faults are reported, and the result is then null. */
export function parseComparison(
  json: Readonly<Record<string, unknown>>,
  place: Place,
  world: ConditionWorld,
  report: Report,
): Comparison | null {
  const { fact } = json;
  if (typeof fact !== 'string' || !isFactOf(world.registry, fact)) {
    report('RULE_FACT_UNKNOWN', inside(place, 'fact'), {
      expected: 'the id of a fact',
      came: show(fact),
      among: factIdsOf(world.registry),
    });
    return null;
  }
  const others = Object.keys(json).filter((key) => key !== 'fact');
  const wrong = others.filter((key) => !(operators as readonly string[]).includes(key));
  const [op] = others;
  if (wrong.length > 0 || others.length !== 1 || op === undefined) {
    report('CONDITION_MALFORMED', place, {
      expected: `beside \`fact\` exactly one of ${operators.join('/')}`,
      came: others.length === 0 ? 'no operator' : others.map((key) => `\`${key}\``).join(' and '),
      among: wrong.length === 1 ? operators : [],
    });
    return null;
  }
  const definition = definitionIn(world.registry, fact);
  const right = operatorsOf[definition.type];
  if (!(right as readonly string[]).includes(op)) {
    report('RULE_OPERATOR_MISFIT', inside(place, op), {
      expected: `one of ${right.join(', ')} for ${fact}, a fact of type ${definition.type}`,
      came: `\`${op}\``,
      fact,
    });
    return null;
  }
  const at = inside(place, op);
  const operand = json[op];
  const fits = isOrderOperator(op)
    ? namesParameter(operand, fact, at, world, report)
    : op === 'oneOf' || op === 'noneOf'
      ? listFits(operand, fact, at, world, report)
      : choiceFits(operand, fact, definition, at, report);
  return fits ? ({ fact, [op]: operand } as unknown as Comparison) : null;
}

function namesParameter(operand: unknown, fact: FactId, place: Place, world: ConditionWorld, report: Report): boolean {
  if (typeof operand === 'number') {
    report('RULE_NUMBER_INSIDE', place, { expected: 'the id of a parameter', came: show(operand), fact });
    return false;
  }
  const versions = typeof operand === 'string' ? world.parameters.get(operand) : undefined;
  if (!versions) {
    report('RULE_PARAMETER_UNKNOWN', place, {
      expected: 'the id of a parameter',
      came: show(operand),
      among: world.parameters.keys(),
    });
    return false;
  }
  return versions.every((parameter) => limitFits(parameter, fact, world.registry, place, report));
}

function listFits(operand: unknown, fact: FactId, place: Place, world: ConditionWorld, report: Report): boolean {
  if (isObject(operand)) {
    if (Object.keys(operand).length === 1 && 'parameter' in operand) {
      return namesParameter(operand['parameter'], fact, inside(place, 'parameter'), world, report);
    }
    report('CONDITION_MALFORMED', place, {
      expected: 'a list of choices or { "parameter": id }',
      came: show(operand),
      fact,
    });
    return false;
  }
  if (!Array.isArray(operand) || operand.length === 0) {
    report('CONDITION_EMPTY', place, { expected: 'a list of at least one choice', came: show(operand), fact });
    return false;
  }
  const definition = definitionIn(world.registry, fact);
  return operand.every((choice, index) => choiceFits(choice, fact, definition, inside(place, index), report));
}
