import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { resolveFacts } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
/** No band on rain, so that sums can be followed by hand; 0.3 m of soil, 5 mm of surplus, half of ET0. */
const parameters = testParameters({ forecastRainBandShare: 0 });

type Given = Readonly<Record<string, string | readonly string[] | number | readonly [number, number, number]>>;

function observed(given: Given, hoursAgo = 0): FactObservation[] {
  return Object.entries(given).map(([fact, value]) => ({
    fact: fact as FactObservation['fact'],
    reading: readingOf(value),
    at: hoursAfter(at, -hoursAgo),
    source: 'said',
  }));
}

function readingOf(value: Given[string]): Reading {
  if (typeof value === 'string') return { type: 'choice', possible: [value] };
  if (typeof value === 'number') return { type: 'number', value };
  const [low, middle, high] = value;
  if (typeof low === 'number') return { type: 'number', low, value: middle as number, high: high as number };
  return { type: 'choice', possible: value as readonly string[] };
}

/** Rain in all 168 hours ahead, mm in total, and none before. */
const rain = (totalMm: number, plan: Partial<ForecastPlan> = {}, et0Mm: number | null = 0) =>
  buildForecast({
    from: hoursAfter(at, -24),
    fetchedAt: at,
    hours: 24 + 1 + 168,
    ...plan,
    columns: { precipitationMm: (time) => (time > at ? totalMm / 168 : 0), et0Mm, ...plan.columns },
  });

function drains(given: Given, forecast: ReturnType<typeof rain> | null, used = parameters, hoursAgo = 0) {
  const input = {
    observations: observed(given, hoursAgo),
    forecast,
    at,
    zone: 'Europe/London',
    parameters: used,
    registry: coreFacts,
  };
  return resolveFacts(input)['soil.drainsExpected7d'];
}

const known = (...possible: string[]) => ({ known: true, source: 'derived', possible });

describe('drains run where rain less evapotranspiration passes the deficit by more than 5 mm', () => {
  test.each<[string, Given, mm: number, object]>([
    ['a field without drains has none to run', { 'field.drained': 'no' }, 99, known('no')],
    ['at capacity 5 mm are not yet more than 5 mm', { 'soil.feel': 'at-capacity' }, 5, known('no')],
    ['at capacity a little more is', { 'soil.feel': 'at-capacity' }, 5.1, known('yes')],
    ['saturated counts as no deficit', { 'soil.feel': 'saturated' }, 5.1, known('yes')],
    // USDA NRCS 1998, fine soils at 50 to 75 %: 1.2 down to 0.4 in/ft lacking; over 0.3 m 30 down to 10 mm.
    ['moist clay, less than its least deficit', { 'soil.feel': 'moist', 'field.texture': 'clay' }, 14.9, known('no')],
    ['moist clay, between', { 'soil.feel': 'moist', 'field.texture': 'clay' }, 15.1, known('yes', 'no')],
    ['moist clay, just not surely', { 'soil.feel': 'moist', 'field.texture': 'clay' }, 34.9, known('yes', 'no')],
    [
      'moist clay, more than its greatest deficit',
      { 'soil.feel': 'moist', 'field.texture': 'clay' },
      35.1,
      known('yes'),
    ],
    // USDA NRCS 1998, coarse soils at 50 to 75 %: 0.6 down to 0.15 in/ft; over 0.3 m 15 down to 3.75 mm.
    ['one of two textures spans both', { 'soil.feel': 'moist', 'field.texture': ['sand', 'clay'] }, 8.7, known('no')],
    ['and straddles between', { 'soil.feel': 'moist', 'field.texture': ['sand', 'clay'] }, 8.8, known('yes', 'no')],
    [
      'one of two feels spans both',
      { 'soil.feel': ['moist', 'wet'], 'field.texture': 'clay' },
      5.1,
      known('yes', 'no'),
    ],
    ['no texture counts as any', { 'soil.feel': 'moist' }, 8.8, known('yes', 'no')],
    ['no texture, no rain', { 'soil.feel': 'moist' }, 0, known('no')],
  ])('%s', (_, given, mm, expected) => {
    expect(drains(given, rain(mm))).toMatchObject(expected);
  });

  // Saxton & Rawls 2006, Table 3: clay loam holds 36 % at field capacity; 10 % less over 0.3 m is 10.8 mm.
  test.each<[string, Given['x'], mm: number, object]>([
    ['below the deficit', 90, 15.4, known('no')],
    ['above the deficit', 90, 16.3, known('yes')],
    ['a measured band spans', [85, 90, 95], 15.9, known('yes', 'no')],
    ['wetter than capacity drains with less rain', 110, 0, known('yes')],
  ])('measured %s', (_, percent, mm, expected) => {
    const given = { 'soil.fieldCapacityPercent': percent!, 'field.texture': 'clay-loam' };
    expect(drains(given, rain(mm))).toMatchObject(expected);
  });

  test('felt and measured together: the wetter counts', () => {
    const given = { 'soil.fieldCapacityPercent': 70, 'soil.feel': 'at-capacity', 'field.texture': 'clay-loam' };
    expect(drains(given, rain(6))).toMatchObject(known('yes'));
  });

  test('of two bands the wetter counts at both ends', () => {
    // Measured 43 down to 1 mm lacking, felt 30 down to 10 mm: 30 down to 1 mm.
    const given = {
      'soil.fieldCapacityPercent': [60, 80, 99],
      'soil.feel': 'moist',
      'field.texture': 'clay-loam',
    } as const;
    expect(drains(given, rain(5.9))).toMatchObject(known('no'));
    expect(drains(given, rain(7))).toMatchObject(known('yes', 'no'));
    expect(drains(given, rain(35.1))).toMatchObject(known('yes'));
  });

  test('evapotranspiration of the young crop is taken off', () => {
    expect(drains({ 'soil.feel': 'at-capacity' }, rain(9, {}, 7.8 / 168))).toMatchObject(known('yes'));
    expect(drains({ 'soil.feel': 'at-capacity' }, rain(9, {}, 8.2 / 168))).toMatchObject(known('no'));
  });

  test("the forecast's band on rain can leave it open", () => {
    const given = { 'soil.feel': 'at-capacity' };
    const banded = testParameters();
    expect(drains(given, rain(3.9), banded)).toMatchObject(known('no'));
    expect(drains(given, rain(4.1), banded)).toMatchObject(known('yes', 'no'));
    expect(drains(given, rain(6.7), banded)).toMatchObject(known('yes'));
  });

  test('rain since the soil was felt counts too', () => {
    const before = rain(0, {
      columns: { precipitationMm: (time) => (time === hoursAfter(at, -2) ? 4 : time > at ? 2 / 168 : 0) },
    });
    expect(drains({ 'soil.feel': 'at-capacity' }, before, parameters, 5)).toMatchObject(known('yes'));
    expect(drains({ 'soil.feel': 'at-capacity' }, before, parameters, 1)).toMatchObject(known('no'));
  });

  test('a peak on the way counts, even if the week ends drier', () => {
    const early = rain(0, {
      columns: { precipitationMm: (time) => (time === hoursAfter(at, 3) ? 6 : 0), et0Mm: 0.05 },
    });
    expect(drains({ 'soil.feel': 'at-capacity' }, early)).toMatchObject(known('yes'));
    const perhaps = rain(0, {
      columns: { precipitationMm: (time) => (time === hoursAfter(at, 3) ? 4.5 : 0), et0Mm: 0.05 },
    });
    expect(drains({ 'soil.feel': 'at-capacity' }, perhaps, testParameters())).toMatchObject(known('yes', 'no'));
  });
});

