import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { estimateSoilWater, type MineralSoil, type SoilWater } from '../../../../src/core/science/soil/saxton-rawls.ts';
import { type TextureClass, textureClasses } from '../../../../src/core/science/soil/texture-class.ts';
import {
  availableShareFromFieldCapacityShare,
  fieldCapacityShareFromAvailableShare,
  soilWaterOfClass,
} from '../../../../src/core/science/soil/water-shares.ts';
import { between, expectWithin, outOfRange, type Published, publishedTitle } from '../published.ts';

const paper = 'Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578';

/** Table 3 at 2.5 % organic matter: wilting point, field capacity, saturation (volume %), conductivity (mm/h), tolerances 0.51 and 0.06. */
const table3: readonly [TextureClass, number, number, number, number][] = [
  ['sand', 5, 10, 46, 108.1],
  ['loamy-sand', 5, 12, 46, 96.7],
  ['sandy-loam', 8, 18, 45, 50.3],
  ['loam', 14, 28, 46, 15.5],
  ['silt-loam', 11, 31, 48, 16.1],
  ['silt', 6, 30, 48, 22.0],
  ['sandy-clay-loam', 17, 27, 43, 11.3],
  ['clay-loam', 22, 36, 48, 4.3],
  ['silty-clay-loam', 22, 38, 51, 5.7],
  ['silty-clay', 27, 41, 52, 3.7],
  ['sandy-clay', 25, 36, 44, 1.4],
  ['clay', 30, 42, 50, 1.1],
];

const sandy = { sandPercent: 85, clayPercent: 4, organicMatterPercent: 2.08 };
const silty = { sandPercent: 15, clayPercent: 18, organicMatterPercent: 3.05 };
const even = { sandPercent: 20, clayPercent: 20, organicMatterPercent: 2.5 };
const fine = `${paper}; worked values of public implementations`;
const mmPerHInCmPerS = 36_000;

const worked: Published<[MineralSoil, (water: SoilWater) => number]>[] = [
  ['hp-wp-sand-85-4', [sandy, (w) => w.wiltingPoint], 0.039999, 2e-5, fine],
  ['hp-fc-sand-85-4', [sandy, (w) => w.fieldCapacity], 0.097846, 2e-5, fine],
  ['hp-sat-sand-85-4', [sandy, (w) => w.saturation], 0.454455, 2e-5, fine],
  ['hp-ks-sand-85-4 in cm/s', [sandy, (w) => w.conductivityMmPerH / mmPerHInCmPerS], 0.003096, 2e-6, fine],
  ['hp-wp-siltloam-15-18', [silty, (w) => w.wiltingPoint], 0.1286, 2e-5, fine],
  ['hp-fc-siltloam-15-18', [silty, (w) => w.fieldCapacity], 0.33148, 2e-5, fine],
  ['hp-sat-siltloam-15-18', [silty, (w) => w.saturation], 0.50503, 2e-5, fine],
  ['hp-ks-siltloam-15-18 in cm/s', [silty, (w) => w.conductivityMmPerH / mmPerHInCmPerS], 0.000433, 2e-6, fine],
  ['hp-wp-20-20', [even, (w) => w.wiltingPoint], 0.1365448, 1e-6, fine],
  ['hp-fc-20-20', [even, (w) => w.fieldCapacity], 0.3208775, 1e-6, fine],
  ['hp-sat-20-20', [even, (w) => w.saturation], 0.482125, 1e-6, fine],
  [
    'bulk-density-20-20',
    [even, (w) => w.bulkDensity],
    1.37,
    0.005,
    `${paper}, eq. 6; worked value of a public library`,
  ],
];

/** Available water left at 80 % of field capacity (computed from the equations). */
const atEighty: readonly [TextureClass, number][] = [
  ['sand', 61],
  ['loamy-sand', 65],
  ['sandy-loam', 64],
  ['loam', 61],
  ['silt-loam', 69],
  ['silt', 75],
  ['sandy-clay-loam', 47],
  ['clay-loam', 49],
  ['silty-clay-loam', 54],
  ['silty-clay', 42],
  ['sandy-clay', 36],
  ['clay', 31],
];

