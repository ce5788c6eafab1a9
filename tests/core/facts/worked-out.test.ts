import { describe, expect, test } from 'vitest';
import { deficitOf } from '../../../src/core/facts/derive/deficit.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { contextOf, resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import { soilWaterDays } from '../../../src/core/facts/soil-water-days.ts';
import { doubtStuck } from '../../../src/core/facts/stuck-reading.ts';
import type { Known, KnownNumber, Reading } from '../../../src/core/facts/types.ts';
import { knownChoice, knownNumber } from '../../../src/core/rules/analyse/known-values.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const zone = 'Europe/London';
const soil: FactId = 'soil.temperature30cmC';
const base = { at, zone, parameters: testParameters(), registry: coreFacts };

const said = (fact: FactId, reading: Reading, hoursAgo = 0): FactObservation => ({
  fact,
  reading,
  at: hoursAfter(at, -hoursAgo),
  source: 'said',
});
const number = (value: number, more: object = {}): Reading => ({ type: 'number', value, ...more });
const choice = (...possible: string[]): Reading => ({ type: 'choice', possible });
const facts = (observations: readonly FactObservation[], forecast: Forecast | null = null) =>
  resolveFacts({ ...base, observations, forecast });

describe('what is worked out says from what, and how long it is good', () => {
  const place = [said('field.latitude', number(53)), said('field.longitude', number(-1))];
  const air = [said('air.temperatureC', number(10)), said('air.relativeHumidityPercent', number(80), 0.5)];
  const known = { known: true, source: 'derived' };

  test.each<[FactId, FactObservation[], string]>([
    ['sun.daylight', place, 'from the place and the time'],
    ['air.deltaTC', air, 'from air temperature and relative humidity'],
    ['air.inversionRisk', [...place, said('wind.boomKmh', number(20))], 'from wind, cloud and the height of the sun'],
    ['crop.frostOnLeaves', air, 'the air is above 4 C'],
    ['soil.drainsRunning', [said('field.drained', choice('no'))], 'the field is not drained'],
    ['soil.drainsExpected7d', [said('field.drained', choice('no'))], 'the field is not drained'],
  ])('%s', (id, observations, note) => {
    expect(facts(observations)[id]).toMatchObject({ ...known, at, note });
  });

  test('the deficit and the surplus by which drains are expected, to a tenth of a millimetre', () => {
    const columns = { precipitationMm: (time: number) => (time > at ? 9 / 168 : 0), et0Mm: 0 };
    const forecast = buildForecast({ from: hoursAfter(at, -24), fetchedAt: at, hours: 24 + 1 + 168, columns });
    const felt = [said('soil.feel', choice('at-capacity')), said('field.texture', choice('clay-loam'))];
    expect(facts(felt, forecast)['soil.drainsExpected7d']).toMatchObject({
      possible: ['yes'],
      note: 'deficit 0 to 0 mm, surplus in 7 days 6.7 to 11.3 mm',
    });
    const short = { ...forecast, times: forecast.times.slice(0, 100) };
    expect(facts(felt, short)['soil.drainsExpected7d']).toEqual({
      known: false,
      reason: 'forecast-gap',
      note: 'rain and evapotranspiration are not known for 7 days',
    });
    const stale = { ...forecast, fetchedAt: hoursAfter(at, -45) };
    expect(facts(felt, stale)['soil.drainsExpected7d']).toMatchObject({ goodUntil: hoursAfter(at, 3) });
  });

  test('a temperature carried forward is good for six hours, while the reading and the forecast may be used', () => {
    const plan = { from: hoursAfter(at, -249), hours: 600 };
    const carried = (hoursAgo: number, fetchedHoursAgo = 0) =>
      facts([said(soil, number(9), hoursAgo)], buildForecast({ ...plan, fetchedAt: hoursAfter(at, -fetchedHoursAgo) }));
    const until = (hoursAgo: number, fetched?: number) => carried(hoursAgo, fetched)[soil] as Known;
    expect(until(30).goodUntil).toBe(hoursAfter(at, 6));
    expect(until(30, 45).goodUntil).toBe(hoursAfter(at, 3));
    expect(until(238).goodUntil).toBe(hoursAfter(at, 2));
    const trend = carried(238, 45)['soil.temperatureTrendCPerDay'];
    expect(trend).toMatchObject({ ...known, goodUntil: hoursAfter(at, 2) });
    expect(carried(30, 45)['soil.temperatureTrendCPerDay']).toMatchObject({ goodUntil: hoursAfter(at, 3) });
    expect(carried(30)['soil.temperatureTrendCPerDay']).toMatchObject({ goodUntil: hoursAfter(at, 6) });
    expect(carried(240)['soil.temperatureTrendCPerDay']).toMatchObject({ known: false });
  });
});

