import { describe, expect, test } from 'vitest';
import { compiledFor } from '../../../src/core/dialogue/standing.ts';
import { judgeDay } from '../../../src/core/practice/judge-day.ts';
import { limitPairs } from '../../../src/core/practice/limit-pairs.ts';
import { good } from '../compare/small-pack.ts';
import { smallAt, smallWorld } from './small-world.ts';

/** The ways in which one fact alone decides a rule of the small pack, a line each. */
function pairs(rule: string, facts?: Readonly<Record<string, unknown>>): string[] {
  const { pack, plain, definitionOf } = smallWorld();
  const judged = judgeDay({ facts: facts ?? plain!.facts, at: smallAt }, pack)!;
  const compiled = compiledFor(pack, judged.at).rules.find((one) => one.rule.id === rule)!;
  return limitPairs(compiled, judged.facts, definitionOf, 2026).map(
    ({ pivot, givens, met, notMet, within }) =>
      `${pivot}: met ${JSON.stringify(met)}, not met ${JSON.stringify(notMet)}, within ${within}, with ${JSON.stringify(givens)}`,
  );
}

describe('the ways to bring a rule to its limit', () => {
  test('of a number are the steps on both sides of it', () => {
    expect(pairs('too-windy')).toMatchInlineSnapshot(`
      [
        "wind.boomKmh: met [9.7,9.8,9.9], not met [9.3,9.4,9.5,9.6], within 0.3, with {}",
      ]
    `);
  });

  test('of a choice are the choices on both sides', () => {
    expect(pairs('elsewhere')).toMatchInlineSnapshot(`
      [
        "field.country: met ["ZZ"], not met ["GB-ENG"], within null, with {}",
      ]
    `);
  });

  test('of a day are the days around it', () => {
    expect(pairs('late')).toMatchInlineSnapshot(`
      [
        "date: met ["2026-10-01","2026-10-03","2026-10-02"], not met ["2026-09-29","2026-09-28","2026-09-30"], within 3, with {}",
        "date: met ["2026-10-01","2026-10-03","2026-10-02"], not met ["2026-09-29","2026-09-28","2026-09-30"], within 3, with {}",
      ]
    `);
  });

  test('of two ways to know the same thing leave the other one unknown', () => {
    expect(pairs('too-dry')).toMatchInlineSnapshot(`
      [
        "soil.fieldCapacityPercent: met [77,78,79], not met [80,81,82,83], within 3, with {"soil.feel":null}",
        "soil.feel: met ["dry"], not met ["moist"], within null, with {"soil.fieldCapacityPercent":null}",
      ]
    `);
  });

  test('of several facts move the fewest first, numbers before choices', () => {
    const found = pairs('warm-and-dry');
    expect(found.slice(0, 6)).toMatchInlineSnapshot(`
      [
        "soil.temperature30cmC: met [10.1,10.2,10.3], not met [9.7,9.8,9.9,10], within 0.3, with {"soil.surface":["cracked"]}",
        "soil.surface: met [["cracked"]], not met [[]], within null, with {"soil.temperature30cmC":10.01}",
        "soil.temperature30cmC: met [10.1,10.2,10.3], not met [9.7,9.8,9.9,10], within 0.3, with {"soil.fieldCapacityPercent":null,"soil.surface":["cracked"]}",
        "soil.temperature30cmC: met [10.1,10.2,10.3], not met [9.7,9.8,9.9,10], within 0.3, with {"soil.feel":"dry","soil.fieldCapacityPercent":null}",
        "soil.temperature30cmC: met [10.1,10.2,10.3], not met [9.7,9.8,9.9,10], within 0.3, with {"soil.feel":null,"soil.surface":["cracked"]}",
        "soil.temperature30cmC: met [10.1,10.2,10.3], not met [9.7,9.8,9.9,10], within 0.3, with {"soil.feel":null,"soil.fieldCapacityPercent":79.9}",
      ]
    `);
    const moved = found.map((one) => Object.keys(JSON.parse(one.slice(one.indexOf('with ') + 5)) as object).length);
    expect(moved).toEqual(moved.toSorted((a, b) => a - b));
  });

  test('of two ways that are both known on the plain day leave the other one unknown too', () => {
    const known = pairs('too-dry', { ...good, 'soil.feel': 'moist', 'soil.fieldCapacityPercent': 70 });
    expect(known.length).toBeGreaterThan(0);
    for (const one of known) expect(one).toMatch(/null\}$/);
  });

  test('start from nothing known where the plain day knows nothing', () => {
    expect(pairs('too-windy', {})).toEqual(pairs('too-windy'));
    expect(pairs('too-dry', {}).length).toBeGreaterThan(0);
  });
});
