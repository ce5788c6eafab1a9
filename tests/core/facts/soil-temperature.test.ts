import { describe, expect, test } from 'vitest';
import { workOutAt30cm } from '../../../src/core/facts/depth-reading.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { KnownNumber } from '../../../src/core/facts/types.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const zone = 'Europe/London';
const base = { at, zone, parameters: testParameters(), registry: coreFacts };

function forecastWith(temperature2mC: number, plan: Partial<ForecastPlan> = {}) {
  return buildForecast({ from: hoursAfter(at, -249), hours: 600, fetchedAt: at, ...plan, columns: { temperature2mC } });
}

function read(hoursAgo: number, value: number, band = 0) {
  const reading = { type: 'number', value, low: value - band, high: value + band } as const;
  return { fact: 'soil.temperature30cmC', reading, at: hoursAfter(at, -hoursAgo), source: 'measured' } as const;
}

function resolve(
  observations: ReturnType<typeof read>[],
  forecast = forecastWith(8) as ReturnType<typeof forecastWith> | null,
) {
  return resolveFacts({ ...base, observations, forecast });
}

const temperature = (...given: Parameters<typeof resolve>) => resolve(...given)['soil.temperature30cmC'];
const width = (...given: Parameters<typeof resolve>) => {
  const { low, high } = temperature(...given) as KnownNumber;
  return high - low;
};

describe('temperature at 30 cm from an earlier reading', () => {
  test('a reading of today stands as it is', () => {
    expect(temperature([read(20, 9.5)])).toMatchObject({ value: 9.5, low: 9.5, high: 9.5, source: 'measured' });
  });

  test('an older one is carried forward, and says from what', () => {
    expect(temperature([read(48, 9.5)])).toMatchObject({
      known: true,
      source: 'derived',
      at,
      note: 'carried forward from 9.5 C read 2026-11-04 09:00',
    });
  });

  test('one worked out from another depth is carried with its wider band, and says from what it was worked out', () => {
    const reading = workOutAt30cm({ type: 'number', value: 7 }, 10, hoursAfter(at, -48), zone);
    const elsewhere = resolve([{ ...read(48, 0), reading } as never])['soil.temperature30cmC'] as KnownNumber;
    expect(elsewhere).toMatchObject({ known: true, source: 'derived' });
    expect(elsewhere.note).toMatch(
      /^carried forward from [\d.]+ C read 2026-11-04 09:00, worked out from 7 C at 10 cm at 09:00$/,
    );
    expect(elsewhere.high - elsewhere.low).toBeGreaterThan(width([read(48, reading.value)]) + 1);
  });

  test('its band grows with the age of the reading', () => {
    const widths = [25, 72, 120, 168, 239].map((hours) => width([read(hours, 9.5)]));
    expect(widths.toSorted((a, b) => a - b)).toEqual(widths);
    expect(widths[0]).toBeGreaterThan(0.4);
  });

  test.each([
    ['after ten days', [read(240, 9.5)], forecastWith(8)],
    ['without a forecast', [read(48, 9.5)], null],
    ['with a forecast too old', [read(48, 9.5)], forecastWith(8, { fetchedAt: hoursAfter(at, -60) })],
    ['past the end of the forecast', [read(48, 9.5)], forecastWith(8, { hours: 120 })],
  ] as const)('it is too old %s', (_, observations, forecast) => {
    expect(temperature([...observations], forecast)).toMatchObject({ known: false, reason: 'too-old' });
  });

  test('a band that straddles the limit leaves it open', () => {
    const { low, high } = temperature([read(96, 10)], forecastWith(10)) as KnownNumber;
    expect(low).toBeLessThan(10);
    expect(high).toBeGreaterThan(10);
  });

  test('a reading of greater error never narrows it', () => {
    const widths = [0, 0.5, 1, 2].map((band) => width([read(72, 9.5, band)]));
    expect(widths.toSorted((a, b) => a - b)).toEqual(widths);
  });

  test('warmer air makes it warmer', () => {
    const values = [0, 5, 10, 15].map((air) => (temperature([read(120, 9.5)], forecastWith(air)) as KnownNumber).value);
    expect(values.toSorted((a, b) => a - b)).toEqual(values);
    expect(values[3]! - values[0]!).toBeGreaterThan(1);
  });

  test('a typing error of long ago is left out', () => {
    expect(temperature([read(200, 44), read(72, 9.5)])).toMatchObject({ known: true });
    expect(temperature([{ ...read(60, 85) }, read(72, 9.5)])).toEqual(temperature([read(72, 9.5)]));
  });
});

describe('trend at 30 cm from the model', () => {
  const trend = (observations: ReturnType<typeof read>[], forecast: ReturnType<typeof forecastWith> | null) =>
    resolve(observations, forecast)['soil.temperatureTrendCPerDay'];

  test.each([
    [2, 'falls'],
    [18, 'rises'],
  ] as const)('air of %d C to come: it %s', (air, way) => {
    const columns = { temperature2mC: (_: unknown, index: number) => (index < 249 ? 10 : air) };
    const forecast = buildForecast({ from: hoursAfter(at, -249), hours: 600, fetchedAt: at, columns });
    const fact = trend([read(3, 10)], forecast) as KnownNumber;
    expect(fact).toMatchObject({
      known: true,
      source: 'derived',
      note: 'modelled over 3 days from 10 C read 2026-11-06 06:00',
    });
    expect(way === 'falls' ? fact.value < -0.3 : fact.value > 0.3).toBe(true);
    expect(fact.low < fact.value && fact.value < fact.high).toBe(true);
  });

  test('readings of their own over days stand first', () => {
    const fact = trend([read(96, 11), read(48, 10.5), read(1, 10)], forecastWith(18));
    expect(fact).toMatchObject({ known: true, note: 'slope through 3 readings over 4 days' });
  });

  test('is not told without a forecast, or without a reading', () => {
    expect(trend([read(3, 10)], null)).toMatchObject({ known: false });
    expect(trend([], forecastWith(8))).toMatchObject({ known: false });
  });
});
