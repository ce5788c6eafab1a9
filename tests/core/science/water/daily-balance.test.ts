import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textureClasses } from '../../../../src/core/science/soil/texture-class.ts';
import {
  availableShareFromFieldCapacityShare,
  soilWaterOfClass,
} from '../../../../src/core/science/soil/water-shares.ts';
import { type BalanceInput, type BandedFlow, balanceDays } from '../../../../src/core/science/water/daily-balance.ts';
import { greatestSurplus } from '../../../../src/core/science/water/surplus.ts';
import { between, expectWithin } from '../published.ts';

const crop = { kind: 'crop', coefficient: 0.35 } as const;

/** Days of so much rain (a fifth either way) and reference evapotranspiration. */
function days(rows: readonly (readonly [rainMm: number, referenceMm: number])[]): BandedFlow[] {
  return rows.map(([rainMm, referenceMm], index) => ({
    day: `2026-11-${String(index + 1).padStart(2, '0')}`,
    rainMm,
    rainLowMm: rainMm * 0.8,
    rainHighMm: rainMm * 1.2,
    referenceMm,
  }));
}

const rows = fc.array(fc.tuple(fc.oneof(fc.constant(0), between(0, 30)), between(-0.3, 4)), {
  minLength: 1,
  maxLength: 12,
});
const anySoil = fc
  .tuple(fc.constantFrom(...textureClasses), between(0, 1), between(0, 10))
  .map(([texture, share, half]) => {
    const { fieldCapacity, wiltingPoint } = soilWaterOfClass(texture);
    const deficitMm = share * 300 * (fieldCapacity - wiltingPoint);
    return { texture, deficitMm, lowMm: Math.max(0, deficitMm - half), highMm: deficitMm + half };
  });
const anyInput = fc
  .tuple(fc.array(anySoil, { minLength: 1, maxLength: 3 }), rows, fc.constantFrom(crop, { kind: 'bare' } as const))
  .map(([soils, flows, cover]): BalanceInput => ({ soils, depthM: 0.3, cover, flows: days(flows) }));

describe('water in the soil day by day', () => {
  test('bands contain the middle, shares lie within what can be, and a day ends only once', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const found = balanceDays(input);
        expect(found.map(({ day }) => day)).toEqual(input.flows.map(({ day }) => day));
        for (const one of found) {
          expect(one.deficitLowMm).toBeLessThanOrEqual(one.deficitMm + 1e-9);
          expect(one.deficitHighMm).toBeGreaterThanOrEqual(one.deficitMm - 1e-9);
          expect(one.deficitLowMm).toBeGreaterThanOrEqual(0);
          expect(one.surplusLowMm).toBeLessThanOrEqual(one.surplusMm + 1e-9);
          expect(one.surplusHighMm).toBeGreaterThanOrEqual(one.surplusMm - 1e-9);
          for (const percent of [one.fieldCapacityPercent, one.availableWaterPercent, one.saturationPercent]) {
            expect(percent).toBeGreaterThanOrEqual(0);
            expect(percent).toBeLessThanOrEqual(100 + 1e-9);
          }
          expect(one.mostSaturationPercent).toBeGreaterThanOrEqual(one.saturationPercent - 1e-9);
        }
      }),
    );
  });

  test('mass balance closes over the whole stretch to 1e-9 mm for the middle of one soil', () => {
    fc.assert(
      fc.property(anySoil, rows, (soil, flows) => {
        const found = balanceDays({ soils: [soil], depthM: 0.3, cover: crop, flows: days(flows) });
        const sum = (of: 'rainMm' | 'etMm' | 'surplusMm') => found.reduce((total, one) => total + one[of], 0);
        const end = found.at(-1)?.deficitMm ?? Number.NaN;
        expect(Math.abs(end - soil.deficitMm - (sum('etMm') + sum('surplusMm') - sum('rainMm')))).toBeLessThan(1e-9);
      }),
    );
  });

  test('the share of field capacity and the share of available water agree through Saxton & Rawls', () => {
    fc.assert(
      fc.property(anySoil, rows, (soil, flows) => {
        for (const one of balanceDays({ soils: [soil], depthM: 0.3, cover: crop, flows: days(flows) })) {
          expectWithin(
            one.availableWaterPercent,
            availableShareFromFieldCapacityShare(soil.texture, one.fieldCapacityPercent),
            1e-9,
          );
          const { fieldCapacity } = soilWaterOfClass(soil.texture);
          expectWithin(one.fieldCapacityPercent, 100 - one.deficitMm / (3 * fieldCapacity), 1e-9);
        }
      }),
    );
  });

  // Saxton & Rawls 2006, Table 3: clay loam holds 36 % at field capacity and 22 % at wilting point; 0.3 m of it 108 and 66 mm.
  test('clay loam at capacity, 10 dry days of 1 mm: 3.5 mm lack, 97 % of field capacity, 92 % of the available water', () => {
    const soils = [{ texture: 'clay-loam', deficitMm: 0, lowMm: 0, highMm: 0 }] as const;
    const end = balanceDays({ soils, depthM: 0.3, cover: crop, flows: days(Array(10).fill([0, 1])) }).at(-1);
    expectWithin(end?.deficitMm ?? Number.NaN, 3.5, 1e-9);
    expectWithin(end?.fieldCapacityPercent ?? Number.NaN, 96.8, 0.3);
    expectWithin(end?.availableWaterPercent ?? Number.NaN, 91.7, 0.5);
  });

  test('a soil that is full and gets more than its free pores hold shows them all filled that day, and not at its end', () => {
    const soils = [{ texture: 'clay', deficitMm: 0, lowMm: 0, highMm: 0 }] as const;
    const [wet] = balanceDays({ soils, depthM: 0.3, cover: crop, flows: days([[60, 0]]) });
    expect(wet?.mostSaturationPercent).toBeCloseTo(100, 6);
    expect(wet?.saturationPercent).toBeLessThan(95);
    expect(wet?.fieldCapacityPercent).toBe(100);
  });

  test('steps of one day are summed, and no steps give no days', () => {
    const soils = [{ texture: 'loam', deficitMm: 5, lowMm: 5, highMm: 5 }] as const;
    const [flow] = days([[1, 0.1]]);
    const hours = Array.from({ length: 24 }, () => flow!);
    const found = balanceDays({ soils, depthM: 0.3, cover: crop, flows: hours });
    expect(found).toHaveLength(1);
    expectWithin(found[0]?.rainMm ?? Number.NaN, 24, 1e-9);
    expect(balanceDays({ soils, depthM: 0.3, cover: crop, flows: [] })).toEqual([]);
  });

  test('the surplus that tells of drains spans that of every soil, start and rain', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const found = balanceDays(input);
        const sum = (of: 'surplusMm') => found.reduce((total, one) => total + one[of], 0);
        const span = greatestSurplus({ ...input, rainBandShare: 0.2 });
        expect(span.lowMm).toBeLessThanOrEqual(sum('surplusMm') + 1e-9);
        expect(span.highMm).toBeGreaterThanOrEqual(sum('surplusMm') - 1e-9);
      }),
    );
  });
});
