import { describe, expect, test } from 'vitest';
import { soilWaterDays } from '../../../src/core/facts/derive/soil-water.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Resolved } from '../../../src/core/facts/types.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const choice = (...possible: string[]): Resolved => ({
  known: true,
  type: 'choice',
  possible,
  source: 'said',
  at,
  goodUntil: null,
});
const unknown: Resolved = { known: false, reason: 'not-asked' };

type Given = Readonly<Partial<Record<FactId, Resolved>>>;

const week = (plan: Partial<ForecastPlan> = {}) =>
  buildForecast({ from: hoursAfter(at, -33), fetchedAt: at, hours: 240, ...plan });

function waterOf(forecast: ReturnType<typeof week> | null, given: Given, growth = 1) {
  return soilWaterDays({
    at,
    zone: 'Europe/London',
    parameters: testParameters(),
    trusted: forecast && { forecast, growth, oldestAt: hoursAfter(at, 48) },
    fact: (id) => given[id] ?? unknown,
  });
}

const moistClay: Given = { 'soil.feel': choice('moist'), 'field.texture': choice('clay') };

describe('water in the soil from what was felt', () => {
  test('whole days from the day it was felt to the last that the forecast holds', () => {
    // 240 stamps from 5 November 00:00: the last is 14 November 23:00, so that day lacks its last hour.
    expect(waterOf(week(), moistClay).map(({ day }) => day)).toEqual(
      ['06', '07', '08', '09', '10', '11', '12', '13'].map((day) => `2026-11-${day}`),
    );
  });

  test('moist clay holds half to three quarters of its available water, in the middle of the guide class', () => {
    const [first] = waterOf(week(), moistClay);
    expect(first?.availableWaterPercent).toBeGreaterThan(60);
    expect(first?.availableWaterPercent).toBeLessThan(62.5);
    expect(first?.deficitLowMm).toBeLessThan(first?.deficitMm ?? 0);
    expect(first?.deficitHighMm).toBeGreaterThan(first?.deficitMm ?? 99);
  });

  test('of a missing texture every class counts, with a wider band', () => {
    const width = (given: Given) => {
      const [first] = waterOf(week(), given);
      return (first?.deficitHighMm ?? 0) - (first?.deficitLowMm ?? 0);
    };
    expect(width({ 'soil.feel': choice('moist') })).toBeGreaterThan(width(moistClay));
  });

  test('rain widens the band, an older forecast more so', () => {
    const rainy = week({ columns: { precipitationMm: 0.1 } });
    const width = (growth: number) => {
      const last = waterOf(rainy, { ...moistClay, 'soil.feel': choice('wet') }, growth).at(-1);
      return (
        (last?.surplusHighMm ?? 0) - (last?.surplusLowMm ?? 0) + (last?.deficitHighMm ?? 0) - (last?.deficitLowMm ?? 0)
      );
    };
    expect(width(2)).toBeGreaterThan(width(1));
  });

  test('days that begin to lack rain or evapotranspiration are left out, and none is guessed', () => {
    const gap = hoursAfter(at, 60);
    const holed = week({ columns: { precipitationMm: (time) => (time === gap ? null : 0) } });
    expect(waterOf(holed, moistClay).map(({ day }) => day)).toEqual(['2026-11-06', '2026-11-07']);
    const early = week({ hours: 60 });
    expect(waterOf(early, moistClay).map(({ day }) => day)).toEqual(['2026-11-06']);
    const without = week({ columns: { et0Mm: null, temperature2mC: null } });
    expect(waterOf(without, moistClay)).toEqual([]);
  });

  test("the weather stands in for the service's missing evapotranspiration", () => {
    expect(waterOf(week({ columns: { et0Mm: null } }), moistClay)).toHaveLength(8);
  });

  test('without the soil felt or without a forecast there is nothing to say', () => {
    expect(waterOf(week(), {})).toEqual([]);
    expect(waterOf(null, moistClay)).toEqual([]);
  });
});
