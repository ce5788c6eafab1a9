import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const base = { at, zone: 'Europe/London', parameters: testParameters(), registry: coreFacts };

function seen(fact: FactId, reading: Reading, hoursAgo = 0): FactObservation {
  return { fact, reading, at: hoursAfter(at, -hoursAgo), source: 'said' };
}

const number = (value: number, low = value, high = value): Reading => ({ type: 'number', value, low, high });

describe('Delta T', () => {
  // Psychrometric wet bulb after FAO-56 eq. 15 and 16.
  test.each([
    [10, 80, 1.69],
    [5, 90, 0.69],
    [8, 85, 1.17],
    [30, 50, 7.94],
  ])('%d C and %d %% give %d C', (temperature, humidity, expected) => {
    const observations = [
      seen('air.temperatureC', number(temperature)),
      seen('air.relativeHumidityPercent', number(humidity)),
    ];
    const facts = resolveFacts({ ...base, observations, forecast: null });
    expect(facts['air.deltaTC']).toMatchObject({ known: true, value: expected, low: expected, high: expected });
  });

  test('its band holds the corners of both bands', () => {
    const observations = [
      seen('air.temperatureC', number(10, 5, 30)),
      seen('air.relativeHumidityPercent', number(80, 50, 90), 0.5),
    ];
    const fact = resolveFacts({ ...base, observations, forecast: null })['air.deltaTC'];
    expect(fact).toMatchObject({ known: true, low: 0.68, high: 7.94, goodUntil: hoursAfter(at, 0.5) });
  });

  test('without humidity it is unknown', () => {
    const facts = resolveFacts({ ...base, observations: [seen('air.temperatureC', number(10))], forecast: null });
    expect(facts['air.deltaTC']).toEqual({ known: false, reason: 'not-asked' });
  });
});

describe('daylight', () => {
  const place = [seen('field.latitude', number(53)), seen('field.longitude', number(-1))];

  // Sunrise 07:15 and sunset 16:20 UTC within a few minutes at 53 N 1 W on 6 November: from memory of almanacs.
  test.each([
    ['2026-11-06T06:50Z', ['no']],
    ['2026-11-06T07:40Z', ['yes']],
    ['2026-11-06T15:55Z', ['yes']],
    ['2026-11-06T16:45Z', ['no']],
  ])('at %s it is %j', (moment, possible) => {
    const input = { ...base, observations: place.map((one) => ({ ...one, at: utc('2026-10-01T00:00Z') })) };
    const facts = resolveFacts({ ...input, forecast: null, at: utc(moment) });
    expect(facts['sun.daylight']).toMatchObject({ known: true, possible, source: 'derived' });
  });

  test('it is good for an hour, but not past sunset', () => {
    const input = { ...base, observations: place, forecast: null };
    const noon = utc('2026-11-06T12:00Z');
    const late = utc('2026-11-06T15:55Z');
    expect(resolveFacts({ ...input, at: noon })['sun.daylight']).toMatchObject({ goodUntil: hoursAfter(noon, 1) });
    const { goodUntil } = resolveFacts({ ...input, at: late })['sun.daylight'] as { goodUntil: number };
    expect(goodUntil).toBeGreaterThan(late);
    expect(goodUntil).toBeLessThan(hoursAfter(late, 0.75));
  });

  test('without the field it is judged where the forecast was asked for, without either unknown', () => {
    const forecast = buildForecast({ from: at });
    expect(resolveFacts({ ...base, observations: [], forecast })['sun.daylight']).toMatchObject({ known: true });
    expect(resolveFacts({ ...base, observations: [], forecast: null })['sun.daylight']).toMatchObject({ known: false });
  });
});

describe('inversion risk', () => {
  const place = [seen('field.latitude', number(53), 24), seen('field.longitude', number(-1), 24)];
  const evening = utc('2026-11-06T18:00Z');
  const noon = utc('2026-11-06T12:00Z');
  const sky = (moment: typeof at, windSpeed10mKmh: number | null, cloudCoverPercent: number | null) =>
    buildForecast({ from: moment, columns: { windSpeed10mKmh, cloudCoverPercent } });

  // Nearly calm: below 6 km/h at the boom, 12 km/h at 10 m; the band there is 1 km/h.
  test.each<[string, typeof at, wind: number | null, cloud: number | null, string[] | null]>([
    ['calm and clear in the evening', evening, 4, 0, ['yes']],
    ['cloud just at the limit is clear', evening, 4, 25, ['yes']],
    ['cloud just above it is not', evening, 4, 26, ['yes', 'no']],
    ['clear but windy is open', evening, 30, 0, ['yes', 'no']],
    ['neither calm nor clear', evening, 30, 100, ['no']],
    ['under cloud with wind near the limit', evening, 12, 100, ['yes', 'no']],
    ['clear with wind near the limit', evening, 12, 0, ['yes', 'no']],
    ['by day', noon, 0, 0, ['no']],
    ['by day without wind and cloud', noon, null, null, ['no']],
    ['in the evening without wind and cloud', evening, null, null, null],
    ['in the evening without cloud, windy', evening, 30, null, ['yes', 'no']],
  ])('%s', (_, moment, wind, cloud, possible) => {
    const facts = resolveFacts({ ...base, observations: place, forecast: sky(moment, wind, cloud), at: moment });
    expect(facts['air.inversionRisk']).toMatchObject(possible === null ? { known: false } : { known: true, possible });
  });

  test('wind felt by the person outranks the forecast here too', () => {
    const observations = [...place, { ...seen('wind.boomKmh', number(20)), at: evening }];
    const facts = resolveFacts({ ...base, observations, forecast: sky(evening, 0, 100), at: evening });
    expect(facts['air.inversionRisk']).toMatchObject({ possible: ['no'] });
  });

  test('by day it is good until the evening begins, an hour at most', () => {
    const until = (moment: typeof at) => {
      const fact = resolveFacts({ ...base, observations: place, forecast: null, at: moment })['air.inversionRisk'];
      return (fact as { goodUntil: number }).goodUntil;
    };
    expect(until(noon)).toBe(hoursAfter(noon, 1));
    const late = utc('2026-11-06T14:00Z');
    expect(until(late)).toBeGreaterThan(late);
    expect(until(late)).toBeLessThan(hoursAfter(late, 0.6));
  });
});
