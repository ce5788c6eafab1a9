import { describe, expect, test } from 'vitest';
import { availablePercentOfFeel, type FeelClass } from '../../../../src/core/science/soil/feel-classes.ts';
import { type FeelGroup, feelGroups } from '../../../../src/core/science/soil/feel-groups.ts';
import { availableWaterOf, waterLacking } from '../../../../src/core/science/soil/feel-water.ts';
import { textureClasses } from '../../../../src/core/science/soil/texture-class.ts';
import { soilWaterOfClass } from '../../../../src/core/science/soil/water-shares.ts';
import { expectWithin } from '../published.ts';

const guide = 'USDA NRCS, Estimating Soil Moisture by Feel and Appearance, 1998';
const memory = `${guide}; from memory`;
const groups: readonly FeelGroup[] = ['coarse', 'moderately-coarse', 'medium', 'fine'];
const feelClasses = Object.keys(availablePercentOfFeel) as FeelClass[];

/** [group, feel, most lacking, least lacking (in/ft), source] */
const lacking: readonly [FeelGroup, FeelClass, number, number, string][] = [
  ['coarse', 'dry', 1.2, 0.5, guide],
  ['coarse', 'slightly-moist', 0.9, 0.3, guide],
  ['coarse', 'moist', 0.6, 0.2, guide],
  ['coarse', 'wet', 0.3, 0, memory],
  ['moderately-coarse', 'dry', 1.7, 1, guide],
  ['moderately-coarse', 'slightly-moist', 1.3, 0.7, guide],
  ['moderately-coarse', 'moist', 0.9, 0.3, memory],
  ['moderately-coarse', 'wet', 0.4, 0, memory],
  ['medium', 'dry', 2.1, 1.1, guide],
  ['medium', 'slightly-moist', 1.6, 0.8, guide],
  ['medium', 'moist', 1.1, 0.4, guide],
  ['medium', 'wet', 0.5, 0, guide],
  ['fine', 'dry', 2.4, 1.2, guide],
  ['fine', 'slightly-moist', 1.8, 0.8, guide],
  ['fine', 'moist', 1.2, 0.4, guide],
  ['fine', 'wet', 0.6, 0, guide],
];

describe('soil moisture by feel', () => {
  test.each([
    ['coarse', [0.6, 1.2], [50, 100]],
    ['moderately-coarse', [1.3, 1.7], [108, 142]],
    ['medium', [1.5, 2.1], [125, 175]],
    ['fine', [1.6, 2.4], [133, 200]],
  ] as const)(
    `a %s soil holds %j in/ft of available water, which is %j mm/m (${guide})`,
    (group, inches, millimetres) => {
      expect(availableWaterOf(group, 'in/ft')).toEqual(inches);
      expect(availableWaterOf(group, 'mm/m').map(Math.round)).toEqual(millimetres);
    },
  );

  test.each(lacking)('a %s soil that feels %s lacks %d to %d in/ft (%s)', (group, feel, most, least) => {
    const [greatest, smallest] = waterLacking(group, feel, 'in/ft');
    expectWithin(greatest, most, 0.051);
    expectWithin(smallest, least, 0.051);
  });

  test.each(groups)('a %s soil lacks less the wetter it feels, and nothing at capacity or saturated', (group) => {
    const most = feelClasses.map((feel) => waterLacking(group, feel, 'mm/m')[0]);
    expect(most).toEqual([...most].sort((a, b) => b - a));
    expect(waterLacking(group, 'at-capacity', 'mm/m')).toEqual([0, 0]);
    expect(waterLacking(group, 'saturated', 'mm/m')).toEqual([0, 0]);
  });

  test('the classes follow on each other without a gap', () => {
    const ends = feelClasses.map((feel) => availablePercentOfFeel[feel]);
    expect(ends.slice(1).map(([low]) => low)).toEqual(ends.slice(0, -1).map(([, high]) => high));
    expect(ends[0]![0]).toBe(0);
  });

  test('every texture class has a group', () => {
    expect(Object.keys(feelGroups).sort()).toEqual([...textureClasses].sort());
  });

  test('the typical soil of each texture class (Saxton & Rawls 2006) holds about what its group does, to 40 mm/m', () => {
    for (const name of textureClasses.filter((each) => each !== 'silt')) {
      const { fieldCapacity, wiltingPoint } = soilWaterOfClass(name);
      const [low, high] = availableWaterOf(feelGroups[name], 'mm/m');
      const held = 1000 * (fieldCapacity - wiltingPoint);
      expect(held).toBeGreaterThan(low - 40);
      expect(held).toBeLessThan(high + 40);
    }
  });
});
