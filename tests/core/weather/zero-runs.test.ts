import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceKm } from '../../../src/core/weather/distance.ts';
import { withoutFalseZeros } from '../../../src/core/weather/zero-runs.ts';

const zeros = (count: number) => Array.from({ length: count }, () => 0);
const gaps = (count: number) => Array.from({ length: count }, () => null);

describe('zeros of rain that cannot be believed', () => {
  test('zeros up to 24 h beside a gap are missing, further ones stay', () => {
    expect(withoutFalseZeros([...zeros(30), null])).toEqual([...zeros(6), ...gaps(25)]);
    expect(withoutFalseZeros([null, ...zeros(30)])).toEqual([...gaps(25), ...zeros(6)]);
  });

  test('a run between two gaps is missing however long it is', () => {
    expect(withoutFalseZeros([null, ...zeros(100), null])).toEqual(gaps(102));
  });

  test('a zero is missing where the same hour is missing in a column of the same model', () => {
    expect(withoutFalseZeros([0, 0.2, 0, 0, 1], [[1, 1, 1, null, null]])).toEqual([0, 0.2, 0, null, 1]);
  });

  test('rain ends the doubt: zeros beyond a wet hour stay', () => {
    expect(withoutFalseZeros([null, 0, 0.3, 0, 0])).toEqual([null, null, 0.3, 0, 0]);
  });

  test('a whole column of zeros without a gap stays as it is', () => {
    expect(withoutFalseZeros(zeros(48))).toEqual(zeros(48));
  });

  test('amounts above zero never change, and nothing becomes zero', () => {
    const cells = fc.array(fc.constantFrom(0, 0, null, 0.4, 3), { maxLength: 120 });
    fc.assert(
      fc.property(cells, (column) => {
        const cleaned = withoutFalseZeros(column);
        column.forEach((value, index) => {
          if (value !== 0) expect(cleaned[index]).toBe(value);
          else expect([0, null]).toContain(cleaned[index]);
        });
      }),
    );
  });
});

describe('distance between two points', () => {
  test.each([
    [{ latitude: 0, longitude: 0 }, { latitude: 0, longitude: 1 }, 111.195],
    [{ latitude: 10, longitude: 179.9 }, { latitude: 10, longitude: -179.9 }, 21.901],
    [{ latitude: 90, longitude: 12 }, { latitude: -90, longitude: 50 }, 20015.115],
    [{ latitude: 53.4, longitude: -1.9 }, { latitude: 53.4, longitude: -1.9 }, 0],
  ])('%o to %o is %f km on a sphere of 6371.0088 km (one degree of its equator, its half circle)', (from, to, km) => {
    expect(distanceKm(from, to)).toBeCloseTo(km, 2);
  });
});
