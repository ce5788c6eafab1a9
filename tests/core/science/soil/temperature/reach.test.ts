import { describe, expect, test } from 'vitest';
import { studentReach } from '../../../../../src/core/science/soil/temperature/reach.ts';

describe("Student's t", () => {
  // Abramowitz & Stegun 1964, table 26.10: percentage points of the t distribution (from memory of the printed table).
  test.each([
    [5, 1.476, 2.571],
    [10, 1.372, 2.228],
    [30, 1.31, 2.042],
    [120, 1.289, 1.98],
  ])('with %d degrees of freedom holds 80 and 95 percent within %d and %d', (freedom, at80, at95) => {
    expect(Math.abs(studentReach(1.2816, freedom) - at80)).toBeLessThan(0.005);
    expect(Math.abs(studentReach(1.96, freedom) - at95)).toBeLessThan(0.012);
  });

  test('reaches no further with more freedom, and is the normal with very much', () => {
    expect(studentReach(1.96, 4)).toBeGreaterThan(studentReach(1.96, 8));
    expect(studentReach(1.96, 1e9)).toBeCloseTo(1.96, 6);
    expect(Number.isFinite(studentReach(1.96, 0))).toBe(true);
  });
});