describe('water held by a soil', () => {
  test.each(table3)(
    `%s: ${paper}, Table 3, gives %d, %d, %d and %d`,
    (name, wilting, capacity, saturation, conductivity) => {
      const water = soilWaterOfClass(name);
      expectWithin(100 * water.wiltingPoint, wilting, 0.51);
      expectWithin(100 * water.fieldCapacity, capacity, 0.51);
      expectWithin(100 * water.saturation, saturation, 0.51);
      expectWithin(water.conductivityMmPerH, conductivity, 0.06);
    },
  );

  test.each(worked)(publishedTitle, (_id, [soil, part], expected, tolerance) => {
    expectWithin(part(estimateSoilWater(soil)), expected, tolerance);
  });

  test.each(atEighty)(
    `80 %% of field capacity leaves %s %d %% of its available water (${paper}; computed)`,
    (name, share) => {
      expectWithin(availableShareFromFieldCapacityShare(name, 80), share, 0.6);
    },
  );

  test('a silty clay loam that holds 30.4 % where 38 % is field capacity is at 80 % of it (Table 3; computed)', () => {
    expect(30.4 / 38).toBeCloseTo(0.8, 9);
    const { fieldCapacity, wiltingPoint } = soilWaterOfClass('silty-clay-loam');
    const available = (100 * (0.8 * fieldCapacity - wiltingPoint)) / (fieldCapacity - wiltingPoint);
    expect(availableShareFromFieldCapacityShare('silty-clay-loam', 80)).toBeCloseTo(available, 9);
  });

  const percent = (max: number) => between(0, max);

  test('any mineral soil either holds more the wetter it is, all within 0 to 1, or is refused with its code', () => {
    fc.assert(
      fc.property(percent(100), percent(60), percent(8), (sandPercent, clayPercent, organicMatterPercent) => {
        fc.pre(sandPercent + clayPercent <= 100);
        const soil = { sandPercent, clayPercent, organicMatterPercent };
        try {
          const water = estimateSoilWater(soil);
          expect(0 < water.wiltingPoint && water.wiltingPoint < water.fieldCapacity).toBe(true);
          expect(water.fieldCapacity < water.saturation && water.saturation < 1).toBe(true);
          expect(water.conductivityMmPerH).toBeGreaterThan(0);
          expect(water.bulkDensity).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toEqual(outOfRange);
        }
      }),
      { numRuns: 1000 },
    );
  });

  const texture = fc.constantFrom(...textureClasses);
  const share = fc.integer({ min: 0, max: 1400 }).map((tenths) => tenths / 10);

  test('share of available water and share of field capacity go there and back, rise together, and meet at 100', () => {
    fc.assert(
      fc.property(texture, share, share, (name, a, b) => {
        const there = fieldCapacityShareFromAvailableShare(name, a);
        expect(availableShareFromFieldCapacityShare(name, there)).toBeCloseTo(a, 6);
        expect(Math.sign(there - fieldCapacityShareFromAvailableShare(name, b))).toBe(Math.sign(a - b));
        expect(fieldCapacityShareFromAvailableShare(name, 100)).toBeCloseTo(100, 9);
        expect(availableShareFromFieldCapacityShare(name, 0)).toBe(0);
      }),
    );
  });

  test.each([
    () => estimateSoilWater({ sandPercent: 20, clayPercent: 61, organicMatterPercent: 2 }),
    () => estimateSoilWater({ sandPercent: 20, clayPercent: 30, organicMatterPercent: 12 }),
    () => estimateSoilWater({ sandPercent: 80, clayPercent: 30, organicMatterPercent: 2 }),
    () => estimateSoilWater({ sandPercent: 100, clayPercent: 0, organicMatterPercent: 0 }),
    () => estimateSoilWater({ sandPercent: Number.NaN, clayPercent: 30, organicMatterPercent: 2 }),
    () => availableShareFromFieldCapacityShare('clay', -1),
    () => fieldCapacityShareFromAvailableShare('clay', Number.NaN),
  ])('a soil or share outside the range is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
