import { describe, expect, test } from 'vitest';
import { judgePlausible } from '../../../src/core/facts/plausible.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

const judged = (id: FactId, reading: Reading) => judgePlausible(id, factDefinition(id), reading);

describe('a number is taken, asked about once, or refused', () => {
  test.each<[FactId, number, string]>([
    ['soil.temperature30cmC', 9.8, 'fine'],
    ['soil.temperature30cmC', 25, 'fine'],
    ['soil.temperature30cmC', 25.1, 'ask-once'],
    ['soil.temperature30cmC', -2, 'fine'],
    ['soil.temperature30cmC', -2.1, 'ask-once'],
    ['soil.temperature30cmC', 45, 'ask-once'],
    ['air.relativeHumidityPercent', 100, 'fine'],
  ])('%s of %d is %s', (id, value, expected) => {
    expect(judged(id, { type: 'number', value })).toBe(expected);
  });

  test('outside the range the report gives range and unit', () => {
    expect(judged('soil.temperature30cmC', { type: 'number', value: 45.1 })).toMatchObject({
      code: 'FACT_OUT_OF_RANGE',
      fact: 'soil.temperature30cmC',
      expected: '-20 to 45 C',
      came: '45.1',
    });
  });

  test('a number that is none is refused', () => {
    expect(judged('soil.temperature30cmC', { type: 'number', value: Number.NaN })).toMatchObject({
      code: 'FACT_OUT_OF_RANGE',
    });
  });

  test('a band that does not enclose the value is refused', () => {
    const reading = { type: 'number', value: 9, low: 9.5, high: 10 } as const;
    expect(judged('soil.temperature30cmC', reading)).toMatchObject({ code: 'FACT_BAND_WRONG' });
  });

  test('choices are not judged', () => {
    expect(judged('soil.feel', { type: 'choice', possible: ['dry'] })).toBe('fine');
  });
});
