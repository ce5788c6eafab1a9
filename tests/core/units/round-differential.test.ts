import Big from 'big.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceilTo, divide, floorTo, roundTo } from '../../../src/core/units/round.ts';

/** The same by decimal arithmetic alone, as one would on paper: how many whole steps lie below. */
function floorOnPaper(value: number, step: number): number {
  const [size, by] = [new Big(value), new Big(step)];
  const whole = size.div(by).round(0, Big.roundDown);
  const below = whole.times(by).gt(size) ? whole.minus(1) : whole;
  return below.times(by).toNumber() + 0;
}

/** Half a step away from zero, on paper. */
function roundOnPaper(value: number, step: number): number {
  const half = new Big(step).div(2);
  const size = floorOnPaper(new Big(Math.abs(value)).plus(half).toNumber(), step);
  return value < 0 ? 0 - size : size;
}

/** The double so many places after a positive one. */
function nudged(value: number, places: number): number {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + BigInt(places));
  return bits.getFloat64(0);
}

const step = fc.constantFrom(0.001, 0.01, 0.05, 0.1, 0.3, 0.7, 0.5, 1, 3, 5);
const steps = fc.oneof(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 999_999_000, max: 1_000_001_000 }));
const sign = fc.constantFrom(1, -1);

describe('rounding agrees with decimal arithmetic on paper', () => {
  test('at multiples of a step, and at the doubles next to them', () => {
    fc.assert(
      fc.property(step, steps, sign, fc.integer({ min: -3, max: 3 }), (by, count, side, places) => {
        const value = side * nudged(new Big(by).times(count).toNumber(), places);
        expect(floorTo(value, by)).toBe(floorOnPaper(value, by));
        expect(ceilTo(value, by)).toBe(0 - floorOnPaper(-value, by));
      }),
      { numRuns: 3000 },
    );
  });

  test('at halves of a step, and near them', () => {
    fc.assert(
      fc.property(
        step,
        fc.integer({ min: 0, max: 5000 }),
        sign,
        fc.integer({ min: -3, max: 3 }),
        (by, count, side, places) => {
          const value = side * nudged(new Big(by).times(count + 0.5).toNumber(), places * 1024);
          expect(roundTo(value, by)).toBe(roundOnPaper(value, by));
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('anywhere', () => {
    fc.assert(
      fc.property(step, fc.double({ min: -1e7, max: 1e7, noNaN: true }), (by, value) => {
        expect(floorTo(value, by)).toBe(floorOnPaper(value, by));
        expect(roundTo(value, by)).toBe(roundOnPaper(value, by));
      }),
      { numRuns: 1000 },
    );
  });
});

test.each([
  ['a step above 0', '0', () => floorTo(1.5, 0)],
  ['a step above 0', '-1', () => roundTo(1.5, -1)],
  ['a divisor above 0', '0', () => divide(1, 0)],
])('%s is wanted, %s is refused', (expected, came, call) => {
  expect(call).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE', details: { expected, came } }));
});