describe('readings that are stuck at one value', () => {
  const stuck = [4, 3, 2, 1, 0].map((days) => said(soil, number(9), days * 24));

  test('have a wider band and say so; others stand as read', () => {
    const read = facts(stuck)[soil] as KnownNumber;
    expect(read).toMatchObject({ value: 9, low: 8.95, high: 9.05 });
    expect(read.note).toMatch(/ \(READING_STUCK\)$/);
    expect(read.note!.length).toBeGreaterThan('(READING_STUCK)'.length + 10);
    const moving = [...stuck.slice(0, 4), said(soil, number(9.1))];
    expect(facts(moving)[soil]).toMatchObject({ low: 9.1, high: 9.1 });
    expect(facts(moving)[soil]).not.toHaveProperty('note');
    const wind = [4, 3, 2, 1, 0].map((days) => said('wind.boomKmh', number(9), days * 24));
    for (const given of [wind, [...stuck, ...wind]]) expect(facts(given)['wind.boomKmh']).not.toHaveProperty('note');
  });

  test('reach over what the model carries from the first of them, where there is a forecast', () => {
    const columns = { temperature2mC: 2 };
    const forecast = buildForecast({ from: hoursAfter(at, -249), hours: 600, fetchedAt: at, columns });
    const read = facts(stuck, forecast)[soil] as KnownNumber;
    expect(read.value).toBe(9);
    expect(read.low).toBeLessThan(8.5);
    expect(read.high).toBeGreaterThanOrEqual(9.05);
    const given: Known = { ...read, low: 9, high: 9 };
    const context = contextOf({ ...base, observations: stuck, forecast });
    const warm = { ...given, low: 8, high: 12 };
    expect(doubtStuck(soil, given, context, () => warm)).toMatchObject({ low: 8, high: 12 });
    expect(doubtStuck(soil, given, context, () => knownChoice('x'))).toMatchObject({ low: 8.95, high: 9.05 });
    expect(doubtStuck(soil, knownChoice('x'), context, () => warm)).toEqual(knownChoice('x'));
  });

  test('tell no trend of their own', () => {
    expect(facts(stuck)['soil.temperatureTrendCPerDay']).toMatchObject({ known: false });
    expect(facts([...stuck.slice(0, 4), said(soil, number(8.6))])['soil.temperatureTrendCPerDay']).toMatchObject({
      known: true,
    });
  });
});

describe('the deficit of a soil', () => {
  const depth = testParameters();
  const deficit = (given: Readonly<Record<string, Known>>) =>
    deficitOf({ parameters: depth, fact: (id) => given[id] ?? { known: false, reason: 'not-asked' } });
  const told = (one: Known, hours: number, goodHours: number): Known => ({
    ...one,
    at: hoursAfter(at, -hours),
    goodUntil: hoursAfter(at, goodHours),
  });

  test('stands as of the first of what it came from, and is good while all of that is', () => {
    const measured = told(knownNumber(90), 3, 20);
    const felt = told(knownChoice('moist'), 5, 19);
    const clay = told(knownChoice('clay'), 500, 2);
    expect(deficit({ 'soil.fieldCapacityPercent': measured, 'soil.feel': felt })).toMatchObject({
      at: hoursAfter(at, -5),
      goodUntil: hoursAfter(at, 19),
    });
    expect(deficit({ 'soil.fieldCapacityPercent': measured, 'field.texture': clay })).toMatchObject({
      at: hoursAfter(at, -3),
      goodUntil: hoursAfter(at, 2),
      soils: [{ texture: 'clay' }],
    });
    expect(deficit({ 'field.texture': clay })).toBeNull();
  });
});

describe('water in the soil, its band', () => {
  test('is told by days at the field', () => {
    const days = (where: string) =>
      soilWaterDays({
        ...base,
        zone: where,
        forecast: buildForecast({ from: hoursAfter(at, -9), fetchedAt: at, hours: 60 }),
        observations: [said('soil.feel', choice('moist'))],
      }).map(({ day }) => day);
    // The forecast ends on 8 November, 11:00 UTC, which is 9 November, 00:00 in Auckland.
    expect(days('UTC')).toEqual(['2026-11-06', '2026-11-07']);
    expect(days('Pacific/Auckland')).toEqual(['2026-11-06', '2026-11-07', '2026-11-08']);
  });

  test('holds the rain of the forecast less and more by its share', () => {
    const columns = { precipitationMm: 0.5, et0Mm: 0 };
    const day = (share: number) => {
      const [, second] = soilWaterDays({
        ...base,
        parameters: testParameters({ balanceErrorMmPerRootDay: 0, forecastRainBandShare: share }),
        forecast: buildForecast({ from: hoursAfter(at, -9), fetchedAt: at, hours: 72, columns }),
        observations: [said('soil.feel', choice('at-capacity')), said('field.texture', choice('clay-loam'))],
      });
      return [second!.surplusLowMm, second!.surplusHighMm].map((mm) => Math.round(mm * 100) / 100);
    };
    expect(day(0)).toEqual([12, 12]);
    expect(day(0.25)).toEqual([9, 15]);
    expect(day(1.5)).toEqual([0, 30]);
  });
});
