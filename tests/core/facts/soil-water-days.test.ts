import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { soilWaterDays } from '../../../src/core/facts/soil-water-days.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');

type Given = Readonly<Partial<Record<FactId, string>>>;

const week = (plan: Partial<ForecastPlan> = {}) =>
  buildForecast({ from: hoursAfter(at, -33), fetchedAt: at, hours: 240, ...plan });

function waterOf(forecast: ReturnType<typeof week> | null, given: Given, { seen = at, now = at, error = 0 } = {}) {
  return soilWaterDays({
    at: now,
    zone: 'Europe/London',
    parameters: testParameters({ balanceErrorMmPerRootDay: error }),
    registry: coreFacts,
    forecast,
    observations: (Object.keys(given) as FactId[]).map((fact) => ({
      fact,
      reading: { type: 'choice', possible: [given[fact] ?? ''] },
      at: fact === 'soil.feel' ? seen : hoursAfter(at, -40),
      source: 'said',
    })),
  });
}

const moistClay: Given = { 'soil.feel': 'moist', 'field.texture': 'clay' };

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
    expect(width({ 'soil.feel': 'moist' })).toBeGreaterThan(width(moistClay));
  });

  test('rain widens the band, an older forecast more so', () => {
    const rainy = week({ columns: { precipitationMm: 0.1 } });
    const width = (hoursOld: number) => {
      const forecast = { ...rainy, fetchedAt: hoursAfter(at, -hoursOld) };
      const last = waterOf(forecast, { ...moistClay, 'soil.feel': 'wet' }).at(-1);
      return (
        (last?.surplusHighMm ?? 0) - (last?.surplusLowMm ?? 0) + (last?.deficitHighMm ?? 0) - (last?.deficitLowMm ?? 0)
      );
    };
    expect(width(40)).toBeGreaterThan(width(0));
  });

  test("the balance's own error widens the band by the root of the days, within what the soil can lack", () => {
    const bare = waterOf(week(), moistClay);
    const wide = waterOf(week(), moistClay, { error: 3 });
    for (const [index, day] of wide.entries()) {
      const error = 3 * Math.sqrt(index + 1);
      expect(day.deficitMm).toBe(bare[index]?.deficitMm);
      expect(day.deficitLowMm).toBeCloseTo(Math.max(0, bare[index]!.deficitLowMm - error), 9);
      expect(day.deficitHighMm).toBeLessThanOrEqual(bare[index]!.deficitHighMm + error + 1e-9);
    }
    // 0.3 m of clay can lack 36 mm: 42 less 30 % by volume (Saxton & Rawls 2006, Table 3).
    const [first] = wide;
    expect(first!.deficitHighMm).toBeCloseTo(bare[0]!.deficitHighMm + 3, 9);
    expect(Math.abs(waterOf(week(), moistClay, { error: 300 }).at(-1)!.deficitHighMm - 36)).toBeLessThan(1);
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

  test('what was felt 40 h ago still serves while the forecast holds every hour since, and not where it does not', () => {
    const now = hoursAfter(at, 40);
    const days = waterOf(week(), moistClay, { now }).map(({ day }) => day);
    expect(days[0]).toBe('2026-11-06');
    expect(days).toEqual(waterOf(week(), moistClay).map(({ day }) => day));
    const late = week({ from: hoursAfter(at, 2) });
    expect(waterOf(late, moistClay, { now })).toEqual([]);
    const gap = hoursAfter(at, 20);
    expect(
      waterOf(week({ columns: { precipitationMm: (time) => (time === gap ? null : 0) } }), moistClay, { now }),
    ).toEqual([]);
  });

  test('without the soil felt or without a forecast there is nothing to say', () => {
    expect(waterOf(week(), {})).toEqual([]);
    expect(waterOf(null, moistClay)).toEqual([]);
  });
});
