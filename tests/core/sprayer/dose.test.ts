import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { KnownNumber } from '../../../src/core/facts/types.ts';
import { doseFor } from '../../../src/core/sprayer/dose.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { testParameters } from '../../generators/parameters.ts';

type Band = number | readonly [low: number, value: number, high: number];

function known(band: Band): KnownNumber {
  const [low, value, high] = typeof band === 'number' ? [band, band, band] : band;
  return { known: true, type: 'number', value, low, high, source: 'said', at: epochSeconds(0), goodUntil: null };
}

function facts(given: { concentration?: Band; labelMax?: Band; density?: Band }): ResolvedFacts {
  return {
    ...(given.concentration === undefined ? {} : { 'product.activeGPerL': known(given.concentration) }),
    ...(given.labelMax === undefined ? {} : { 'product.labelMaxGPerHa': known(given.labelMax) }),
    ...(given.density === undefined ? {} : { 'weed.plantsPerM2': known(given.density) }),
  };
}

function dose(given: Parameters<typeof facts>[0]) {
  const result = doseFor(facts(given), testParameters());
  if ('needs' in result) throw new Error(`needs ${result.needs.join(', ')}`);
  return result;
}

describe('product per hectare is the dose over the concentration, rounded down', () => {
  // L/ha = g/ha over g/L: arithmetic that any label states; the 400 and 500 g/L rows are worked by hand.
  test.each([
    [20, 400, 1.87],
    [20, 500, 1.5],
    [100, 400, 2.1],
    [100, 500, 1.68],
    [20, 800, 0.93],
    [100, 820, 1.02],
  ])('at %d plants/m2 and %d g/L it is %d L/ha', (density, concentration, product) => {
    expect(dose({ density, concentration, labelMax: 840 }).productLPerHa).toBe(product);
  });

  test('1.7 L/ha of a 500 g/L product would be 850 g/ha, above 840; 1.68 is exactly 840', () => {
    const answer = dose({ density: 150, concentration: 500, labelMax: 840 });
    expect(1.7 * 500).toBeGreaterThan(answer.activeGPerHa);
    expect(answer).toMatchObject({ activeGPerHa: 840, productLPerHa: 1.68, activeInProductGPerHa: 840 });
  });

  test('a floor in binary would lose a step: 8.2 over 1 g/L stays 8.2', () => {
    expect(dose({ concentration: 1, labelMax: 8.2 }).productLPerHa).toBe(8.2);
  });
});

describe('the severe dose needs a density that is surely severe', () => {
  test.each<[string, Band | undefined, number]>([
    ['just below', 99.9, 750],
    ['at the limit', 100, 840],
    ['above', 400, 840],
    ['unknown', undefined, 750],
    ['a band that straddles', [90, 120, 150], 750],
    ['a band that begins at the limit', [100, 120, 150], 840],
  ])('%s gives the right dose', (_, density, active) => {
    const given = { concentration: 400, labelMax: 1000, ...(density === undefined ? {} : { density }) };
    expect(dose(given).activeGPerHa).toBe(active);
  });
});

describe('the label maximum is never passed', () => {
  test.each<[Band, number, boolean]>([
    [840, 840, false],
    [839.99, 839.99, true],
    [500, 500, true],
    [[700, 800, 900], 700, true],
  ])('a maximum of %j gives %d g/ha', (labelMax, active, cut) => {
    expect(dose({ density: 500, concentration: 400, labelMax })).toMatchObject({
      activeGPerHa: active,
      cutToLabel: cut,
    });
  });

  const amount = fc.integer({ min: 100, max: 100_000 }).map((hundredths) => hundredths / 100);
  const band = fc
    .tuple(amount, amount, amount)
    .map((three) => three.toSorted((a, b) => a - b) as [number, number, number]);

  test('whatever the bands, the active in the product is below the maximum and at most one step below the dose', () => {
    fc.assert(
      fc.property(band, band, fc.option(band, { nil: undefined }), (concentration, labelMax, density) => {
        const answer = dose({ concentration, labelMax, ...(density === undefined ? {} : { density }) });
        const most = Math.round(answer.productLPerHa * 100) * Math.round(concentration[2] * 100);
        expect(most).toBeLessThanOrEqual(Math.round(labelMax[0] * 100) * 100);
        expect(most).toBeLessThanOrEqual(Math.round(answer.activeGPerHa * 100) * 100);
        expect(most + Math.round(concentration[2] * 100)).toBeGreaterThan(Math.round(answer.activeGPerHa * 100) * 100);
        expect(answer.activeInProductGPerHa).toBeLessThanOrEqual(answer.activeGPerHa);
      }),
      { numRuns: 2000 },
    );
  });

  test('a stronger product or a lower maximum never gives more product', () => {
    fc.assert(
      fc.property(amount, amount, amount, fc.nat(500), (concentration, labelMax, more, density) => {
        const base = dose({ concentration, labelMax, density });
        const stronger = dose({ concentration: concentration + more, labelMax, density });
        const allowed = dose({ concentration, labelMax: labelMax + more, density });
        expect(stronger.productLPerHa).toBeLessThanOrEqual(base.productLPerHa);
        expect(allowed.productLPerHa).toBeGreaterThanOrEqual(base.productLPerHa);
      }),
    );
  });
});

test('without concentration or maximum only what is needed is told', () => {
  expect(doseFor({}, testParameters())).toEqual({ needs: ['product.activeGPerL', 'product.labelMaxGPerHa'] });
  expect(doseFor(facts({ concentration: 400 }), testParameters())).toEqual({ needs: ['product.labelMaxGPerHa'] });
  expect(doseFor(facts({ labelMax: 840 }), testParameters())).toEqual({ needs: ['product.activeGPerL'] });
});
