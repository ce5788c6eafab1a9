import { describe, expect, test } from 'vitest';
import { soilWaterOfClass } from '../../../../src/core/science/soil/water-shares.ts';
import { deficitOfState, shareGiven, startState, stepWater } from '../../../../src/core/science/water/balance.ts';
import { type BandedFlow, balanceDays } from '../../../../src/core/science/water/daily-balance.ts';
import { type Cover, soilStoreOf } from '../../../../src/core/science/water/soil-store.ts';
import { greatestSurplus } from '../../../../src/core/science/water/surplus.ts';

// Worked by hand from the equations of FAO-56 that the code names; water of the classes by Saxton & Rawls 2006, Table 3.

const crop = (coefficient: number): Cover => ({ kind: 'crop', coefficient });
const bare: Cover = { kind: 'bare' };

describe('what a depth of soil holds', () => {
  test('under a crop: all that is available down to the depth, 0.6 of it easily, all of it in the layer that dries', () => {
    const { fieldCapacity, wiltingPoint, saturation } = soilWaterOfClass('clay-loam');
    const store = soilStoreOf('clay-loam', 0.3, crop(0.35));
    const totalMm = 300 * (fieldCapacity - wiltingPoint);
    expect(store.texture).toBe('clay-loam');
    expect(store.atCapacityMm).toBeCloseTo(300 * fieldCapacity, 9);
    expect(store.atSaturationMm).toBeCloseTo(300 * saturation, 9);
    expect(store.drying.totalMm).toBeCloseTo(totalMm, 9);
    expect(store.drying.readyMm).toBeCloseTo(0.6 * totalMm, 9);
    expect([store.drying.coefficient, store.dryingShare]).toEqual([0.35, 1]);
  });

  test.each([
    [0.05, 1],
    [0.1, 1],
    [0.2, 0.5],
    [0.3, 1 / 3],
  ])('bare, of %d m the upper 0.1 m dry, which is a share of %d', (depthM, share) => {
    const { fieldCapacity, wiltingPoint } = soilWaterOfClass('loam');
    const store = soilStoreOf('loam', depthM, bare);
    expect(store.dryingShare).toBeCloseTo(share, 9);
    expect(store.drying.totalMm).toBeCloseTo(100 * (fieldCapacity - 0.5 * wiltingPoint), 9);
    expect([store.drying.readyMm, store.drying.coefficient]).toEqual([9, 1.2]);
  });
});

describe('a step worked by hand', () => {
  const layer = { totalMm: 8, readyMm: 4, coefficient: 1 };
  const step = (upperMm: number, rainMm: number, referenceMm: number, lowerMm = 0, of = layer) =>
    stepWater({ upperMm, lowerMm }, { rainMm, referenceMm }, of);

  test('a start is spread over both layers, and what is beyond capacity is all above', () => {
    expect(startState(12, { dryingShare: 0.25 })).toEqual({ upperMm: 3, lowerMm: 9 });
    expect(startState(0, { dryingShare: 0.25 })).toEqual({ upperMm: 0, lowerMm: 0 });
    expect(startState(-4, { dryingShare: 0.25 })).toEqual({ upperMm: -4, lowerMm: 0 });
    expect(deficitOfState({ upperMm: -4, lowerMm: 1 })).toBe(0);
    expect(deficitOfState({ upperMm: 4, lowerMm: 1 })).toBe(5);
  });

  test.each([
    [0, 1],
    [4, 1],
    [5, 0.75],
    [8, 0],
    [9, 0],
  ])('of 4 mm that are ready and 8 in all, %d mm lost, a share of %d is given', (lost, share) => {
    expect(shareGiven(lost, layer)).toBe(share);
  });

  test.each([
    ['in one part, as much as is ready', 0, 0, 4, { upperMm: 4, used: 4, surplus: 0 }],
    ['in three parts, of which the last gives nothing', 0, 0, 12, { upperMm: 8, used: 8, surplus: 0 }],
    ['in three parts, with rain in each', 0, 3, 12, { upperMm: 7, used: 10, surplus: 0 }],
    ['in two parts, as the whole is just more than is ready', 2, 0, 6, { upperMm: 7.25, used: 5.25, surplus: 0 }],
    ['with dew, which comes down whole on soil however dry', 8, 0, -0.5, { upperMm: 7.5, used: -0.5, surplus: 0 }],
    ['with dew on soil at capacity, which runs through', 0, 0, -0.5, { upperMm: 0, used: -0.5, surplus: 0.5 }],
  ])('%s', (_, before, rain, reference, { upperMm, used, surplus }) => {
    const end = step(before, rain, reference);
    expect(end.state.upperMm).toBeCloseTo(upperMm, 9);
    expect([end.usedMm, end.surplusMm]).toEqual([expect.closeTo(used, 9), expect.closeTo(surplus, 9)]);
  });

  test('a coefficient counts on what the air asks for', () => {
    expect(step(0, 0, 2, 0, { ...layer, coefficient: 0.35 }).usedMm).toBeCloseTo(0.7, 9);
  });

  test('rain fills the upper layer, then the lower one, and only then runs through', () => {
    expect(step(2, 3, 0, 5)).toEqual({ state: { upperMm: 0, lowerMm: 4 }, usedMm: 0, surplusMm: 0 });
    expect(step(2, 9, 0, 5)).toEqual({ state: { upperMm: 0, lowerMm: 0 }, usedMm: 0, surplusMm: 2 });
  });
});

