import { describe, expect, test } from 'vitest';
import { comparisonsOf, membersOf, parameterOf } from '../../src/core/rules/reads.ts';
import type { Condition, Rule } from '../../src/core/rules/types.ts';
import { factDefinition } from '../fixtures/core-facts.ts';
import { someCaseNotices } from './judged-cases.ts';
import { shipped } from './shipped-pack.ts';

const { rules, parameters } = shipped.pack;

function withRule(id: string, change: Partial<Rule>): boolean {
  return someCaseNotices({
    ...shipped.pack,
    rules: rules.map((rule) => (rule.id === id ? { ...rule, ...change } : rule)),
  });
}

test('unchanged, every case comes out as it says', () => {
  expect(someCaseNotices(shipped.pack)).toBe(false);
});

describe('some case notices when a limit is moved by as little as the nearest case is off it', () => {
  const read = new Map(
    rules.flatMap((rule) =>
      comparisonsOf(rule.when, new Map()).map((comparison) => [parameterOf(comparison), comparison.fact] as const),
    ),
  );
  const numbers = parameters.filter(({ id, value }) => typeof value === 'number' && read.has(id));
  const moved = numbers.flatMap(({ id, value }) => {
    const step = factDefinition(read.get(id)!).precision! * 10.001;
    return [
      [id, (value as number) + step],
      [id, (value as number) - step],
    ] as const;
  });
  test.each(moved)('%s to %d', (id, value) => {
    const changed = parameters.map((each) => (each.id === id ? { ...each, value } : each));
    expect(someCaseNotices({ ...shipped.pack, parameters: changed })).toBe(true);
  });
});

describe('some case notices when a comparison takes or leaves its limit', () => {
  const turned = { above: 'atLeast', atLeast: 'above', below: 'atMost', atMost: 'below' } as const;
  const mutants = rules.flatMap(({ id, when }) =>
    mutantsOf(when, (condition) =>
      'fact' in condition
        ? Object.entries(turned).flatMap(([op, other]) => {
            if (!(op in condition)) return [];
            const limit = (condition as unknown as Record<string, string>)[op];
            return [{ fact: condition.fact, [other]: limit } as unknown as Condition];
          })
        : [],
    ).map((mutant) => [id, mutant] as const),
  );
  test.each(mutants)('%s: %j', (id, when) => {
    expect(withRule(id, { when })).toBe(true);
  });
});

describe('some case notices when a member of a group is left out', () => {
  const mutants = rules.flatMap(({ id, when }) =>
    mutantsOf(when, (condition) => {
      if ('fact' in condition || 'rule' in condition || 'not' in condition) return [];
      const members = membersOf(condition);
      const group = Object.keys(condition)[0]!;
      return members.map((_, left) => ({ [group]: members.filter((__, at) => at !== left) }) as unknown as Condition);
    }).map((mutant) => [id, mutant] as const),
  );
  test.each(mutants)('%s: %j', (id, when) => {
    expect(withRule(id, { when })).toBe(true);
  });
});

describe('some case notices when a rule is softened or hardened', () => {
  const others = { stop: ['hold', 'advise'], hold: ['stop', 'advise'], advise: ['hold'] } as const;
  const mutants = rules.flatMap(({ id, effect }) => others[effect].map((other) => [id, other] as const));
  test.each(mutants)('%s made %s', (id, effect) => {
    expect(withRule(id, { effect })).toBe(true);
  });
});

/** Copies of a condition, each with one node replaced by one of what `change` gives for it. */
function mutantsOf(condition: Condition, change: (condition: Condition) => readonly Condition[]): Condition[] {
  const here = [...change(condition)];
  if ('fact' in condition || 'rule' in condition || 'not' in condition) return here;
  const group = Object.keys(condition)[0]!;
  const members = membersOf(condition);
  const inner = members.flatMap((member, at) =>
    mutantsOf(member, change).map((mutant) => ({ [group]: members.with(at, mutant) }) as unknown as Condition),
  );
  return [...here, ...inner];
}
