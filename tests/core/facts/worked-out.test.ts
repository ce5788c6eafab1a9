import { describe, expect, test } from 'vitest';
import { forecastSourceOf } from '../../../src/core/facts/forecast-facts.ts';
import { coreFacts, type FactId, type FactRegistry } from '../../../src/core/facts/registry/index.ts';
import { contextOf, resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import { soilWaterDays } from '../../../src/core/facts/soil-water-days.ts';
import { doubtStuck } from '../../../src/core/facts/stuck-reading.ts';
import type { FactDefinition, ForecastTaking, Known, KnownNumber, Reading } from '../../../src/core/facts/types.ts';
import { knownChoice } from '../../../src/core/rules/analyse/known-values.ts';
import { deltaT } from '../../../src/core/science/air/delta-t.ts';
import { pressureAtElevation } from '../../../src/core/science/air/pressure.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
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
const facts = (observations: readonly FactObservation[], forecast: Forecast | null = null, registry = coreFacts) =>
  resolveFacts({ ...base, registry, observations, forecast });

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
    expect(facts(wind)['wind.boomKmh']).not.toHaveProperty('note');
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

describe('a fact that a pack takes from the forecast', () => {
  const { cautiousEnd: _, ...plain }: FactDefinition = coreFacts['rain.next48hMm'];
  const own = (taking: ForecastTaking, columns: ForecastPlan['columns'], more: Partial<FactDefinition> = {}) => {
    const range = [-50, 500] as const;
    const definition = { ...plain, precision: 0.001, range, ...more, forecast: taking };
    const registry: FactRegistry = { ...coreFacts, 'own.fact': definition };
    const forecast = buildForecast({ from: hoursAfter(at, -9), hours: 72, fetchedAt: at, ...(columns && { columns }) });
    return facts([], forecast, registry)['own.fact'];
  };
  const ahead = { hoursAhead: 'forecastFreshHours' };
  const byHour = (_: number, index: number) => index - 9;

  test('of the air: hours ahead from now to the end, bands growing with each day ahead', () => {
    const taken = (take: ForecastTaking['take'], over: ForecastTaking['over'] = ahead) =>
      own({ variable: 'air-temperature', take, over }, { temperature2mC: byHour });
    const grown = 1 + (0.1 * 6) / 24;
    expect(taken('value')).toMatchObject({ value: 0, low: -1, high: 1, goodUntil: hoursAfter(at, 6) });
    expect(taken('min')).toMatchObject({ value: 0, low: -1, high: 1 });
    expect(taken('max')).toMatchObject({ value: 6, low: 6 - grown, high: 6 + grown });
    expect(taken('mean')).toMatchObject({ value: 3 });
    expect(taken('value', 'now')).toMatchObject({ value: 0, low: -1, high: 1, source: 'forecast' });
    expect(taken('max', 'next-night')).toMatchObject({ known: true });
  });

  test('of rain: the sum of the hours with the share of its band alone, never below none', () => {
    const taken = (take: ForecastTaking['take'], over: ForecastTaking['over'] = ahead) =>
      own({ variable: 'rain', take, over }, { precipitationMm: (_, i) => (i >= 10 && i <= 16 ? 1 : 0) });
    expect(taken('sum')).toMatchObject({ value: 6, low: 4.5, high: 7.5 });
    expect(taken('max')).toMatchObject({ value: 1, low: 0.75, high: 1.25 });
    expect(taken('value', 'now')).toMatchObject({ value: 1, low: 0.75, high: 1.25 });
    expect(own({ variable: 'rain', take: 'value', over: 'now' }, { precipitationMm: 0 })).toMatchObject({
      value: 0,
      low: 0,
      high: 0.1,
    });
  });

  test('of Delta T: from air and humidity at the height of the cell, its band over their corners', () => {
    const of = (temperatureC: number, humidityPercent: number) =>
      Math.round(deltaT({ temperatureC, humidityPercent, pressureKPa: pressureAtElevation(60) }) * 1000) / 1000;
    const taking = { variable: 'delta-t', take: 'value', over: 'now' } as const;
    const columns = { temperature2mC: 20, relativeHumidity2mPercent: 50 };
    const fact = own(taking, columns) as KnownNumber;
    expect(fact.value).toBe(of(20, 50));
    expect(fact.low).toBeCloseTo(of(19, 55), 2);
    expect(fact.high).toBeCloseTo(of(21, 45), 2);
    expect(own(taking, { ...columns, temperature2mC: null })).toEqual({ known: false, reason: 'forecast-gap' });
    expect(own(taking, { ...columns, relativeHumidity2mPercent: null })).toMatchObject({ reason: 'forecast-gap' });
  });

  test('is unknown where one of its hours is missing, and implausible outside its range', () => {
    const gap = (_: number, index: number) => (index === 12 ? null : 5);
    const taking = { variable: 'air-temperature', take: 'min', over: ahead } as const;
    expect(own(taking, { temperature2mC: gap })).toEqual({ known: false, reason: 'forecast-gap' });
    const cold = { temperature2mC: -60, relativeHumidity2mPercent: null };
    expect(own(taking, cold)).toEqual({ known: false, reason: 'implausible', note: 'forecast -60 mm' });
    expect(own(taking, { temperature2mC: 5 }, { range: [4.5, 5] })).toMatchObject({ value: 5, low: 4.5, high: 5 });
    expect(own(taking, { temperature2mC: 5 }, { range: [5, 9] })).toMatchObject({ value: 5, low: 5 });
  });

  test('stands at the end that the pack names, and is good as long as what is seen now where it is of now', () => {
    const now = { variable: 'air-temperature', take: 'value', over: 'now', end: 'low' } as const;
    expect(own(now, { temperature2mC: 5 })).toMatchObject({
      value: 4,
      low: 4,
      high: 4,
      note: 'cautious end of the band 4 to 6',
      goodUntil: hoursAfter(at, 12),
    });
    const seen = { goodFor: { kind: 'hours', parameter: 'goodForSeenNowHours' } } as const;
    expect(own({ ...now, end: 'high' }, { temperature2mC: 5 }, seen)).toMatchObject({
      value: 6,
      goodUntil: hoursAfter(at, 1),
    });
    expect(own({ ...now, over: ahead }, { temperature2mC: 5 }, seen)).toMatchObject({ goodUntil: hoursAfter(at, 6) });
    expect(own(now, {}, { goodFor: { kind: 'same-day' } })).toMatchObject({ goodUntil: hoursAfter(at, 6) });
    expect(forecastSourceOf('soil.feel', coreFacts)).toBeUndefined();
  });
});

describe('water in the soil, its band', () => {
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
