import { expect, test } from 'vitest';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import type { Condition, Effect } from '../../../src/core/rules/types.ts';
import { upperLimitOf } from '../../../src/core/rules/upper-limit.ts';
import { shipped, shippedPacks } from '../../cases/shipped-pack.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { holdRule } from '../../generators/small.ts';
import { fullView } from '../../web/outlook-views.ts';

/** The pack with other names for the limits that figures draw: names that nobody could guess. */
const renamed = JSON.parse(
  JSON.stringify(shipped.pack).replaceAll('soilTemperatureMaxC', 'mullC').replaceAll('rainTotalLimitMm', 'wetMm'),
) as Pack;

/** n0l1 is 9.6 km/h of wind and n0l2 is 14.5; n1l1 is 9 C. */
const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
const stormy: Condition = { fact: 'wind.boomKmh', atLeast: 'n0l2' };
const warm: Condition = { fact: 'soil.temperature30cmC', above: 'n1l1' };
const dry: Condition = { fact: 'soil.feel', is: 'dry' };

const limits: readonly (readonly [string, readonly Condition[], number | null, Effect?])[] = [
  ['above a limit', [windy], 9.6],
  ['at least a limit', [stormy], 14.5],
  ['the lowest of two rules', [stormy, windy], 9.6],
  ['one of several that are enough, choices among them', [{ any: [dry, warm, stormy] }], 14.5],
  ['in a rule that this one names', [{ any: [warm, { rule: 'named' }] }], 9.6],
  ['not one that needs something else too', [{ all: [windy, dry] }], null],
  ['not one under a not', [{ not: windy }], null],
  ['not a least value', [{ fact: 'wind.boomKmh', below: 'n0l1' }], null],
  ['not a most value', [{ any: [{ fact: 'wind.boomKmh', atMost: 'n0l1' }] }], null],
  ['not the limit of another fact', [warm, dry], null],
  ['not that of advice', [windy], null, 'advise'],
  ['nothing where there is no rule', [], null],
];

test.each(limits.map(([name, conditions, limit, effect = 'stop']) => ({ name, conditions, limit, effect })))(
  'from which limit on the wind alone stops or holds: $name',
  ({ conditions, limit, effect }) => {
    const rules = conditions.map((when, at) => ({ ...holdRule(`r${at}`, when), effect }));
    const named = { ...holdRule('named', windy), effect: 'advise' as const };
    const pack = { ...ofCore, rules: [...rules, named], parameters: generatedParameters };
    expect(upperLimitOf(compileRules(pack, '2026-11-06'), 'wind.boomKmh')).toBe(limit);
  },
);

test('a figure draws the limit that the rules read, whatever it is called', () => {
  const { soil, rain } = fullView(shipped.pack);
  expect([soil?.limitC, rain?.limitMm]).toEqual([10, 10]);
  expect(fullView(renamed)).toEqual(fullView(shipped.pack));
});

test('a limit of the sum to come is told with the decimal mark of the language', () => {
  const wetter = {
    ...shipped.pack,
    parameters: shipped.pack.parameters.map((one) => (one.id === 'rainTotalLimitMm' ? { ...one, value: 7.5 } : one)),
  };
  expect(fullView(wetter).rain?.limitText).toBe('limit 7.5 mm');
  expect(fullView(wetter, 'wait', undefined, 'de').rain?.limitText).toContain('7,5 mm');
});

test('a pack whose rules set no limit to the sum of 48 hours has no such figure', () => {
  const spring = shippedPacks.find(({ pack }) => pack.id === 'fluroxypyr-winter-wheat')!.pack;
  expect(fullView(spring).rain).toBeNull();
});
