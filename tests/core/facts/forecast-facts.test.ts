import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { EpochSeconds } from '../../../src/core/units/brands.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const zone = 'Europe/London';
const parameters = testParameters();

function resolve(forecast: Forecast, moment: EpochSeconds = at, observations: readonly FactObservation[] = []) {
  return resolveFacts({ observations, forecast, at: moment, zone, parameters, registry: coreFacts });
}

function withColumns(columns: ForecastPlan['columns'], plan: Partial<ForecastPlan> = {}) {
  return buildForecast({ from: hoursAfter(at, -9), fetchedAt: at, ...plan, ...(columns ? { columns } : {}) });
}

describe('the forecast gives the weather now with a band', () => {
  test.each([
    ['air.temperatureC', { temperature2mC: 8 }, 8, 7, 9],
    ['air.relativeHumidityPercent', { relativeHumidity2mPercent: 80 }, 80, 75, 85],
    ['air.relativeHumidityPercent', { relativeHumidity2mPercent: 98 }, 98, 93, 100],
    ['rain.nowMmPerH', { precipitationMm: 0 }, 0, 0, 0.1],
    ['rain.nowMmPerH', { precipitationMm: 2 }, 2, 1.5, 2.5],
    // 0.4996 of the 10 m wind at 0.8 m over a crop of 0.3 m: log profile, FAO-56 eq. 4 constants.
    ['wind.boomKmh', { windSpeed10mKmh: 20 }, 9.99, 7.99, 12],
    ['wind.boomKmh', { windSpeed10mKmh: 4 }, 2, 0.99, 3],
    ['wind.gustKmh', { windGusts10mKmh: 30 }, 14.99, 11.99, 17.99],
  ] as const)('%s from %j is %d (%d to %d)', (id, columns, value, low, high) => {
    const fact = resolve(withColumns(columns))[id];
    expect(fact).toMatchObject({ known: true, source: 'forecast', value, low, high });
    expect(fact).toMatchObject({ at, goodUntil: hoursAfter(at, 1) });
  });

  test('a value at the stamp is that of the nearest stamp, a sum that of the hour under way', () => {
    const forecast = withColumns({
      temperature2mC: (_, index) => index,
      precipitationMm: (_, index) => index,
    });
    const facts = resolve(forecast, hoursAfter(at, 1 / 3));
    expect(facts['air.temperatureC']).toMatchObject({ value: 9 });
    expect(facts['rain.nowMmPerH']).toMatchObject({ value: 10 });
  });

  test.each([
    [0, 1],
    [6, 1],
    [7, 1.05],
    [26, 2],
    [47, 3.05],
  ])('%d h after it was fetched a band of 1 C is %d C', (age, half) => {
    const fact = resolve(withColumns({ temperature2mC: 8 }, { fetchedAt: hoursAfter(at, -age) }))['air.temperatureC'];
    expect(fact).toMatchObject({ low: 8 - half, high: 8 + half });
  });

  test.each([
    ['wind.boomKmh', { windSpeed10mKmh: 20 }, 5.99, 13.99],
    ['wind.gustKmh', { windGusts10mKmh: 30 }, 8.99, 20.99],
    ['air.relativeHumidityPercent', { relativeHumidity2mPercent: 80 }, 70, 90],
    ['rain.nowMmPerH', { precipitationMm: 2 }, 1, 3],
    ['rain.next48hMm', { precipitationMm: 0.1 }, 7.2, 7.2],
    ['rain.next48hMaxMmPerH', { precipitationMm: 2 }, 3, 3],
  ] as const)('26 h after it was fetched the band of %s, too, is twice as wide', (id, columns, low, high) => {
    const fact = resolve(withColumns(columns, { fetchedAt: hoursAfter(at, -26) }))[id];
    expect(fact).toMatchObject({ low, high });
  });

  test('it is too old from the oldest age on, and nothing is good beyond that', () => {
    const almost = resolve(withColumns({}, { fetchedAt: hoursAfter(at, -47.5) }));
    expect(almost['air.temperatureC']).toMatchObject({ known: true, goodUntil: hoursAfter(at, 0.5) });
    expect(almost['rain.next48hMm']).toMatchObject({ known: true, goodUntil: hoursAfter(at, 0.5) });
    const old = resolve(withColumns({}, { fetchedAt: hoursAfter(at, -48) }));
    expect(old['air.temperatureC']).toMatchObject({ known: false, reason: 'too-old' });
    expect(old['rain.next48hMm']).toMatchObject({ known: false, reason: 'too-old' });
  });

  test('a missing value or column is unknown and never zero', () => {
    const gap = resolve(withColumns({ precipitationMm: () => null, windSpeed10mKmh: null }));
    expect(gap['rain.nowMmPerH']).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(gap['wind.boomKmh']).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(gap['wind.gustKmh']).toMatchObject({ known: true });
  });

  test('outside its hours the forecast says nothing', () => {
    const short = withColumns({}, { hours: 5 });
    expect(resolve(short)['air.temperatureC']).toMatchObject({ known: false, reason: 'forecast-gap' });
  });

  test('a value that cannot be is refused as implausible', () => {
    expect(resolve(withColumns({ temperature2mC: 60 }))['air.temperatureC']).toMatchObject({
      known: false,
      reason: 'implausible',
    });
  });

  test.each([
    [{ distanceKm: 15 }, true],
    [{ distanceKm: 15.01 }, false],
  ])('a grid cell %j away is used: %s', (place, used) => {
    expect(resolve(withColumns({}, { place }))['air.temperatureC']).toMatchObject({ known: used });
  });

  test('a grid cell far from the field is not used, whatever point was asked for', () => {
    const field = (fact: 'field.latitude' | 'field.longitude', value: number): FactObservation => ({
      fact,
      reading: { type: 'number', value },
      at,
      source: 'profile',
    });
    const near = [field('field.latitude', 53.1), field('field.longitude', -1)];
    const far = [field('field.latitude', 53.2), field('field.longitude', -1)];
    expect(resolve(withColumns({}), at, near)['air.temperatureC']).toMatchObject({ known: true });
    expect(resolve(withColumns({}), at, far)['air.temperatureC']).toMatchObject({ known: false });
  });
});

