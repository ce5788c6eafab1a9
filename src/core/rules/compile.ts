import { codedError } from '../errors/coded-error.ts';
import { definitionIn, type FactRegistry } from '../facts/registry/index.ts';
import { type Parameter, type Parameters, parametersOn } from '../units/parameter.ts';
import { isOrderOperator } from './operators.ts';
import { type ReachingPack, reachedFacts } from './reach.ts';
import { comparisonsIn, membersOf, operatorOf, parameterOf } from './reads.ts';
import {
  type Comparison,
  type CompiledComparison,
  type CompiledCondition,
  type CompiledRules,
  type Condition,
  isProtected,
  type Limit,
  type Rule,
} from './types.ts';

/**
 * The rules of a pack with the limits in force on a day (YYYY-MM-DD), references expanded, in id order.
 * Names of comparisons are the rule's id and the path to them: `soil-too-dry/eitherOf/0`.
 * Throws PARAMETER_MISSING where a rule reads a parameter that is not in force on the day.
 */
export function compileRules(pack: ReachingPack, isoDate: string): CompiledRules {
  const parameters = parametersOn(pack.parameters, isoDate);
  const byId = new Map(pack.rules.map((rule) => [rule.id, rule]));
  const ordered = [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const rules = ordered.map((rule) => {
    const world = { rule, byId, parameters, registry: pack.facts, isoDate, open: [rule.id], negated: false };
    const condition = compileCondition(rule.when, rule.id, world);
    const comparisons = comparisonsIn(condition);
    const read = comparisons.flatMap(({ parameter }) => (parameter === null ? [] : [parameter]));
    return {
      rule,
      condition,
      facts: [...new Set(comparisons.map(({ fact }) => fact))],
      parameters: [...new Set(read)],
    };
  });
  return { rules, parameters, registry: reachedFacts(pack) };
}

interface World {
  readonly rule: Rule;
  readonly byId: ReadonlyMap<string, Rule>;
  readonly parameters: Parameters;
  readonly registry: FactRegistry;
  readonly isoDate: string;
  /** Rules being expanded, outermost first. */
  readonly open: readonly string[];
  /** True under an odd number of `not`. */
  readonly negated: boolean;
}

function compileCondition(condition: Condition, name: string, world: World): CompiledCondition {
  if ('fact' in condition) return compileComparison(condition, name, world);
  if ('not' in condition) {
    const member = compileCondition(condition.not, `${name}/not`, { ...world, negated: !world.negated });
    return { kind: 'not', member };
  }
  if ('rule' in condition) return compileReference(condition.rule, `${name}/rule`, world);
  const kind = 'all' in condition ? 'all' : 'any' in condition ? 'any' : 'eitherOf';
  const members = membersOf(condition).map((member, index) =>
    compileCondition(member, `${name}/${kind}/${index}`, world),
  );
  return { kind, members };
}

function compileReference(id: string, name: string, world: World): CompiledCondition {
  const rule = world.byId.get(id);
  if (!rule) {
    const expected = 'the id of a rule of this pack';
    throw codedError('RULE_REFERENCE_MISSING', { expected, came: id, rule: world.rule.id });
  }
  const open = [...world.open, id];
  if (world.open.includes(id)) {
    const came = open.join(' > ');
    throw codedError('RULE_REFERENCE_CYCLE', { expected: 'references that end', came, rule: world.rule.id });
  }
  return { kind: 'rule', rule: id, member: compileReferred(rule, name, { ...world, open }) };
}

/**
 * The condition of a rule that another names. A protected rule that names a rule of practice which an overlay changed holds by
 * the shipped condition too, so that the change never lets more through: `any` of both, `all` of both under a `not`.
 */
function compileReferred(rule: Rule, name: string, world: World): CompiledCondition {
  if (!rule.earlier || isProtected(rule) || !isProtected(world.rule)) return compileCondition(rule.when, name, world);
  const kind = world.negated ? 'all' : 'any';
  const members = [...rule.earlier, rule.when].map((when, index) =>
    compileCondition(when, `${name}/${kind}/${index}`, world),
  );
  return { kind, members };
}

function compileComparison(comparison: Comparison, name: string, world: World): CompiledComparison {
  const { op, operand } = operatorOf(comparison);
  const { fact } = comparison;
  const { unit } = definitionIn(world.registry, fact);
  const parameter = parameterOf(comparison);
  if (parameter === null) {
    const values = Array.isArray(operand) ? (operand as readonly string[]) : [operand as string];
    return { kind: 'comparison', name, fact, op, limit: { kind: 'choices', values }, parameter, unit };
  }
  const limit = limitOf(requireParameter(parameter, world), isOrderOperator(op));
  return { kind: 'comparison', name, fact, op, limit, parameter, unit };
}

function requireParameter(id: string, world: World): Parameter {
  const parameter = world.parameters.get(id);
  if (parameter) return parameter;
  const expected = `a value in force on ${world.isoDate}`;
  throw codedError('PARAMETER_MISSING', { expected, came: 'nothing', parameter: id, rule: world.rule.id });
}

function limitOf({ id, value }: Parameter, onScale: boolean): Limit {
  if (onScale && typeof value === 'number') return { kind: 'number', value };
  if (onScale && typeof value === 'string') return { kind: 'month-day', value: monthDayNumber(value) };
  if (!onScale && typeof value === 'object') return { kind: 'choices', values: value };
  const expected = onScale ? 'a number or MM-DD' : 'a list of choices';
  throw codedError('PARAMETER_VALUE_WRONG', { expected, came: JSON.stringify(value), parameter: id });
}

/** A day of the year, MM-DD, as month * 100 + day. */
export function monthDayNumber(monthDay: string): number {
  return Number(monthDay.slice(0, 2)) * 100 + Number(monthDay.slice(3, 5));
}