/** Days of rain (2 mm less at least, 3 mm more at most) and evapotranspiration, two flows to a day. */
function halves(...days: (readonly [day: string, rainMm: number, referenceMm: number])[]): BandedFlow[] {
  return days.flatMap(([day, rain, reference]) => {
    const half = { rainMm: rain / 2, rainLowMm: rain / 2 - 1, rainHighMm: rain / 2 + 1.5, referenceMm: reference / 2 };
    return [
      { day, ...half },
      { day, ...half },
    ];
  });
}

describe('days worked by hand', () => {
  const soils = [
    { texture: 'loam', deficitMm: 10, lowMm: 8, highMm: 12 },
    { texture: 'clay', deficitMm: 4, lowMm: 4, highMm: 6 },
  ] as const;
  const days = () =>
    balanceDays({ soils, depthM: 0.3, cover: crop(0.5), flows: halves(['2026-11-06', 9, 2], ['2026-11-07', 4, 0]) });

  test('of two soils: the mean of both in the middle, the driest and the wettest at the ends', () => {
    const [first, second] = days();
    expect(first).toMatchObject({ day: '2026-11-06', rainMm: 9, etMm: expect.closeTo(1, 9) });
    // Loam 10 + 1 - 9 = 2; clay 4 + 1 - 9 = -4, which runs through. Wettest 4 + 1 - 12 and driest 12 + 1 - 7.
    expect(first?.deficitMm).toBeCloseTo((2 + 0) / 2, 9);
    expect([first?.deficitLowMm, first?.deficitHighMm]).toEqual([0, expect.closeTo(6, 9)]);
    expect(first?.surplusMm).toBeCloseTo((0 + 4) / 2, 9);
    expect([first?.surplusLowMm, first?.surplusHighMm]).toEqual([0, expect.closeTo(7, 9)]);
    // Loam 2 - 4 = -2; clay 0 - 4. Driest 6 - 2, wettest 0 - 7.
    expect(second).toMatchObject({ day: '2026-11-07', rainMm: 4, etMm: 0 });
    expect(second?.deficitMm).toBe(0);
    expect([second?.deficitLowMm, second?.deficitHighMm]).toEqual([0, expect.closeTo(4, 9)]);
    expect(second?.surplusMm).toBeCloseTo((2 + 4) / 2, 9);
    expect([second?.surplusLowMm, second?.surplusHighMm]).toEqual([0, expect.closeTo(7, 9)]);
  });

  test('shares are the means of both soils, each of its own water', () => {
    const [first] = days();
    const [loam, clay] = [soilWaterOfClass('loam'), soilWaterOfClass('clay')];
    const mean = (a: number, b: number) => expect.closeTo((a + b) / 2, 9);
    const available = 100 - (100 * 2) / (300 * (loam.fieldCapacity - loam.wiltingPoint));
    expect(first?.fieldCapacityPercent).toEqual(mean(100 - (100 * 2) / (300 * loam.fieldCapacity), 100));
    expect(first?.availableWaterPercent).toEqual(mean(available, 100));
    const pores = (held: number, soil: typeof loam) => (100 * held) / (300 * soil.saturation);
    const loamHeld = 300 * loam.fieldCapacity - 2;
    const clayHeld = 300 * clay.fieldCapacity;
    expect(first?.saturationPercent).toEqual(mean(pores(loamHeld, loam), pores(clayHeld, clay)));
    expect(first?.mostSaturationPercent).toEqual(mean(pores(loamHeld, loam), pores(clayHeld + 4, clay)));
  });

  test('a start drier than the soil can be holds nothing', () => {
    const dry = [{ texture: 'loam', deficitMm: 900, lowMm: 900, highMm: 900 }] as const;
    const [day] = balanceDays({ soils: dry, depthM: 0.3, cover: crop(0), flows: halves(['2026-11-06', 2, 0]) });
    expect(day).toMatchObject({ fieldCapacityPercent: 0, availableWaterPercent: 0, saturationPercent: 0 });
  });

  test('days come in the order in which they first come, and the flows of one belong together', () => {
    const [a, b] = halves(['2026-11-06', 4, 0], ['2026-11-07', 6, 0]).filter((_, index) => index % 2 === 0);
    const found = balanceDays({ soils, depthM: 0.3, cover: crop(0.5), flows: [a!, b!, a!] });
    expect(found.map(({ day, rainMm }) => [day, rainMm])).toEqual([
      ['2026-11-06', 4],
      ['2026-11-07', 3],
    ]);
  });
});

