import { describe, expect, test } from 'vitest';
import { compiledByDay } from '../../../src/core/outlook/compiled-by-day.ts';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import { withSoilBelow } from '../../../src/core/outlook/soil-below.ts';
import type { SoilTemperaturePoint, Window } from '../../../src/core/outlook/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { resolveCase } from '../../../src/core/rules/resolve-case.ts';
import { shippedPacks } from '../../cases/shipped-pack.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { hoursOn, windowWith } from '../../generators/outlook.ts';
import { smallPack } from '../compare/small-pack.ts';
import { hoursAfter, utc } from '../facts/moments.ts';
import { input, morning } from './field.ts';

describe('the rules of a pack on any day', () => {
  const pack = () => {
    const all = smallPack();
    const wind = all.parameters.find(({ id }) => id === 'windMostKmh')!;
    const versions = [
      { ...wind, validTo: '2026-10-31' },
      { ...wind, value: 8, validFrom: '2026-11-01', validTo: '2026-11-30' },
      { ...wind, value: 7, validFrom: '2026-12-01' },
    ];
    return { ...all, parameters: [...all.parameters.filter((one) => one !== wind), ...versions] };
  };

  test('are those with the limits of that day, in whatever order days are asked for', () => {
    const on = compiledByDay(pack());
    for (const day of ['2026-11-01', '2026-10-31', '2026-11-30', '2026-12-01', '2026-11-30', '2026-10-31']) {
      expect(on(day), day).toEqual(compileRules(pack(), day));
    }
  });

  test('are compiled once for all days between two changes of a limit', () => {
    const on = compiledByDay(pack());
    const november = on('2026-11-01');
    expect(on('2026-11-30')).toBe(november);
    expect(on('2026-10-31')).not.toBe(november);
    expect(on('2026-11-15')).toBe(november);
  });
});

describe('a window that rests on the temperature of the soil', () => {
  const point = (hours: number, chanceBelow: number): SoilTemperaturePoint => ({
    at: hoursOn(hours),
    valueC: 10,
    low80C: 9,
    high80C: 11,
    low95C: 8,
    high95C: 12,
    chanceBelow,
    beyondForecast: false,
  });
  const line = [point(50, 0.9), point(0, 0.1), point(24, 0.4), point(32, 0.7)];
  const fallThrough = { limitC: 10, day10: null, day50: null, day90: null, chanceOfWarmingBack: 0 };
  const below = (window: Partial<Window>, soil = { soilTemperature: line, fallThrough }) =>
    withSoilBelow([windowWith(window)], soil)[0]!.soilBelow;
  const open = { unknown: ['soil.temperature30cmC'] };

  test('carries the chance of the points nearest to its beginning and its end', () => {
    expect(below(open)).toEqual({ limitC: 10, first: 0.4, last: 0.4 });
    expect(below({ ...open, from: hoursOn(2), until: hoursOn(48) })).toEqual({ limitC: 10, first: 0.1, last: 0.9 });
    expect(below({ ...open, until: hoursOn(28.1) })).toEqual({ limitC: 10, first: 0.4, last: 0.7 });
    expect(below({ lookAgain: ['soil.temperature30cmC'] })).not.toBeNull();
  });

  test('carries none where the soil is settled, where no line is told, or no limit falls', () => {
    expect(below({ unknown: ['wind.boomKmh'] })).toBeNull();
    expect(below(open, { soilTemperature: [], fallThrough })).toBeNull();
    expect(withSoilBelow([windowWith(open)], { soilTemperature: line, fallThrough: null })[0]!.soilBelow).toBeNull();
  });
});

describe('an outlook', () => {
  const calm = {
    'wind.boomKmh': 4,
    'wind.gustKmh': 6,
    'air.temperatureC': 8,
    'rain.nowMmPerH': 0,
    'air.inversionRisk': 'no',
  };

  test('tells the water in the soil day by day where the pack asks about drains, and not where it does not', () => {
    const { soilWater } = outlookOf(input({}));
    expect(soilWater.map(({ day }) => day)).toEqual(
      ['06', '07', '08', '09', '10', '11', '12', '13', '14', '15'].map((day) => `2026-11-${day}`),
    );
    const { pack, cases } = shippedPacks.find(({ pack: { facts, rules } }) => {
      return !rules.some(({ when }) => JSON.stringify(when).includes('drains')) && facts['date'] !== undefined;
    })!;
    const at = utc(`${resolveCase(cases[0]!, pack).day}T09:00Z`);
    const outlook = outlookOf({ pack, observations: [], forecast: buildForecast({ from: at }), at });
    expect(outlook).toMatchObject({ soilWater: [], soilTemperature: [], usualAirYears: null, fallThrough: null });
  });

  test('tells when a spray-today is spoiled by the end of the season, not only by weather', () => {
    const at = utc('2027-01-31T12:00Z');
    expect(outlookOf(input({ at, facts: calm })).spoiled).toEqual({
      at: utc('2027-02-01T00:00Z'),
      by: [expect.objectContaining({ rule: 'season-closed', lifts: 'season' })],
    });
  });

  test('tells the line of the soil two weeks past the forecast, and nothing of it without one that may be used', () => {
    const warm = { 'soil.temperature30cmC': 11 };
    const { soilTemperature } = outlookOf(input({ facts: warm }));
    const days = (soilTemperature.at(-1)!.at - morning) / 86_400;
    expect(Math.round(days)).toBe(24);
    expect(Object.keys(soilTemperature[0]!).toSorted()).toEqual(
      ['at', 'beyondForecast', 'chanceBelow', 'high80C', 'high95C', 'low80C', 'low95C', 'valueC'].toSorted(),
    );
    const none = { soilTemperature: [], usualAirYears: null, fallThrough: null };
    expect(outlookOf(input({ facts: warm, weather: null }))).toMatchObject(none);
    expect(outlookOf(input({ facts: warm, weather: { fetchedAt: hoursAfter(morning, -60) } }))).toMatchObject(none);
  });

  test('begins with the hour under way, judged as it stands now', () => {
    const windy = (time: number) => (time === hoursAfter(morning, 1) ? 60 : 8);
    const asked = input({ weather: { columns: { windSpeed10mKmh: windy } } });
    const late = outlookOf({ ...asked, at: hoursAfter(morning, 0.75) });
    expect(late.hours[0]).toMatchObject({ at: morning, state: 'blocked' });
    expect(outlookOf({ ...asked, at: hoursAfter(morning, 1) }).hours[0]!.at).toBe(hoursAfter(morning, 1));
  });
});
