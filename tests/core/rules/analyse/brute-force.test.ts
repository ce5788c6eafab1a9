import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findNested } from '../../../../src/core/rules/analyse/find-nested.ts';
import { findUnmeetable } from '../../../../src/core/rules/analyse/find-unmeetable.ts';
import { placesIn } from '../../../../src/core/rules/analyse/places.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import type { Parameter } from '../../../../src/core/units/parameter.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { holdRule } from '../../../generators/small.ts';

// Every combination of values that could make a difference, written out by hand: the ends of the wind's range (0 and 150 km/h),
// the limits and a value in each gap; all six feels; all sets of two signs; days at and between the limits.
const winds = [0, 1, 2, 3.5, 5, 70, 150];
const feels = ['dry', 'slightly-moist', 'moist', 'wet', 'at-capacity', 'saturated'];
const surfaces = [[], ['cracked'], ['sticky'], ['cracked', 'sticky']];
const days = ['01-01', '05-01', '10-01', '11-01', '12-31'];
const worlds = winds.flatMap((wind) =>
  feels.flatMap((feel) => surfaces.flatMap((surface) => days.map((day) => ({ wind, feel, surface, day })))),
);
type World = (typeof worlds)[number];

const limits: Readonly<Record<string, number | string>> = {
  calm: 0,
  light: 2,
  strong: 5,
  storm: 150,
  first: '01-01',
  october: '10-01',
  last: '12-31',
};
const parameters = Object.entries(limits).map(
  ([id, value]): Parameter => ({
    id,
    value,
    unit: typeof value === 'number' ? 'km/h' : 'month-day',
    source: 'invented',
    why: { en: 'test' },
    validFrom: '2020-01-01',
    tighter: 'neither',
  }),
);

const orders = {
  below: (a: number | string, b: number | string) => a < b,
  atMost: (a: number | string, b: number | string) => a <= b,
  above: (a: number | string, b: number | string) => a > b,
  atLeast: (a: number | string, b: number | string) => a >= b,
};
type Meaning = { readonly condition: Condition; readonly holds: (world: World) => boolean };

const order = fc.constantFrom(...(Object.keys(orders) as (keyof typeof orders)[]));
const windIs = fc.tuple(order, fc.constantFrom('calm', 'light', 'strong', 'storm')).map(
  ([op, limit]): Meaning => ({
    condition: { fact: 'wind.boomKmh', [op]: limit } as unknown as Condition,
    holds: ({ wind }) => orders[op](wind, limits[limit]!),
  }),
);
const dayIs = fc.tuple(order, fc.constantFrom('first', 'october', 'last')).map(
  ([op, limit]): Meaning => ({
    condition: { fact: 'date', [op]: limit } as unknown as Condition,
    holds: ({ day }) => orders[op](day, limits[limit]!),
  }),
);
const feelIs = fc.tuple(fc.boolean(), fc.subarray(feels, { minLength: 1 })).map(
  ([inside, some]): Meaning => ({
    condition: { fact: 'soil.feel', [inside ? 'oneOf' : 'noneOf']: some } as unknown as Condition,
    holds: ({ feel }) => some.includes(feel) === inside,
  }),
);
const signIs = fc.constantFrom('cracked', 'sticky').map(
  (sign): Meaning => ({
    condition: { fact: 'soil.surface', has: sign },
    holds: ({ surface }) => surface.includes(sign),
  }),
);
const leaf = fc.oneof(windIs, feelIs, signIs, dayIs);

function groupOf(member: fc.Arbitrary<Meaning>): fc.Arbitrary<Meaning> {
  const members = fc.array(member, { minLength: 1, maxLength: 3 });
  return fc.oneof(
    members.map(
      (all): Meaning => ({
        condition: { all: all.map(({ condition }) => condition) },
        holds: (world) => all.every(({ holds }) => holds(world)),
      }),
    ),
    members.map(
      (any): Meaning => ({
        condition: { any: any.map(({ condition }) => condition) },
        holds: (world) => any.some(({ holds }) => holds(world)),
      }),
    ),
    member.map(({ condition, holds }): Meaning => ({ condition: { not: condition }, holds: (world) => !holds(world) })),
  );
}
const meaning = fc.oneof(leaf, groupOf(leaf), groupOf(fc.oneof(leaf, groupOf(leaf))));

test('what the analysis says of two rules is what trying every combination of values says', () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(meaning, meaning, (one, other) => {
      const rules = [holdRule('a', one.condition), holdRule('b', other.condition)];
      const compiled = compileRules({ ...ofCore, rules, parameters }, '2026-11-06').rules;
      const { findings, report } = collectFindings();
      const places = placesIn(new Map());
      findUnmeetable(compiled, factDefinition, places, report);
      findNested(compiled, factDefinition, places, report);
      const found = new Set(findings.map(({ code, rule }) => `${code} ${rule}`));

      const met = [one, other].map(({ holds }) => worlds.filter(holds));
      const expected = new Set<string>();
      const ids = ['a', 'b'];
      met.forEach((of, index) => {
        if (of.length === worlds.length) expected.add(`RULE_ALWAYS_MET ${ids[index]}`);
        const contradicts = found.has(`RULE_BOUNDS_CONTRADICT ${ids[index]}`);
        if (contradicts) expected.add(`RULE_BOUNDS_CONTRADICT ${ids[index]}`);
        else if (of.length === 0) expected.add(`RULE_NEVER_MET ${ids[index]}`);
      });
      const [a, b] = met as [World[], World[]];
      const share = compiled[0]!.facts.some((fact) => compiled[1]!.facts.includes(fact));
      if (share && a.length > 0 && b.length > 0) {
        const [inA, inB] = [new Set(a), new Set(b)];
        const aInB = a.every((world) => inB.has(world));
        const bInA = b.every((world) => inA.has(world));
        if (aInB && bInA) expected.add('RULE_SAID_TWICE b');
        else if (aInB) expected.add('RULE_HIDDEN a');
        else if (bInA) expected.add('RULE_HIDDEN b');
      }
      expect([...found].sort()).toEqual([...expected].sort());
      for (const each of expected) seen.set(each.split(' ')[0]!, (seen.get(each.split(' ')[0]!) ?? 0) + 1);
    }),
    { numRuns: 600 },
  );
  for (const code of [
    'RULE_NEVER_MET',
    'RULE_ALWAYS_MET',
    'RULE_BOUNDS_CONTRADICT',
    'RULE_SAID_TWICE',
    'RULE_HIDDEN',
  ]) {
    expect(seen.get(code), code).toBeGreaterThan(2);
  }
});

test('bounds that contradict each other are those that no value lies within', () => {
  const two = fc.oneof(fc.tuple(windIs, windIs), fc.tuple(dayIs, dayIs), fc.tuple(feelIs, feelIs));
  fc.assert(
    fc.property(two, (both) => {
      const rules = [holdRule('a', { all: both.map(({ condition }) => condition) })];
      const { findings, report } = collectFindings();
      findUnmeetable(
        compileRules({ ...ofCore, rules, parameters }, '2026-11-06').rules,
        factDefinition,
        placesIn(new Map()),
        report,
      );
      const each = both.every(({ holds }) => worlds.some(holds));
      const none = !worlds.some((world) => both.every(({ holds }) => holds(world)));
      const contradicts = findings.some(({ code }) => code === 'RULE_BOUNDS_CONTRADICT');
      expect(contradicts).toBe(each && none);
    }),
    { numRuns: 300 },
  );
});
