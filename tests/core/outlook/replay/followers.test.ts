import { describe, expect, test } from 'vitest';
import type { FactContext } from '../../../../src/core/facts/context.ts';
import { coreFacts } from '../../../../src/core/facts/registry/index.ts';
import type { KnownNumber } from '../../../../src/core/facts/types.ts';
import { noonAt, soilFollower } from '../../../../src/core/outlook/replay/soil-temperature.ts';
import type { WeatherDay } from '../../../../src/core/outlook/replay/types.ts';
import { flowOf, waterFollower } from '../../../../src/core/outlook/replay/water.ts';
import { testParameters } from '../../../generators/parameters.ts';
import { utc } from '../../facts/moments.ts';
import { daysOf, place } from './mild-days.ts';

const parameters = testParameters();

describe('noon by the sun', () => {
  test.each([
    [0, '2026-08-01T12:00Z'],
    [-15, '2026-08-01T13:00Z'],
    [30, '2026-08-01T10:00Z'],
  ])('at longitude %d is %s', (longitude, iso) => {
    expect(noonAt('2026-08-01', { longitude })).toBe(utc(iso));
  });
});

describe('the soil through a record', () => {
  function contextOf(record: readonly WeatherDay[], readings: FactContext['observations'], at: number): FactContext {
    return {
      at: noonAt(record[at]!.iso, place),
      zone: 'UTC',
      parameters,
      registry: coreFacts,
      trusted: null,
      untrusted: null,
      observations: readings,
      fact: () => ({ known: false, reason: 'not-asked' }),
    };
  }
  function follow(record: readonly WeatherDay[]) {
    const soil = soilFollower(record, place);
    const context = (at: number) =>
      contextOf(record, (id) => (id === 'soil.temperature30cmC' ? soil.readings() : []), at);
    return {
      ...soil,
      temperatureOn: (at: number) => soil.temperature(at, context(at)) as KnownNumber,
      trendOn: (at: number) => soil.trend(at, context(at)),
    };
  }
  const width = ({ low, high }: KnownNumber) => high - low;

  test('keeps the readings of sixty days, the sixtieth too, as measured at noon', () => {
    const record = daysOf(70, (at) => (at === 5 ? { soil30cmC: null } : {}));
    const soil = follow(record);
    for (const at of [0, 1, 5, 40]) soil.read(at);
    expect(soil.readings().map((one) => one.at)).toEqual([0, 1, 40].map((at) => noonAt(record[at]!.iso, place)));
    expect(soil.readings()[0]).toEqual({
      fact: 'soil.temperature30cmC',
      reading: { type: 'number', value: 13 },
      at: noonAt('2026-08-01', place),
      source: 'measured',
    });
    soil.read(60);
    expect(soil.readings()).toHaveLength(4);
    soil.read(61);
    expect(soil.readings().map((one) => one.at)).toEqual([1, 40, 60, 61].map((at) => noonAt(record[at]!.iso, place)));
  });

  test('stands as read on the day of a reading, is carried from it afterwards, and follows the air alone without one', () => {
    const record = daysOf(70);
    const soil = follow(record);
    const alone = soil.temperatureOn(50);
    expect(alone).toMatchObject({ source: 'derived', goodUntil: null, note: 'modelled from the air alone' });
    soil.read(50);
    const at = noonAt(record[50]!.iso, place);
    expect(soil.temperatureOn(50)).toEqual({
      known: true,
      type: 'number',
      value: 13,
      low: 13,
      high: 13,
      source: 'measured',
      at,
      goodUntil: null,
    });
    const carried = soil.temperatureOn(53);
    expect(carried).toMatchObject({ source: 'derived', note: 'carried forward from the last reading' });
    expect(width(carried)).toBeLessThan(width(alone));
    expect(width(carried)).toBeGreaterThan(0.3);
  });

  test('is modelled anew once it was read again, and for each day', () => {
    const record = daysOf(70, (at) => ({ soil30cmC: at === 52 ? 15 : 13 }));
    const soil = follow(record);
    soil.read(50);
    const before = soil.temperatureOn(53);
    expect(soil.temperatureOn(53)).toEqual(before);
    soil.read(52);
    expect(soil.temperatureOn(53).value).toBeGreaterThan(before.value + 0.3);
    expect(soil.temperatureOn(54)).not.toEqual(soil.temperatureOn(53));
  });

  test('follows the air of the sixty days before, and not of those to come', () => {
    const cold = (from: number, to: number) =>
      follow(daysOf(90, (at) => ({ airMeanC: at >= from && at <= to ? -3 : 12 }))).temperatureOn(70).value;
    const mild = cold(99, 99);
    expect(cold(71, 89)).toBe(mild);
    expect(cold(0, 9)).toBe(mild);
    expect(cold(60, 70)).toBeLessThan(mild - 1);
    expect(cold(10, 69)).toBeLessThan(mild - 2);
  });

  test('takes air that is missing, or cannot be, as a gap', () => {
    const withAir = (airMeanC: number | null) =>
      follow(daysOf(70, (at) => (at > 55 && at <= 60 ? { airMeanC } : {}))).temperatureOn(60);
    expect(withAir(999)).toEqual(withAir(null));
    expect(width(withAir(null))).toBeGreaterThan(width(withAir(12)));
  });

  test('tells its trend by readings of its own over days, else by the model, else not', () => {
    const falling = daysOf(70, (at) => ({ soil30cmC: 20 - 0.1 * at, airMeanC: at > 50 ? 2 : 12 }));
    const soil = follow(falling);
    expect(soil.trendOn(50)).toMatchObject({
      known: true,
      note: 'modelled over 3 days',
      at: noonAt('2026-09-20', place),
    });
    expect((soil.trendOn(50) as KnownNumber).value).toBeLessThan(0);
    soil.read(45);
    soil.read(50);
    expect(soil.trendOn(50)).toMatchObject({ known: true, value: -0.1, note: 'slope through 2 readings over 5 days' });
    expect(soil.trendOn(67)).toEqual({ known: false, reason: 'forecast-gap' });
    expect(soil.trendOn(66)).toMatchObject({ known: true });
  });
});

