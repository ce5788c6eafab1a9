import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandPath, keptApart, linePath, roundSteps, scale } from '../../web/figures/geometry.ts';
import { hourCells, hoursPlot } from '../../web/figures/hour-cells.ts';

const finite = fc.double({ min: -1e4, max: 1e4, noNaN: true });

describe('a scale', () => {
  test('maps both ends onto both ends, and a range without extent onto the middle', () => {
    const y = scale([0, 10], [164, 14]);
    expect([y(0), y(5), y(10)]).toEqual([164, 89, 14]);
    expect(scale([3, 3], [0, 10])(3)).toBe(5);
  });
});

describe('the values beside a figure', () => {
  test.each([
    [0, 18.2, [0, 5, 10, 15, 20]],
    [7.1, 11.6, [6, 8, 10, 12]],
    [-11, 4, [-15, -10, -5, 0, 5]],
    [0, 0, [0, 0.5, 1]],
  ])('from %s to %s are round', (low, high, steps) => {
    expect(roundSteps(low, high)).toEqual(steps);
  });

  test('hold whatever there is to show, in even steps, and are few', () => {
    fc.assert(
      fc.property(finite, fc.double({ min: 0, max: 1e4, noNaN: true }), (low, extent) => {
        const steps = roundSteps(low, low + extent);
        expect(steps[0]).toBeLessThanOrEqual(low + 0.01);
        expect(steps.at(-1)).toBeGreaterThanOrEqual(low + extent - 0.01);
        expect(steps.length).toBeGreaterThanOrEqual(3);
        expect(steps.length).toBeLessThanOrEqual(7);
      }),
    );
  });
});

describe('paths', () => {
  test('go through their places in order; a band comes back along its lower edge and closes', () => {
    const upper = [
      { x: 0, y: 1 },
      { x: 2, y: 1 },
    ];
    const lower = [
      { x: 0, y: 5 },
      { x: 2, y: 6 },
    ];
    expect(linePath(upper)).toBe('M0 1L2 1');
    expect(bandPath(upper, lower)).toBe('M0 1L2 1L2 6L0 5Z');
    expect([linePath([]), bandPath([], [])]).toEqual(['', '']);
  });
});

test('names along the foot keep their room', () => {
  fc.assert(
    fc.property(fc.array(finite), (all) => {
      const kept = keptApart(
        all.sort((a, b) => a - b).map((x) => ({ x })),
        50,
      );
      expect(kept.slice(1).every(({ x }, index) => x - kept[index]!.x >= 50)).toBe(true);
      expect(kept.length > 0).toBe(all.length > 0);
    }),
  );
});

test('the hours of a day fill its row from midnight to midnight, on the day of 25 hours too', () => {
  const rows = [24, 25].map((hours) => ({
    label: `${hours}`,
    hours,
    runs: [
      { from: 0, until: 10, state: 'blocked' as const },
      { from: 10, until: hours, state: 'clear' as const },
    ],
  }));
  const cells = hourCells({ rows });
  const ends = cells.map(({ x, width }) => Math.round(x + width));
  expect(cells[0]!.x).toBe(hoursPlot.left);
  expect(ends[3]).toBe(hoursPlot.right);
  expect(ends[1]).toBeLessThan(hoursPlot.right);
  expect(cells[1]!.x).toBeCloseTo(cells[0]!.x + cells[0]!.width, 1);
  expect(new Set(cells.map(({ y }) => y)).size).toBe(2);
});
