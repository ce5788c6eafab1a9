import { describe, expect, test } from 'vitest';
import { beaufort, beaufortScale, boomWindOfForce, forceOfWind10m } from '../../../src/core/units/beaufort.ts';

const wmo = 'Beaufort scale, World Meteorological Organization';
const code = 'UK Code of practice for using plant protection products, wind table';

/** [force, words, km/h at 10 m, source] */
const at10m: readonly [number, string, readonly [number, number], string][] = [
  [0, 'calm', [0, 1], wmo],
  [1, 'light air', [1, 5], wmo],
  [2, 'light breeze', [6, 11], wmo],
  [3, 'gentle breeze', [12, 19], wmo],
  [4, 'moderate breeze', [20, 28], wmo],
  [5, 'fresh breeze', [29, 38], wmo],
  [6, 'strong breeze', [39, 49], `${wmo}, from memory`],
  [7, 'near gale', [50, 61], `${wmo}, from memory`],
  [8, 'gale', [62, 74], `${wmo}, from memory`],
];

/** [force, km/h at boom height, source] */
const atBoom: readonly [number, readonly [number, number], string][] = [
  [0, [0, 2], `${code}, from memory`],
  [1, [2, 3.2], `${code}, from memory`],
  [2, [3.2, 6.5], code],
  [3, [6.5, 9.6], `${code}, from memory`],
  [4, [9.6, 14.5], `${code}, from memory`],
];

describe('the Beaufort scale', () => {
  test.each(at10m)('force %d, %s, is %j km/h at 10 m (%s)', (force, words, range) => {
    expect(beaufort(force)).toEqual({ force, words, at10mKmh: range });
  });

  test.each(atBoom)('force %d is %j km/h at boom height (%s)', (force, range) => {
    expect(boomWindOfForce(force)).toEqual(range);
  });

  test.each([
    [0, 0],
    [0.9, 1],
    [5.4, 1],
    [5.6, 2],
    [19, 3],
    [19.6, 4],
    [200, 12],
  ])('%d km/h at 10 m is force %d', (kmh, force) => {
    expect(forceOfWind10m(kmh).force).toBe(force);
  });

  test('every whole km/h lies in the range of its force, so the scale has no gap', () => {
    for (let kmh = 0; kmh <= 130; kmh++) {
      const [low, high] = forceOfWind10m(kmh).at10mKmh;
      expect(kmh).toBeGreaterThanOrEqual(low);
      expect(kmh).toBeLessThanOrEqual(high);
    }
    expect(beaufortScale.map(({ force }) => force)).toEqual([...Array(13).keys()]);
  });

  test.each([
    () => beaufort(13),
    () => beaufort(2.5),
    () => boomWindOfForce(5),
    () => boomWindOfForce(-1),
    () => forceOfWind10m(-1),
    () => forceOfWind10m(Number.NaN),
  ])('a force or wind that is none is refused with its code (%#)', (call) => {
    expect(call).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }));
  });

  test.each([
    ['a whole Beaufort force of 0 to 12', '13', () => beaufort(13)],
    ['a whole Beaufort force of 0 to 4', '5', () => boomWindOfForce(5)],
    ['a wind of 0 or more km/h', '-1', () => forceOfWind10m(-1)],
  ])('the refusal says that %s is taken, and that %s came', (expected, came, call) => {
    expect(call).toThrow(expect.objectContaining({ details: { expected, came } }));
  });
});
