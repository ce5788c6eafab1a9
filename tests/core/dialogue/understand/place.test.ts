import { expect, test } from 'vitest';
import { readPlace } from '../../../../src/core/dialogue/understand/place.ts';
import { told } from './told.ts';

/** Latitude and longitude that a text gives, in degrees; null where it gives none. */
function pairIn(text: string, isAsked: boolean): readonly unknown[] | null {
  const found = readPlace(text, isAsked);
  if (found.length === 0) return null;
  expect(found.map(({ fact }) => fact)).toEqual(['field.latitude', 'field.longitude']);
  return found.map(({ reading }) => (reading.type === 'number' ? reading.value : reading));
}

test.each([
  ['52.1, -1.3', [52.1, -1.3]],
  ['52.1 -1.3', [52.1, -1.3]],
  ['52.1;-1.3', [52.1, -1.3]],
  ['+52.1, +1.3', [52.1, 1.3]],
  ['  52.1 , 1.3  ', [52.1, 1.3]],
  ['52.1 n 1.3', [52.1, 1.3]],
  ['52.1 1.3 w', [52.1, -1.3]],
  ['90.0, 180.0', [90, 180]],
  ['-90.0, -180.0', [-90, -180]],
  ['90.1, 0.0', null],
  ['-90.1, 0.0', null],
  ['52.1, 180.1', null],
  ['52.1, -180.1', null],
  ['52, 1', null],
  ['52.1', null],
  ['52.1, 1.3 and wet', null],
  [`52.1, -1.3${' '.repeat(70)}`, [52.1, -1.3]],
  [`52.1, -1.3${' '.repeat(71)}`, null],
])('where the place is asked, "%s" is %j; elsewhere it is no place', (text, pair) => {
  expect(pairIn(text, true)).toEqual(pair);
  expect(pairIn(text, false)).toBeNull();
});

test.each([
  ['52.1 n 1.3 w', [52.1, -1.3]],
  ['52.1 s 1.3 e', [-52.1, 1.3]],
  ['52.1 south, 1.3 west', [-52.1, -1.3]],
  ['52.1° n, 1.3° e', [52.1, 1.3]],
  ['lat 52.1 lon -1.3', [52.1, -1.3]],
  ['latitude: 52.1, longitude: -1.3', [52.1, -1.3]],
])('marked by letters, "%s" is a place whatever is asked', (text, pair) => {
  expect([pairIn(text, true), pairIn(text, false)]).toEqual([pair, pair]);
});

test.each([
  ['place', ' 52.1N 1.3W ', 'field.latitude=52.1; field.longitude=-1.3'],
  ['soil-temperature', '52.1 N 1.3 W', 'field.latitude=52.1; field.longitude=-1.3'],
  ['soil-temperature', '9.1, 9.2', '"9.1"; "9.2"'],
  ['place', '9', '"9"'],
])('with %s open, "%s" is %s', (asked, text, said) => {
  expect(told(asked, text)).toBe(said);
});
