import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareGiven, startState, stepWater } from '../../../../src/core/science/water/balance.ts';
import {
  easyShare,
  readilyAvailableWater,
  totalAvailableWater,
  totalEvaporableWater,
} from '../../../../src/core/science/water/root-zone.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const memory = (where: string) => `${fao56(where)}; from memory`;
const loamySand = { fieldCapacity: 0.15, wiltingPoint: 0.06 };
const silt = { fieldCapacity: 0.32, wiltingPoint: 0.15 };
const siltyClay = { fieldCapacity: 0.35, wiltingPoint: 0.23 };

/** Depletion after so many dry days of Example 37: TAW 160 mm, RAW 64 mm, crop use 1.2 x 5 mm/day, 55 mm at the start. */
function example37(days: number): number {
  const totalMm = totalAvailableWater({ fieldCapacity: 0.32, wiltingPoint: 0.12 }, 0.8);
  const layer = { totalMm, readyMm: readilyAvailableWater(totalMm, 0.4), coefficient: 1.2 };
  let state = startState(55, { dryingShare: 1 });
  for (let day = 0; day < days; day++) state = stepWater(state, { rainMm: 0, referenceMm: 5 }, layer).state;
  return state.upperMm;
}

const rows: PublishedCall[] = [
  ['ex36-aw-loamy-sand', 90, 0.5, memory('eq. 82, Example 36'), () => totalAvailableWater(loamySand, 1)],
  ['ex36-aw-silt', 170, 0.5, memory('eq. 82, Example 36'), () => totalAvailableWater(silt, 1)],
  ['ex36-aw-silty-clay', 120, 0.5, memory('eq. 82, Example 36'), () => totalAvailableWater(siltyClay, 1)],
  ['ex36-TAW-onion-loamy-sand', 36, 0.5, memory('Example 36'), () => totalAvailableWater(loamySand, 0.4)],
  ['ex36-RAW-onion-loamy-sand', 11, 0.5, memory('eq. 83, Example 36'), () => readilyAvailableWater(36, 0.3)],
  ['ex36-TAW-tomato-silt', 136, 0.5, memory('Example 36'), () => totalAvailableWater(silt, 0.8)],
  ['ex36-RAW-tomato-silt', 54, 0.5, memory('eq. 83, Example 36'), () => readilyAvailableWater(136, 0.4)],
  ['ex36-TAW-maize-silty-clay', 144, 0.5, memory('Example 36'), () => totalAvailableWater(siltyClay, 1.2)],
  ['ex36-RAW-maize-silty-clay', 79, 0.5, memory('eq. 83, Example 36'), () => readilyAvailableWater(144, 0.55)],
  ['ex37-depletion-day1', 61, 0.15, memory('eq. 84 and 85, Example 37'), () => example37(1)],
  ['ex37-depletion-day2', 67, 0.15, memory('eq. 84 and 85, Example 37'), () => example37(2)],
  ['ex37-depletion-day3', 72.8, 0.15, memory('eq. 84 and 85, Example 37'), () => example37(3)],
  ['ex37-depletion-day5', 83.4, 0.15, memory('eq. 84 and 85, Example 37'), () => example37(5)],
  ['ex37-depletion-day10', 104.5, 0.15, memory('eq. 84 and 85, Example 37'), () => example37(10)],
  ['ex37-Ks-day3', 0.97, 0.005, memory('eq. 84'), () => shareGiven(67, { totalMm: 160, readyMm: 64 })],
  ['p-adjust', 0.76, 0.001, memory('Table 22 footnote'), () => easyShare(0.6, 1)],
  [
    'TEW-10cm',
    25,
    0.05,
    memory('eq. 73'),
    () => totalEvaporableWater({ fieldCapacity: 0.36, wiltingPoint: 0.22 }, 0.1),
  ],
  ['Kr', 0.667, 0.001, memory('eq. 74'), () => shareGiven(15, { totalMm: 25, readyMm: 10 })],
];

describe('water balance of the root zone', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('the share p of rape, 0.60 (FAO-56 Table 22), stays within 0.1 to 0.8 at any use of water', () => {
    expect(easyShare(0.7, 0)).toBe(0.8);
    expect(easyShare(0.6, 5)).toBe(0.6);
    expect(easyShare(0.3, 20)).toBe(0.1);
  });

  const mm = between(0, 100);

  test('stress and drying are from 0 to 1 and never ease as water is lost', () => {
    fc.assert(
      fc.property(mm, mm, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const crop = { totalMm: 80, readyMm: 40 };
        expect(shareGiven(more, crop)).toBeLessThanOrEqual(shareGiven(less, crop));
        expect(shareGiven(a, { totalMm: 25, readyMm: 10 })).toBeGreaterThanOrEqual(0);
        expect(shareGiven(a, { totalMm: 25, readyMm: 10 })).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each([
    () => totalAvailableWater({ fieldCapacity: 0.2, wiltingPoint: 0.3 }, 1),
    () => readilyAvailableWater(100, 1.1),
    () => totalEvaporableWater(silt, 0.5),
    () => easyShare(0.9, 5),
  ])('what cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
