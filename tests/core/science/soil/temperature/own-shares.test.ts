import { describe, expect, test } from 'vitest';
import { soilConstants30cm as of } from '../../../../../src/core/science/soil/temperature/constants.ts';
import { filterReadings, ownLoadings } from '../../../../../src/core/science/soil/temperature/filter.ts';
import { loadings, place, seen } from '../../../../../src/core/science/soil/temperature/state.ts';
import { asked, dayAt, daysWith } from './field-days.ts';

const swing = (day: number) => 8 * Math.sin((2 * Math.PI * day) / 10);
const days = () => daysWith(Array.from({ length: 40 }, (_, day) => 9 + swing(day)));

/** A site of which so many readings, up to day 20, follow the air by a share (below 0: against it). */
function site(count: number, share: number) {
  const readings = Array.from({ length: count }, (_, index) => {
    const day = 20 - index;
    return { at: dayAt(day), valueC: 10 + share * swing(day - 1), sdC: 0.05 };
  });
  return filterReadings(asked({ days: days(), readings }), of);
}

describe("the site's own shares of the air", () => {
  test('never fall below none, though its readings go against the air, and its temperature of today stays as read', () => {
    const { tracked, memories, today } = site(20, -0.9);
    const { mean } = tracked.state;
    const shares = [mean[place.quickShare]! + of.quickShare, mean[place.slowShare]! + of.slowShare];
    for (const one of shares) expect(one).toBeGreaterThanOrEqual(-1e-12);
    expect(Math.min(...shares)).toBeCloseTo(0, 9);
    const { quickC, slowC, middleC } = memories[today]!;
    const departure = seen(tracked.state, loadings(of, quickC, slowC)).mean;
    expect(middleC + departure).toBeCloseTo(10 - 0.9 * swing(19), 0);
  });

  test('count in the error of the air from ten readings on, where they are larger than the model has them', () => {
    const quick = (count: number) => {
      const filtered = site(count, 0.9);
      expect(filtered.tracked.readingCount).toBe(count);
      return ownLoadings(filtered, of, 8, 8)[place.quick]! - of.quickShare;
    };
    expect(quick(9)).toBe(0);
    expect(quick(10)).toBeGreaterThan(0.05);
  });
});