describe('the surplus of all flows', () => {
  const wet = [
    { rainMm: 30, referenceMm: 2 },
    { rainMm: 20, referenceMm: 0 },
  ];
  const loam = { texture: 'loam', deficitMm: 10, lowMm: 5, highMm: 15 } as const;
  const surplus = (soils: Parameters<typeof greatestSurplus>[0]['soils'], rainBandShare: number, flows = wet) =>
    greatestSurplus({ soils, depthM: 0.3, cover: crop(0.5), flows, rainBandShare });

  test('is at least that of the driest start with the least rain, at most that of the wettest with the most', () => {
    const { lowMm, highMm } = surplus([loam], 0.2);
    expect(lowMm).toBeCloseTo(50 * 0.8 - 1 - 15, 9);
    expect(highMm).toBeCloseTo(50 * 1.2 - 1 - 5, 9);
  });

  test('takes the driest and the wettest start of any soil', () => {
    const { lowMm, highMm } = surplus([loam, { texture: 'clay', deficitMm: 8, lowMm: 2, highMm: 18 }], 0);
    expect([lowMm, highMm]).toEqual([expect.closeTo(50 - 1 - 18, 9), expect.closeTo(50 - 1 - 2, 9)]);
  });

  test('with a band of all the rain and more has no rain at least', () => {
    expect(surplus([{ ...loam, highMm: 0, lowMm: 0 }], 1.5, [{ rainMm: 30, referenceMm: 0 }])).toEqual({
      lowMm: 0,
      highMm: expect.closeTo(75, 9),
    });
  });

  test('of soils that dry out unlike: least by the one that goes on using water, most by the one that stops first', () => {
    const drought = Array.from({ length: 60 }, () => ({ rainMm: 0, referenceMm: 4 }));
    const flows = [...drought, { rainMm: 100, referenceMm: 0 }];
    const full = (texture: 'sand' | 'silt') => ({ texture, deficitMm: 0, lowMm: 0, highMm: 0 });
    const [sand, silt] = [surplus([full('sand')], 0, flows), surplus([full('silt')], 0, flows)];
    expect(sand.lowMm).toBeGreaterThan(silt.lowMm + 20);
    for (const both of [
      [full('sand'), full('silt')],
      [full('silt'), full('sand')],
    ]) {
      expect(surplus(both, 0, flows)).toEqual({ lowMm: silt.lowMm, highMm: sand.highMm });
    }
  });
});
