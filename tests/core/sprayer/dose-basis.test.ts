import { expect, test } from 'vitest';
import type { KnownNumber } from '../../../src/core/facts/types.ts';
import { doseFor } from '../../../src/core/sprayer/dose.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { testParameters } from '../../generators/parameters.ts';

const known = (value: number, low = value, high = value): KnownNumber => {
  return { known: true, type: 'number', value, low, high, source: 'said', at: epochSeconds(0), goodUntil: null };
};

test.each([
  [99, 'usual'],
  [100, 'severe'],
] as const)('at %d plants/m2 the dose says that it is the %s one, and the maximum it was held to', (density, basis) => {
  const facts = {
    'product.activeGPerL': known(400),
    'product.labelMaxGPerHa': known(845, 841, 850),
    'weed.plantsPerM2': known(density),
  };
  expect(doseFor(facts, testParameters())).toMatchObject({ basis, labelMaxGPerHa: 841, cutToLabel: false });
});

test('a pack without a dose needs nothing and tells none', () => {
  const without = new Map([...testParameters()].filter(([id]) => id !== 'usualDoseGPerHa'));
  expect(doseFor({}, without)).toEqual({ needs: [] });
});

test('a density that is not known or no number never makes the dose severe, and a concentration that is none is needed', () => {
  const product = { 'product.activeGPerL': known(400), 'product.labelMaxGPerHa': known(900) };
  const doubt = { known: false, reason: 'not-asked' } as const;
  const choice = {
    known: true,
    type: 'choice',
    possible: ['many'],
    source: 'said',
    at: epochSeconds(0),
    goodUntil: null,
  } as const;
  for (const density of [doubt, choice]) {
    const found = doseFor({ ...product, 'weed.plantsPerM2': density }, testParameters());
    expect(found).toEqual({
      activeGPerHa: 750,
      productLPerHa: 1.87,
      activeInProductGPerHa: 748,
      labelMaxGPerHa: 900,
      basis: 'usual',
      cutToLabel: false,
    });
    expect(doseFor({ ...product, 'product.activeGPerL': density }, testParameters())).toEqual({
      needs: ['product.activeGPerL'],
    });
  }
});