describe('rain in the next 48 hours', () => {
  test('the sum and the heaviest hour stand at the high end of their band', () => {
    const rain = withColumns({ precipitationMm: (_, index) => (index === 20 ? 4 : index === 57 ? 2 : 0) });
    const facts = resolve(rain);
    expect(facts['rain.next48hMm']).toMatchObject({ value: 7.5, low: 7.5, high: 7.5, source: 'forecast' });
    expect(facts['rain.next48hMm']).toMatchObject({ note: 'cautious end of the band 4.5 to 7.5' });
    expect(facts['rain.next48hMaxMmPerH']).toMatchObject({ value: 5, low: 5, high: 5 });
    expect(facts['rain.next48hMm']).toMatchObject({ goodUntil: hoursAfter(at, 6) });
  });

  test.each([
    [9, 0],
    [10, 1.25],
    [57, 1.25],
    [58, 0],
  ])('1 mm in the hour stamped %d h after midnight counts %d mm at 09:00', (stamp, total) => {
    const rain = withColumns({ precipitationMm: (_, index) => (index === stamp ? 1 : 0) });
    expect(resolve(rain)['rain.next48hMm']).toMatchObject({ value: total });
  });

  test.each([
    ['2026-10-24T09:00Z', 'the clocks going back'],
    ['2026-03-28T09:00Z', 'the clocks going forward'],
  ])('48 hours across %s (%s) are 48 hours', (moment) => {
    const from = utc(moment);
    const rain = buildForecast({ from, hours: 60, columns: { precipitationMm: (_, i) => (i >= 1 ? 1 : 0) } });
    expect(resolve(rain, from)['rain.next48hMm']).toMatchObject({ value: 60 });
  });

  test('a zone half an hour off changes nothing: hours are hours', () => {
    const rain = withColumns({ precipitationMm: 1 });
    const facts = resolveFacts({
      observations: [],
      forecast: rain,
      at,
      zone: 'Asia/Kolkata',
      parameters,
      registry: coreFacts,
    });
    expect(facts['rain.next48hMm']).toMatchObject({ value: 60 });
  });

  test.each([
    ['a gap', { columns: { precipitationMm: (_: number, i: number) => (i === 30 ? null : 0) } }],
    ['the end of the forecast', { hours: 57 }],
    ['no rain column', { columns: { precipitationMm: null } }],
  ])('past %s it is unknown, not dry', (_, plan) => {
    const facts = resolve(buildForecast({ from: hoursAfter(at, -9), fetchedAt: at, ...plan }));
    expect(facts['rain.next48hMm']).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(facts['rain.next48hMaxMmPerH']).toMatchObject({ known: false, reason: 'forecast-gap' });
  });

  test('a forecast that reaches just 48 hours is enough', () => {
    expect(resolve(withColumns({}, { hours: 58 }))['rain.next48hMm']).toMatchObject({ known: true, value: 0 });
  });
});
