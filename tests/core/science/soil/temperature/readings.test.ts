import { describe, expect, test } from 'vitest';
import { soilConstants30cm } from '../../../../../src/core/science/soil/temperature/constants.ts';
import { soilTrendAhead } from '../../../../../src/core/science/soil/temperature/index.ts';
import { studentReach } from '../../../../../src/core/science/soil/temperature/reach.ts';
import { errorVariance, isStuckAtEnd } from '../../../../../src/core/science/soil/temperature/readings.ts';
import { noiseFactor } from '../../../../../src/core/science/soil/temperature/state.ts';
import { expectWithin } from '../../published.ts';
import { asked, dayAt, reading } from './field-days.ts';

describe('readings', () => {
  test.each([
    [{ sdC: 0.3 }, 0.09],
    [{ sdC: 0 }, 0.0025],
    [{ sdC: 0.3, depthM: 0.3 }, 0.09],
  ])('%j at 30 cm have a variance of %d C2', (given, variance) => {
    expect(errorVariance({ ...reading(0, 10), ...given })).toBeCloseTo(variance, 9);
  });

  test('of 10 and of 50 cm have the variance of the daily wave between, of days, and below of the season', () => {
    // Damping depth of a day at 5e-7 m2/s: 0.1173 m (Hillel 1982); 4 C half span, 0.8 C a damping depth, 6.8 C for the root of a metre below.
    const share = (depth: number) => 4 * Math.exp(-depth / 0.11731);
    const variance = (depthM: number) => errorVariance({ ...reading(0, 10, 0.3), depthM });
    expectWithin(variance(0.1), 0.09 + (share(0.1) - share(0.3)) ** 2 + (0.8 * (0.2 / 0.11731)) ** 2, 0.003);
    expectWithin(
      variance(0.5),
      0.09 + (share(0.5) - share(0.3)) ** 2 + (0.8 * (0.2 / 0.11731)) ** 2 + 6.8 ** 2 * 0.2,
      0.003,
    );
  });

  test.each([
    [{ sdC: -0.1 }, '-0.1 C at 0.3 m'],
    [{ depthM: 0.04 }, '0.1 C at 0.04 m'],
    [{ depthM: 1.01 }, '0.1 C at 1.01 m'],
    [{ sdC: Number.NaN }, 'NaN C at 0.3 m'],
  ])('%j are refused', (given, came) => {
    const expected = 'a standard error of 0 C or more and a depth of 0.05 to 1 m';
    expect(() => errorVariance({ ...reading(0, 10), ...given })).toThrow(
      expect.objectContaining({ details: { expected, came } }),
    );
    for (const depthM of [0.05, 1]) expect(errorVariance({ ...reading(0, 10), depthM })).toBeGreaterThan(0);
  });

  test.each([
    ['none', [], false],
    ['five of one value over four days', [0, 1, 2, 3, 4], true],
    ['four of one value over four days', [0, 1, 2, 4], false],
    ['five of one value within four days', [0, 1, 2, 3, 3.99], false],
  ] as const)('of a sensor that stands still: %s', (_, days, stuck) => {
    const row = days.map((day) => ({ at: dayAt(day), valueC: 8 }));
    const other = { at: dayAt(-1), valueC: 8.1 };
    expect(isStuckAtEnd(row)).toBe(stuck);
    expect(isStuckAtEnd([other, ...row])).toBe(stuck);
    expect(isStuckAtEnd([...row, { at: dayAt(5), valueC: 8.1 }])).toBe(false);
  });
});

describe('the change ahead', () => {
  test.each([
    [0, false],
    [1, true],
    [19, true],
    [20, false],
    [-1, false],
  ])('over %d days is told: %s', (days, told) => {
    expect(soilTrendAhead(asked(), days) !== null).toBe(told);
  });
});

test('the noise is greatest in early June, none more in the winter half, and more after weeks of cold', () => {
  const of = { ...soilConstants30cm, summerNoise: 0.5, frostNoise: 0.4 };
  expect(noiseFactor(of, 155, 60)).toBeCloseTo(1.5, 9);
  expect(noiseFactor(of, 155 - 182, 60)).toBeCloseTo(1, 9);
  expect(noiseFactor(of, 155 + 70, 60)).toBeGreaterThan(1.1);
  expect(noiseFactor(of, 1, 3)).toBeCloseTo(1.2, 6);
  expect(noiseFactor(of, 1, -60)).toBeCloseTo(1.4, 6);
});

test('the reach of a band that rests on few errors is that of three degrees of freedom at most', () => {
  expect(studentReach(1.96, 3)).toBe(studentReach(1.96, 1));
  expect(studentReach(1.96, 3)).toBeGreaterThan(studentReach(1.96, 3.1));
});