describe('what the forecast does not reach', () => {
  const given = { 'soil.feel': 'at-capacity' };

  test('short of 7 days without a surplus it is unknown, with a surplus already passed it is yes', () => {
    expect(drains(given, rain(0, { hours: 24 + 168 }))).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(drains(given, rain(0))).toMatchObject(known('no'));
    expect(drains(given, rain(50, { hours: 24 + 100 }))).toMatchObject(known('yes'));
  });

  test('a gap ends what is known', () => {
    const gap = (hour: number) =>
      rain(0, { columns: { precipitationMm: (time) => (time === hoursAfter(at, hour) ? null : 0) } });
    expect(drains(given, gap(50))).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(drains(given, gap(169))).toMatchObject(known('no'));
    expect(drains(given, gap(-3), parameters, 5)).toMatchObject(known('no'));
  });

  test.each([
    ['rain', 'precipitationMm', -1],
    ['rain', 'precipitationMm', 900],
    ['evapotranspiration', 'et0Mm', 40],
  ])('%s that cannot be (%s %d) counts as missing', (_, variable, value) => {
    const wrong = rain(0, { columns: { [variable]: (time: number) => (time === hoursAfter(at, 50) ? value : 0) } });
    expect(drains(given, wrong)).toMatchObject({ known: false, reason: 'forecast-gap' });
  });

  test('a forecast that only begins later leaves it unknown', () => {
    const later = rain(0, { from: hoursAfter(at, 2), hours: 200 });
    expect(drains(given, later)).toMatchObject({ known: false, reason: 'forecast-gap' });
  });

  test('without its own evapotranspiration the weather tells it; with neither, no forecast or no soil it is not told', () => {
    expect(drains(given, rain(0, {}, null))).toMatchObject(known('no'));
    const bare = rain(0, { columns: { et0Mm: null, temperature2mC: null } });
    expect(drains(given, bare)).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(drains(given, null)).toEqual({ known: false, reason: 'not-asked' });
    expect(drains({ 'field.drained': 'yes' }, rain(50))).toEqual({ known: false, reason: 'not-asked' });
  });

  test('with a forecast that is too old it says so', () => {
    const old = rain(0, { fetchedAt: hoursAfter(at, -48) });
    expect(drains(given, old)).toMatchObject({ known: false, reason: 'too-old' });
  });

  test('it is good while the soil seen and the fresh forecast are', () => {
    expect(drains(given, rain(0))).toMatchObject({ goodUntil: hoursAfter(at, 6) });
    expect(drains(given, rain(0), parameters, 20)).toMatchObject({ goodUntil: hoursAfter(at, 4) });
  });
});
