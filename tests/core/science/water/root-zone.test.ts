import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stepDeficit } from '../../../../src/core/science/water/deficit.ts';
import {
  easyShare,
  evaporationReduction,
  readilyAvailableWater,
  stepRootZone,
  stressCoefficient,
  totalAvailableWater,
  totalEvaporableWater,
} from '../../../../src/core/science/water/root-zone.ts';
import { expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const memory = (where: string) => `${fao56(where)}; from memory`;
const loamySand = { fieldCapacity: 0.15, wiltingPoint: 0.06 };
const silt = { fieldCapacity: 0.32, wiltingPoint: 0.15 };
const siltyClay = { fieldCapacity: 0.35, wiltingPoint: 0.23 };

/** Depletion after so many dry days of Example 37: TAW 160 mm, RAW 64 mm, crop use 1.2 x 5 mm/day, 55 mm at the start. */
function example37(days: number): number {
  const soil = { fieldCapacity: 0.32, wiltingPoint: 0.12 };
  const totalAvailableMm = totalAvailableWater(soil, 0.8);
  const ready = readilyAvailableWater(totalAvailableMm, 0.4);
  let depletion = 55;
  for (let day = 0; day < days; day++) {
    const cropUseMm = stressCoefficient(depletion, totalAvailableMm, ready) * 1.2 * 5;
    depletion = stepRootZone({ previousDepletionMm: depletion, rainMm: 0, cropUseMm, totalAvailableMm }).depletionMm;
  }
  return depletion;
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
  ['ex37-Ks-day3', 0.97, 0.005, memory('eq. 84'), () => stressCoefficient(67, 160, 64)],
  ['p-adjust', 0.76, 0.001, memory('Table 22 footnote'), () => easyShare(0.6, 1)],
  [
    'TEW-10cm',
    25,
    0.05,
    memory('eq. 73'),
    () => totalEvaporableWater({ fieldCapacity: 0.36, wiltingPoint: 0.22 }, 0.1),
  ],
  ['Kr', 0.667, 0.001, memory('eq. 74'), () => evaporationReduction(15, 25, 10)],
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

  const mm = fc.double({ min: 0, max: 100, noNaN: true });

  test('no water is lost: what came less what was used is either drained or makes up the depletion', () => {
    fc.assert(
      fc.property(mm, mm, fc.double({ min: 0, max: 10, noNaN: true }), (previousDepletionMm, rainMm, cropUseMm) => {
        const end = stepRootZone({ previousDepletionMm, rainMm, cropUseMm, totalAvailableMm: 200 });
        expect(end.depletionMm - end.drainageMm).toBeCloseTo(previousDepletionMm - rainMm + cropUseMm, 9);
        expect(end.depletionMm === 0 || end.drainageMm === 0).toBe(true);
      }),
    );
  });

  test('runoff, irrigation and capillary rise count with their sign', () => {
    const day = { previousDepletionMm: 30, rainMm: 10, cropUseMm: 4, totalAvailableMm: 100 };
    expect(stepRootZone({ ...day, runoffMm: 3, irrigationMm: 5, capillaryRiseMm: 1 }).depletionMm).toBe(21);
    expect(stepRootZone({ ...day, previousDepletionMm: 100, rainMm: 0 }).depletionMm).toBe(100);
  });

  test('stress and drying are from 0 to 1 and never ease as water is lost', () => {
    fc.assert(
      fc.property(mm, mm, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(stressCoefficient(more, 80, 40)).toBeLessThanOrEqual(stressCoefficient(less, 80, 40));
        expect(evaporationReduction(a, 25, 10)).toBeGreaterThanOrEqual(0);
        expect(evaporationReduction(a, 25, 10)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('the soil moisture deficit', () => {
  test.each([
    [20, 5, 1, 16, 0],
    [3, 10, 0.5, 0, 6.5],
    [0, 0, 0.5, 0.5, 0],
    [0, 8, 0, 0, 8],
  ])(
    '%d mm lacking, %d mm of rain and %d mm used leave %d mm lacking and %d mm to drain',
    (before, rain, used, deficitMm, surplusMm) => {
      expect(stepDeficit(before, rain, used)).toEqual({ deficitMm, surplusMm });
    },
  );

  test('no water is lost, and there is a surplus only once nothing lacks', () => {
    const mm = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(mm, mm, fc.double({ min: -0.5, max: 8, noNaN: true }), (before, rain, used) => {
        const { deficitMm, surplusMm } = stepDeficit(before, rain, used);
        expect(deficitMm - surplusMm).toBeCloseTo(before - rain + used, 9);
        expect(Math.min(deficitMm, surplusMm)).toBe(0);
      }),
    );
  });

  test.each([
    () => stepDeficit(-1, 0, 0),
    () => stepDeficit(0, Number.NaN, 0),
    () => stepDeficit(0, 0, 99),
    () => totalAvailableWater({ fieldCapacity: 0.2, wiltingPoint: 0.3 }, 1),
    () => readilyAvailableWater(100, 1.1),
    () => stressCoefficient(10, 50, 50),
    () => totalEvaporableWater(silt, 0.5),
    () => easyShare(0.9, 5),
    () => stepRootZone({ previousDepletionMm: 0, rainMm: -1, cropUseMm: 0, totalAvailableMm: 100 }),
  ])('what cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
