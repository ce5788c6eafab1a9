import { nearestName } from '../../errors/nearest.ts';
import type { FactRegistry } from '../../facts/registry/index.ts';
import type { Parameter } from '../../units/parameter.ts';
import { groups } from '../operators.ts';
import type { Condition } from '../types.ts';
import { inside, isObject, type Place, type Report, show } from './findings.ts';
import { parseComparison } from './parse-comparison.ts';

/** What a condition is judged against: the pack's parameters by id (all versions) and the ids of its rules. */
export interface ConditionWorld {
  readonly parameters: ReadonlyMap<string, readonly Parameter[]>;
  readonly ruleIds: ReadonlySet<string>;
  readonly registry: FactRegistry;
}

const mostLevels = 2;
const keywords = [...groups, 'rule', 'fact'];

/** Parses a condition; every fault is reported, and the result is then null. */
export function parseCondition(
  json: unknown,
  place: Place,
  world: ConditionWorld,
  report: Report,
  levels = 0,
): Condition | null {
  if (!isObject(json)) {
    report('CONDITION_MALFORMED', place, { expected: `an object with one of ${keywords.join('/')}`, came: show(json) });
    return null;
  }
  const keys = Object.keys(json);
  if (keys.includes('fact')) return parseComparison(json, place, world, report);
  const [key] = keys;
  if (keys.length !== 1 || key === undefined || !keywords.includes(key)) {
    const wrong = keys.find((name) => !keywords.includes(name));
    const nearest = wrong === undefined ? undefined : nearestName(wrong, keywords);
    report('CONDITION_MALFORMED', place, {
      expected: keys.length > 1 ? `exactly one of ${keywords.join('/')}` : `one of ${keywords.join('/')}`,
      came: keys.length === 0 ? 'an empty object' : keys.map((name) => `\`${name}\``).join(' and '),
      ...(nearest === undefined ? {} : { nearest }),
    });
    return null;
  }
  const at = inside(place, key);
  if (key === 'rule') return parseReference(json[key], at, world, report);
  if (levels === mostLevels) {
    report('CONDITION_TOO_DEEP', at, {
      expected: `at most ${mostLevels} levels of groups`,
      came: `a level ${levels + 1}`,
    });
    return null;
  }
  if (key === 'not') {
    const member = parseCondition(json[key], at, world, report, levels + 1);
    return member && { not: member };
  }
  const members = parseMembers(json[key], key, at, world, report, levels + 1);
  return members && ({ [key]: members } as unknown as Condition);
}

function parseReference(id: unknown, place: Place, world: ConditionWorld, report: Report): Condition | null {
  if (typeof id === 'string' && world.ruleIds.has(id)) return { rule: id };
  report('RULE_REFERENCE_MISSING', place, {
    expected: 'the id of a rule of this pack',
    came: show(id),
    among: world.ruleIds,
  });
  return null;
}

function parseMembers(
  json: unknown,
  key: string,
  place: Place,
  world: ConditionWorld,
  report: Report,
  levels: number,
): Condition[] | null {
  if (!Array.isArray(json)) {
    report('CONDITION_MALFORMED', place, { expected: `a list of conditions in \`${key}\``, came: show(json) });
    return null;
  }
  const fewest = key === 'eitherOf' ? 2 : 1;
  if (json.length < fewest) {
    report('CONDITION_EMPTY', place, { expected: `at least ${fewest} in \`${key}\``, came: String(json.length) });
    return null;
  }
  const members = json.map((member, index) => parseCondition(member, inside(place, index), world, report, levels));
  if (members.some((member) => member === null)) return null;
  return key === 'eitherOf' && !eitherOfFits(members as Condition[], place, report) ? null : (members as Condition[]);
}

function eitherOfFits(members: readonly Condition[], place: Place, report: Report): boolean {
  const facts = new Set<string>();
  return members.every((member, index) => {
    const at = inside(place, index);
    if (!('fact' in member)) {
      const came = `\`${Object.keys(member)[0]}\``;
      report('CONDITION_EITHER_OF_MISFIT', at, { expected: 'a comparison of a fact', came });
      return false;
    }
    if (facts.has(member.fact)) {
      report('CONDITION_EITHER_OF_MISFIT', at, {
        expected: 'a comparison of another fact',
        came: `${member.fact} twice`,
      });
      return false;
    }
    facts.add(member.fact);
    return true;
  });
}