describe('water through a record', () => {
  const soil = { textures: ['clay-loam'], depthM: 0.3, cover: { kind: 'crop', coefficient: 0.5 } } as const;
  const dryDay = { rainMm: 0, referenceMm: 2 };

  test('begins without knowing, from capacity to a soil that gives no more; much rain brings both together', () => {
    const water = waterFollower(soil);
    const { capacityPercent, throughLowMm, throughHighMm } = water.today();
    expect(capacityPercent.high).toBe(100);
    expect(capacityPercent.low).toBeLessThan(70);
    expect(capacityPercent.value).toBeCloseTo((capacityPercent.low + 100) / 2, 9);
    expect([throughLowMm, throughHighMm]).toEqual([0, 0]);
    water.takeIn({ rainMm: 200, referenceMm: 0 });
    const wet = water.today();
    expect(wet.throughHighMm).toBeCloseTo(200, 9);
    expect(wet.throughLowMm).toBeLessThan(170);
    expect(wet.throughLowMm).toBeGreaterThan(150);
    // What ran through is still held that morning, up to saturation.
    expect(wet.capacityPercent.low).toBe(wet.capacityPercent.high);
    expect(wet.capacityPercent.low).toBeGreaterThan(110);
    water.takeIn(dryDay);
    expect(water.today().capacityPercent.high).toBeLessThan(100);
    expect(water.today().throughHighMm).toBe(0);
  });

  test('a day that is not known makes it unknown again', () => {
    const water = waterFollower(soil);
    const start = water.today();
    water.takeIn({ rainMm: 200, referenceMm: 0 });
    water.takeIn(null);
    expect(water.today()).toEqual(start);
  });

  test('tells what runs through over days to come, least and most, over every texture that may be', () => {
    const water = waterFollower({ ...soil, textures: ['sand', 'clay'] });
    expect(water.surplusOver([])).toEqual({ lowMm: 0, highMm: 0 });
    const { lowMm, highMm } = water.surplusOver([{ rainMm: 60, referenceMm: 0 }]);
    expect(highMm).toBeCloseTo(60, 9);
    expect(lowMm).toBeLessThan(40);
    for (let day = 0; day < 3; day += 1) water.takeIn({ rainMm: 200, referenceMm: 0 });
    expect(water.surplusOver([{ rainMm: 10, referenceMm: 0 }]).lowMm).toBeCloseTo(10, 9);
  });

  test('a flow is the rain and the evapotranspiration recorded, else worked out from the air (FAO-56), else not told', () => {
    const [day] = daysOf(1, () => ({ rainMm: 3 }));
    expect(flowOf(day!, place)).toEqual({ rainMm: 3, referenceMm: 1 });
    expect(flowOf({ ...day!, rainMm: null }, place)).toBeNull();
    const bare = { ...day!, referenceMm: null };
    const worked = flowOf(bare, place)!.referenceMm;
    // An August day of 8 to 16 C at 53 N: between 2 and 4 mm, from memory of almanacs.
    expect(worked).toBeGreaterThan(2);
    expect(worked).toBeLessThan(4);
    expect(flowOf({ ...bare, airMinC: 16, airMaxC: 8 }, place)?.referenceMm).toBe(worked);
    expect(flowOf({ ...bare, windKmh: 40 }, place)!.referenceMm).toBeGreaterThan(worked);
    expect(flowOf({ ...bare, windKmh: null }, place)).not.toBeNull();
    expect(flowOf({ ...bare, airMinC: null }, place)).toBeNull();
    expect(flowOf({ ...bare, airMaxC: null }, place)).toBeNull();
    expect(flowOf(bare, { ...place, latitude: 65 })).not.toBeNull();
    expect(flowOf(bare, { ...place, latitude: -65.1 })).toBeNull();
  });
});
