import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import { askPack } from './ask-pack.ts';
import type { CertainFacts } from './design-oracle.ts';
import { certainFacts, valuesTried } from './facts-near-limits.ts';

const goodness = { 'do-not-spray': 0, wait: 1, 'spray-today': 2 } as const;

/** Readings that are never better for being higher, and those never better for being lower: common practice, no source. */
const worseWhenHigher = [
  'soil.temperature30cmC',
  'soil.temperatureTrendCPerDay',
  'rain.next48hMm',
  'rain.next48hMaxMmPerH',
  'rain.nowMmPerH',
  'wind.boomKmh',
  'wind.gustKmh',
  'field.slopePercent',
  'weed.tillers',
] as const satisfies readonly FactId[];
const worseWhenLower = ['crop.trueLeaves', 'field.waterDistanceM', 'air.temperatureC'] as const;
const worseAnswers = [
  ['treatment.alreadyApplied', 'yes'],
  ['weed.present', 'no'],
  ['field.drained', 'yes'],
  ['field.loosenedThisSeason', 'yes'],
  ['field.protectedWaterArea', 'inside'],
  ['field.waterPlanAgreed', 'no'],
  ['field.bufferMarked', 'no'],
  ['soil.drainsRunning', 'yes'],
  ['soil.drainsExpected7d', 'yes'],
  ['crop.frostOnLeaves', 'yes'],
  ['wind.towardsSensitive', 'yes'],
  ['air.inversionRisk', 'yes'],
  ['field.country', 'IE'],
] as const;

function holds(worse: (facts: CertainFacts) => object): void {
  fc.assert(
    fc.property(fc.constantFrom(3, 12).chain(certainFacts), (facts) => {
      const before = goodness[askPack(facts).verdict];
      expect(goodness[askPack({ ...facts, ...worse(facts) }).verdict]).toBeLessThanOrEqual(before);
    }),
    { numRuns: 25 },
  );
}

describe('a worse reading never betters the verdict', () => {
  test.each([
    ...worseWhenHigher.map((id) => [id, Math.max] as const),
    ...worseWhenLower.map((id) => [id, Math.min] as const),
  ])('%s', (id, worseOf) => {
    for (const value of valuesTried[id]) holds((facts) => ({ [id]: worseOf(facts[id], value) }));
  });

  test.each(worseAnswers)('%s turned to %s', (id, worst) => {
    holds(() => ({ [id]: worst }));
  });

  test.each(['cracked', 'sticky', 'ponded', 'frozen', 'snow'])('%s besides what the surface shows', (sign) => {
    holds((facts) => ({ 'soil.surface': [...facts['soil.surface'], sign] }));
  });
});
