import { expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { KnownNumber } from '../../../src/core/facts/types.ts';
import type { SiteClimatology } from '../../../src/core/science/soil/temperature/index.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');

/** A usual air of so much in early November, warmest in July. */
function usualAir(novemberC: number): SiteClimatology {
  const wave = (day: number) => 5 * Math.cos((2 * Math.PI * (day - 200)) / 366);
  const meanAirCByDayOfYear = Array.from({ length: 366 }, (_, day) => novemberC + wave(day) - wave(305));
  return { meanAirCByDayOfYear, spreadC: 3, years: 10, source: 'x' };
}

/** The soil by a reading of 9.5 C five days old, of which the forecast knows the air since. */
function soil(climatology?: SiteClimatology) {
  const reading = { type: 'number', value: 9.5, low: 9.5, high: 9.5 } as const;
  const observation = { fact: 'soil.temperature30cmC', reading, at: hoursAfter(at, -120), source: 'measured' } as const;
  const forecast = buildForecast({ from: hoursAfter(at, -129), hours: 400, fetchedAt: at });
  const facts = resolveFacts({
    at,
    zone: 'Europe/London',
    parameters: testParameters(),
    registry: coreFacts,
    observations: [observation],
    forecast: climatology ? { ...forecast, climatology } : forecast,
  });
  return facts['soil.temperature30cmC'] as KnownNumber;
}

const width = ({ low, high }: KnownNumber) => high - low;

test('the usual air of the place stands for the days before the forecast: the band of a carried reading narrows where both agree', () => {
  const [byLatitude, agreeing, warmer] = [soil(), soil(usualAir(7)), soil(usualAir(12))];
  expect(width(agreeing)).toBeLessThan(width(byLatitude));
  expect(width(warmer)).toBeGreaterThan(width(agreeing));
  expect(warmer.value).not.toBe(agreeing.value);
});
