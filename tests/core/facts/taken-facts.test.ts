import { describe, expect, test } from 'vitest';
import { forecastSourceOf } from '../../../src/core/facts/forecast-facts.ts';
import { coreFacts, type FactRegistry } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactDefinition, ForecastTaking, KnownNumber } from '../../../src/core/facts/types.ts';
import { deltaT } from '../../../src/core/science/air/delta-t.ts';
import { pressureAtElevation } from '../../../src/core/science/air/pressure.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const base = { at, zone: 'Europe/London', parameters: testParameters(), registry: coreFacts };

describe('a fact that a pack takes from the forecast', () => {
  const { cautiousEnd: _, ...plain }: FactDefinition = coreFacts['rain.next48hMm'];
  const own = (
    taking: ForecastTaking,
    columns: ForecastPlan['columns'],
    more: Partial<FactDefinition> = {},
    { moment = at, fetchedAt = at } = {},
  ) => {
    const range = [-50, 500] as const;
    const definition = { ...plain, precision: 0.001, range, ...more, forecast: taking };
    const registry: FactRegistry = { ...coreFacts, 'own.fact': definition };
    const forecast = buildForecast({ from: hoursAfter(at, -9), hours: 72, fetchedAt, ...(columns && { columns }) });
    return resolveFacts({ ...base, at: moment, registry, observations: [], forecast })['own.fact'];
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

  test('of rain by an older forecast: its band is as much wider as the others', () => {
    const taking = { variable: 'rain', take: 'sum', over: ahead } as const;
    const old = { fetchedAt: hoursAfter(at, -26) };
    expect(own(taking, { precipitationMm: 1 }, {}, old)).toMatchObject({ value: 6, low: 3, high: 9 });
  });

  // Rain and gusts are of the hour that ends at a stamp, wind and air of the stamp itself.
  test.each([
    ['rain', 'precipitationMm', 15, 16],
    ['gusts-at-boom', 'windGusts10mKmh', 15, 16],
    ['wind-at-boom', 'windSpeed10mKmh', 15, 16],
    ['air-temperature', 'temperature2mC', 15, 16],
  ] as const)(
    '%s of six hours from 09:00 ends with 15:00, and from 09:30 with the hour after',
    (variable, column, last, after) => {
      const taking = { variable, take: 'max', over: ahead } as const;
      const peakAt = (stamp: number, moment = at) => {
        const columns = { [column]: (_: number, index: number) => (index === stamp ? 30 : 5) };
        const fact = own(taking, columns, {}, { moment }) as KnownNumber;
        const calm = own(taking, { [column]: 5 }, {}, { moment }) as KnownNumber;
        return fact.value > calm.value;
      };
      expect([peakAt(last), peakAt(after)]).toEqual([true, false]);
      expect(peakAt(after, hoursAfter(at, 0.5))).toBe(true);
      expect(peakAt(after + 1, hoursAfter(at, 0.5))).toBe(false);
    },
  );

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
