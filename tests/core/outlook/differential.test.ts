import { expect, test } from 'vitest';
import { localDate } from '../../../src/core/facts/local-day.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import { type HourWatcher, scanHours } from '../../../src/core/outlook/scan.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateWithEngine } from '../../../src/core/rules/engine.ts';
import type { Outcome } from '../../../src/core/rules/trace-types.ts';
import type { EpochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { input, morning } from './field.ts';

const changeable = {
  hours: 96,
  columns: {
    windSpeed10mKmh: (_: EpochSeconds, hour: number) => 12 + 10 * Math.sin(hour / 7),
    windGusts10mKmh: (_: EpochSeconds, hour: number) => 18 + 12 * Math.sin(hour / 7),
    precipitationMm: (_: EpochSeconds, hour: number) => (hour % 17 === 0 ? 3 : hour === 60 ? null : 0),
    temperature2mC: (_: EpochSeconds, hour: number) => 4 + 6 * Math.sin(hour / 4),
    cloudCoverPercent: (_: EpochSeconds, hour: number) => 50 + 50 * Math.sin(hour / 9),
  },
};
const soils: readonly Record<string, unknown>[] = [
  { 'field.drained': 'yes' },
  { 'soil.surface': ['cracked'], 'soil.temperature30cmC': 10.3, 'wind.towardsSensitive': 'yes' },
];

test.each(soils)('the engine judges every rule of every hour of a scan as the scan does: %o', async (facts) => {
  const seen: Parameters<HourWatcher>[] = [];
  scanHours(input({ facts, weather: changeable }), (...hour) => seen.push(hour));
  expect(seen).toHaveLength(96);
  const counts = { met: 0, 'not-met': 0, unknown: 0 };
  for (const [at, judged, { strict, held }] of seen) {
    const compiled = compileRules(shipped.pack, localDate(at, shipped.pack.zone));
    const surely = await evaluateWithEngine(compiled, strict);
    const assumed = await evaluateWithEngine(compiled, held);
    const own = (part: 'strict' | 'held') =>
      new Map<string, Outcome>(judged.map((one) => [one.compiled.rule.id, one[part].outcome]));
    expect(own('strict')).toEqual(surely);
    for (const [rule, outcome] of own('held')) {
      expect([rule, outcome]).toEqual([rule, surely.get(rule) === 'unknown' ? assumed.get(rule) : surely.get(rule)]);
    }
    for (const outcome of surely.values()) counts[outcome] += 1;
  }
  expect(Math.min(...Object.values(counts))).toBeGreaterThan(20);
});

test('the hour that holds the moment asked about is judged on the very facts of the verdict', () => {
  const given = input({ facts: { 'field.drained': 'yes' }, weather: changeable });
  const compiled = compileRules(shipped.pack, localDate(morning, shipped.pack.zone));
  const { zone } = shipped.pack;
  const facts = resolveFacts({ ...given, zone, parameters: compiled.parameters, registry: coreFacts });
  const seen: Parameters<HourWatcher>[] = [];
  scanHours(given, (...hour) => seen.push(hour));
  const [, , first] = seen[0]!;
  const bare = (all: object) =>
    Object.fromEntries(
      Object.entries(all).map(([id, fact]) => [id, { ...fact, goodUntil: undefined, at: undefined, note: undefined }]),
    );
  expect(bare(first.strict)).toEqual(
    bare(Object.fromEntries(Object.keys(first.strict).map((id) => [id, facts[id as keyof typeof facts]]))),
  );
});
