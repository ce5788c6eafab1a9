import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ceilTo, divide, floorTo, multiply, roundTo } from '../../../src/core/units/round.ts';

const tenths = fc.integer({ min: -100_000, max: 100_000 }).map((n) => n / 10);
const step = fc.constantFrom(0.01, 0.05, 0.1, 0.5, 1, 5);

describe('rounding in decimal arithmetic', () => {
  test('8.2 times 100 is 820, where binary arithmetic stops at 819', () => {
    expect(Math.floor(8.2 * 100)).toBe(819);
    expect(floorTo(multiply(8.2, 100), 1)).toBe(820);
  });

  test.each([
    [1.6849, 0.01, 1.68, 1.69, 1.68],
    [1.685, 0.01, 1.68, 1.69, 1.69],
    [8.2, 0.1, 8.2, 8.2, 8.2],
    [0.3, 0.1, 0.3, 0.3, 0.3],
    [-0.25, 0.1, -0.3, -0.2, -0.3],
    [-0.04, 0.1, -0.1, 0, 0],
    [1e-25, 1, 0, 1, 0],
    [-1e-25, 1, -1, 0, 0],
    [7, 5, 5, 10, 5],
    [-0, 1, 0, 0, 0],
  ])('%d by steps of %d: down %d, up %d, nearest %d', (value, by, down, up, nearest) => {
    expect([floorTo(value, by), ceilTo(value, by), roundTo(value, by)]).toEqual([down, up, nearest]);
  });

  test('down is never above, up never below, both within a step, and the nearest is one of the two', () => {
    fc.assert(
      fc.property(fc.oneof(tenths, fc.double({ min: -1e6, max: 1e6, noNaN: true })), step, (value, by) => {
        const [down, up] = [floorTo(value, by), ceilTo(value, by)];
        expect(down).toBeLessThanOrEqual(value);
        expect(up).toBeGreaterThanOrEqual(value);
        expect(up - down).toBeLessThanOrEqual(by + 1e-9);
        expect([down, up]).toContain(roundTo(value, by));
      }),
    );
  });

  test('what is rounded already stays as it is', () => {
    fc.assert(
      fc.property(tenths, (value) => {
        expect([floorTo(value, 0.1), ceilTo(value, 0.1), roundTo(value, 0.1)]).toEqual([
          value + 0,
          value + 0,
          value + 0,
        ]);
      }),
    );
  });

  test.each([
    [500, 400, 1.25],
    [500, 500, 1],
    [750, 400, 1.875],
    [750, 500, 1.5],
    [840, 400, 2.1],
    [840, 500, 1.68],
  ])('%d g/ha of a %d g/L product is exactly %d L/ha (computed)', (dose, concentration, expected) => {
    expect(divide(dose, concentration)).toBe(expected);
    expect(multiply(expected, concentration)).toBe(dose);
  });

  test('1.7 L/ha of a 500 g/L product is 850 g/ha, above a limit of 840 (computed)', () => {
    expect(multiply(1.7, 500)).toBe(850);
  });

  test.each([
    () => floorTo(1, 0),
    () => ceilTo(Number.NaN, 1),
    () => roundTo(1, Number.NaN),
    () => multiply(Number.POSITIVE_INFINITY, 0),
    () => divide(1, 0),
  ])('what has no answer is refused with its code (%#)', (call) => {
    expect(call).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }));
  });
});
