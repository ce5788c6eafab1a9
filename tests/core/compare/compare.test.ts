import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  changedOf,
  compareNearLimits,
  compareOnCases,
  compareOnVerdicts,
  compareSeasons,
  decidersOf,
  differencesOf,
  judgePair,
  pairRules,
  plainField,
  type Side,
  seasonRules,
} from '../../../src/core/compare/index.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import { replay, seasonDatesOf } from '../../../src/core/outlook/replay/index.ts';
import { knownNumber } from '../../../src/core/rules/analyse/known-values.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import { resolveCase } from '../../../src/core/rules/resolve-case.ts';
import { verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { inventedDays } from '../../../src/demo/invented-seasons.ts';
import { firstSide, sidesOf, withValue } from './sides.ts';

let first: Side;
beforeAll(async () => {
  first = await firstSide();
});

const options = { seed: 7, pairs: 1500 };
const day = '2026-11-06';
const station = {
  name: 'invented',
  place: { latitude: 52, longitude: -1, elevationM: 60 },
  days: inventedDays(3, 2015, 2),
};
/** Facts of two cases mixed, with some of them, and the wind and the water near the limits. */
function mixedFacts(): fc.Arbitrary<ResolvedFacts> {
  const all = first.cases.map((one) => resolveCase(one, first.pack).facts);
  const ids = Object.keys(all[0]!) as FactId[];
  const number = (most: number) => fc.integer({ min: 0, max: most }).map(knownNumber);
  return fc
    .record({
      one: fc.constantFrom(...all),
      other: fc.constantFrom(...all),
      fromOther: fc.subarray(ids),
      wind: number(12),
      capacity: number(120),
    })
    .map(({ one, other, fromOther, wind, capacity }) => ({
      ...one,
      ...Object.fromEntries(fromOther.map((id) => [id, other[id]])),
      'wind.boomKmh': wind,
      'soil.fieldCapacityPercent': capacity,
    }));
}

const seasonsOf = (a: Side, b: Side) => [
  ...compareSeasons({
    ...seasonRules(sidesOf(a, b), day),
    station,
    given: plainField(first).resolved,
    readingEveryDays: 7,
  }),
];

describe('a pack compared with itself', () => {
  test('differs in nothing: not in writing, cases, near limits, seasons', () => {
    const same = sidesOf(first, structuredClone(first));
    expect(differencesOf(same.a.pack, same.b.pack)).toEqual([]);
    const cases = compareOnCases(same);
    expect(cases).toMatchObject({ differing: [], notJudged: [] });
    expect(changedOf(cases.transitions)).toEqual({ all: first.cases.length, changed: 0 });
    const heard: number[][] = [];
    const limits = compareNearLimits(same, { ...options, onProgress: (...told) => heard.push(told) });
    const all = limits.alone + limits.pairs;
    expect(heard.slice(0, 3)).toEqual([500, 1000, 1500].map((done) => [done, all]));
    expect(limits).toMatchObject({ changed: 0, transitions: [], pairs: options.pairs });
    expect(limits.alone).toBeGreaterThan(300);
    for (const { changed, windows } of seasonsOf(first, structuredClone(first))) {
      expect([changed, windows]).toEqual([[], []]);
    }
  });
});

describe('one limit moved from 10 C to 8.5 C', () => {
  test('changes exactly the cases whose soil lies between', () => {
    const tighter = withValue(first, 'soilTemperatureMaxC', 8.5);
    const { differing } = compareOnCases(sidesOf(first, tighter));
    const between = first.cases
      .filter((one) => {
        const { facts } = resolveCase(one, first.pack);
        const soil = facts['soil.temperature30cmC'];
        return soil?.known && soil.type === 'number' && soil.low <= 10 && soil.high > 8.5;
      })
      .map(({ name }) => name);
    expect(differing.map(({ name }) => name)).toEqual(between);
    for (const { way, by } of differing)
      expect(way === 'same' ? [] : by).toEqual(way === 'same' ? [] : ['soil-too-warm']);
    expect(differing.every(({ way }) => way !== 'looser')).toBe(true);
  });

  test('is a difference in writing that is tighter, and looser the other way round', () => {
    const tighter = withValue(first, 'soilTemperatureMaxC', 8.5);
    expect(differencesOf(first.pack, tighter.pack)).toMatchObject([
      {
        kind: 'parameter',
        id: 'soilTemperatureMaxC',
        way: 'tighter',
        readBy: expect.arrayContaining(['soil-too-warm']),
      },
    ]);
    expect(differencesOf(tighter.pack, first.pack)).toMatchObject([{ way: 'looser' }]);
  });

  test('near the limits only the soil brings it about: alone, or beside another fact that does not matter', () => {
    const { transitions } = compareNearLimits(sidesOf(first, withValue(first, 'soilTemperatureMaxC', 8.5)), options);
    expect(transitions.map(({ a, b }) => [a, b])).toContainEqual(['spray-today', 'wait']);
    for (const { example, way } of transitions) {
      expect(way).toBe('stricter');
      expect(Object.keys(example.facts)).toContain('soil.temperature30cmC');
      expect(example.by).toContain('soil-too-warm');
    }
  });
});

describe('both judged together', () => {
  test('is as each judged apart, over made facts, and the rules named are those by which it changed', () => {
    const other = withValue(withValue(first, 'windMostKmh', 7), 'fieldCapacityDriestPercent', 70);
    const [a, b] = [compileRules(first.pack, day), compileRules(other.pack, day)];
    const rules = pairRules(a, b);
    fc.assert(
      fc.property(mixedFacts(), (facts) => {
        const judged = judgePair(rules, facts);
        for (const side of ['a', 'b'] as const) {
          const trace = evaluateReference({ a, b }[side], facts);
          expect(judged[side].outcomes).toEqual(trace.map(({ outcome }) => outcome));
          expect(judged[side].verdict).toBe(verdictWord(trace));
        }
        const by = decidersOf(rules, judged);
        expect(by.length > 0).toBe(judged.a.verdict !== judged.b.verdict);
        expect(by.every((rule) => ['too-windy', 'soil-too-dry', 'rain-on-unfit-soil'].includes(rule))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('a rule that only one has is named where it decides', () => {
    const without = {
      ...first,
      pack: { ...first.pack, rules: first.pack.rules.filter(({ id }) => id !== 'too-windy') },
    };
    const { differing } = compareOnCases(sidesOf(first, without));
    const changed = differing.filter(({ way }) => way !== 'same');
    expect(changed.length).toBeGreaterThan(0);
    for (const { way, by } of changed) expect([way, by]).toEqual(['looser', ['too-windy']]);
  });
});

describe('seasons', () => {
  test.each([
    ['a limit of a rule', 'soilTemperatureMaxC', 8],
    ['a height by which the facts are worked out', 'cropHeightM', 0.6],
    ['the last day', 'seasonLastDay', '01-10'],
  ])('count as two replays counted by a plain double loop: %s', (_, id, value) => {
    const other = withValue(first, id, value);
    const seasons = seasonsOf(first, other);
    const given = plainField(first).resolved;
    const dates = seasonDatesOf(compileRules(first.pack, day).parameters);
    const apart = [first, other].map(({ pack }) => [
      ...replay({
        ...station,
        compiled: compileRules(pack, day),
        season: dates,
        record: station.days,
        given,
        readingEveryDays: 7,
      }),
    ]);
    const counted = new Map<string, number>();
    for (const [at, one] of apart[0]!.entries()) {
      const key = `${one.season} ${one.verdict} ${apart[1]![at]!.verdict}`;
      counted.set(key, (counted.get(key) ?? 0) + 1);
    }
    const told = seasons.flatMap(({ season, transitions }) =>
      transitions.map(({ a, b, count }) => [`${season} ${a} ${b}`, count] as const),
    );
    expect(new Map(told)).toEqual(counted);
    expect(seasons.flatMap(({ changed }) => changed).length).toBeGreaterThan(0);
    const ofDay = new Map(apart[0]!.map(({ iso, verdict }, at) => [iso, [verdict, apart[1]![at]!.verdict]]));
    for (const { changed } of seasons) for (const { iso, a, b } of changed) expect(ofDay.get(iso)).toEqual([a, b]);
  });
});

describe('saved verdicts', () => {
  test('are judged then, under A and under B; those of another pack are counted with the reason', () => {
    const { day: of, facts } = resolveCase(
      first.cases.find(({ expect: e }) => e.verdict === 'spray-today')!,
      first.pack,
    );
    const { id, version, hash } = first.pack;
    const saved = { verdict: 'spray-today' as const, at: `${of}T12:00:00.000Z`, facts, pack: { id, version, hash } };
    const tighter = withValue(first, 'soilTemperatureMaxC', 5);
    const told = compareOnVerdicts(sidesOf(first, tighter), [
      saved,
      { ...saved, pack: { ...saved.pack, id: 'another' } },
      { ...saved, pack: { ...saved.pack, id: 'another' } },
      { ...saved, at: '1999-11-01T12:00:00.000Z' },
    ]);
    expect(told).toMatchObject({
      verdicts: 4,
      asThen: 1,
      differing: [{ saved: 'spray-today', a: 'spray-today', b: 'wait', way: 'stricter', by: ['soil-too-warm'] }],
      unjudged: [
        { count: 2, error: { code: 'PACK_UNKNOWN', came: 'another' } },
        { count: 1, error: { code: 'PARAMETER_MISSING' } },
      ],
    });
  });
});
