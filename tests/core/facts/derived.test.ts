import { describe, expect, test } from 'vitest';
import { pressureOf } from '../../../src/core/facts/derive/delta-t.ts';
import { asChoice, asNumber, derivedNumber, earliest, isSurely } from '../../../src/core/facts/derive/derived.ts';
import { nextSunMark, sunPlaceOf } from '../../../src/core/facts/derive/place.ts';
import { soilDaysOf, soilInputOf, soilReadings } from '../../../src/core/facts/derive/soil-days.ts';
import { neededParameters, parametersFor } from '../../../src/core/facts/needed-parameters.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { contextOf } from '../../../src/core/facts/resolve.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { knownChoice, knownDate, knownNumber } from '../../../src/core/rules/analyse/known-values.ts';
import { pressureAtElevation, seaLevelPressureKPa } from '../../../src/core/science/air/pressure.ts';
import { sunriseAndSunset } from '../../../src/core/science/sun/times.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { hoursAfter, utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const zone = 'Europe/London';
const soil = 'soil.temperature30cmC';

const seen = (fact: FactId, value: number, hoursAgo = 0, more: object = {}): FactObservation => {
  const reading: Reading = { type: 'number', value, ...more };
  return { fact, reading, at: hoursAfter(at, -hoursAgo), source: 'said' };
};
const contextWith = (observations: readonly FactObservation[], forecast: Forecast | null = null, replaced = {}) =>
  contextOf({ observations, forecast, at, zone, parameters: testParameters(replaced), registry: coreFacts });

describe('a fact looked at', () => {
  const unknown = { known: false, reason: 'not-asked' } as const;
  test('as a number or a choice is that or nothing', () => {
    const [number, choice] = [knownNumber(1), knownChoice('yes')];
    expect([asNumber(number), asNumber(choice), asNumber(unknown)]).toEqual([number, null, null]);
    expect([asChoice(number), asChoice(choice), asChoice(unknown)]).toEqual([null, choice, null]);
  });

  test('is surely a choice only where it can be no other', () => {
    expect(isSurely(knownChoice('no'), 'no')).toBe(true);
    for (const other of [
      knownChoice('yes'),
      { ...knownChoice('no'), possible: ['no', 'yes'] },
      knownDate('no'),
      unknown,
    ]) {
      expect(isSurely(other, 'no')).toBe(false);
    }
  });

  test('that was worked out is kept to its precision, within what can be', () => {
    const worked = (value: number, low: number, high: number) =>
      derivedNumber('air.relativeHumidityPercent', { value, low, high }, at, null, 'x');
    expect(worked(103, 96.2, 120)).toMatchObject({ value: 100, low: expect.closeTo(96.2, 0), high: 100 });
    expect(worked(-3, -5, 2)).toMatchObject({ value: 0, low: 0 });
    expect(derivedNumber(soil, { value: 0.1 + 0.2, low: 0.1 + 0.2, high: 0.1 + 0.2 }, at, at, 'why')).toEqual({
      known: true,
      type: 'number',
      value: 0.3,
      low: 0.3,
      high: 0.3,
      source: 'derived',
      at,
      goodUntil: at,
      note: 'why',
    });
  });

  test('ages with the first of those it came from', () => {
    const [early, late] = [at, hoursAfter(at, 1)];
    expect([earliest(late, early), earliest(early, late), earliest(null, late), earliest(late, null)]).toEqual([
      early,
      early,
      late,
      late,
    ]);
    expect([earliest(), earliest(null, null)]).toEqual([null, null]);
  });
});

describe('where the sun is looked at from', () => {
  const latitude = seen('field.latitude', 50);
  const longitude = seen('field.longitude', 2, 100);
  const forecast = buildForecast({
    from: at,
    place: { askedLatitude: 51, askedLongitude: 3, latitude: 51, longitude: 3 },
  });

  test('is the field, else the point that the forecast was asked for, else nowhere', () => {
    const found = sunPlaceOf(contextWith([latitude, longitude], forecast));
    expect(found).toEqual({ latitude: 50, longitude: 2, goodUntil: utc('2027-06-30T23:00Z') });
    const asked = { latitude: 51, longitude: 3, goodUntil: null };
    expect(sunPlaceOf(contextWith([latitude], forecast))).toEqual(asked);
    expect(sunPlaceOf(contextWith([longitude], forecast))).toEqual(asked);
    expect(sunPlaceOf(contextWith([latitude]))).toBeNull();
  });

  test('the next mark of the sun is hours before sunset or after sunrise, of this day or the next', () => {
    const place = { latitude: 53, longitude: -1, goodUntil: null };
    const today = sunriseAndSunset(place, utc('2026-11-06T12:00Z'));
    const tomorrow = sunriseAndSunset(place, utc('2026-11-07T12:00Z'));
    const mark = (moment: string, before = 2, after = 1) => nextSunMark(place, utc(moment), before, after);
    expect(mark('2026-11-06T06:00Z')).toBe(today.sunrise! + 3600);
    expect(mark('2026-11-06T12:00Z')).toBe(today.sunset! - 7200);
    expect(mark('2026-11-06T20:00Z')).toBe(tomorrow.sunrise! + 3600);
    expect(nextSunMark(place, epochSeconds(today.sunset!), 0, 0)).toBe(tomorrow.sunrise);
    expect(nextSunMark({ ...place, latitude: 80 }, utc('2026-12-20T12:00Z'), 2, 1)).toBeNull();
  });

  test.each([
    [60, pressureAtElevation(60)],
    [-500, pressureAtElevation(-500)],
    [9000, pressureAtElevation(9000)],
    [-501, seaLevelPressureKPa],
    [9001, seaLevelPressureKPa],
    [null, seaLevelPressureKPa],
  ])('the air weighs as at the height of the forecast, %s m, where that can be', (elevationM, kPa) => {
    const high = buildForecast({ from: at, place: { elevationM } });
    expect(pressureOf(contextWith([], high))).toBe(kPa);
  });

  test('and as at the sea without a forecast', () => {
    expect(pressureOf(contextWith([]))).toBe(seaLevelPressureKPa);
  });
});

describe('the days that the soil is modelled from', () => {
  const from = utc('2026-11-05T00:00Z');
  const columns = { soilTemperature18cmC: 6, soilTemperature54cmC: 9, temperature2mC: (_: number, i: number) => i };
  const forecast = buildForecast({ from, hours: 66, fetchedAt: at, columns });

  test('run from the day asked for to the days after the forecast, with the means of days that have 18 hours', () => {
    const days = soilDaysOf(forecast, zone, utc('2026-11-04T12:00Z'), 2);
    expect(days.map(({ iso, airC, layerC }) => [iso, airC, layerC])).toEqual([
      ['2026-11-04', null, null],
      ['2026-11-05', 11.5, 7],
      ['2026-11-06', 35.5, 7],
      ['2026-11-07', 56.5, 7],
      ['2026-11-08', null, null],
      ['2026-11-09', null, null],
    ]);
    expect(days.map((one) => one.at)).toEqual(days.map(({ iso }) => utc(`${iso}T12:00Z`)));
    expect(soilDaysOf(forecast, zone, from, 0).map(({ iso }) => iso.slice(8))).toEqual(['05', '06', '07']);
    const empty = buildForecast({ from, hours: 0 });
    expect(soilDaysOf(empty, zone, from, 1).map(({ iso }) => iso.slice(8))).toEqual(['05', '06']);
  });

  test('a day with 17 hours is a gap, as is air that cannot be, or soil told at one depth alone', () => {
    const short = buildForecast({ from, hours: 65, columns });
    expect(soilDaysOf(short, zone, from, 0).at(-1)).toMatchObject({ airC: null, layerC: null });
    const odd = buildForecast({
      from,
      hours: 24,
      columns: { ...columns, temperature2mC: 61, soilTemperature54cmC: null },
    });
    expect(soilDaysOf(odd, zone, from, 0)[0]).toMatchObject({ airC: null, layerC: null });
    const upper = buildForecast({
      from,
      hours: 24,
      columns: { ...columns, temperature2mC: -60, soilTemperature18cmC: null },
    });
    expect(soilDaysOf(upper, zone, from, 0)[0]).toMatchObject({ airC: -60, layerC: null });
    const holes = buildForecast({ from, hours: 24, columns: { temperature2mC: (_, i) => (i < 6 ? null : 4) } });
    expect(soilDaysOf(holes, zone, from, 0)[0]).toMatchObject({ airC: 4 });
  });

  test('are days at the field: the same forecast in another zone has other ones', () => {
    expect(soilDaysOf(forecast, 'UTC', from, 0)[0]?.airC).toBe(11.5);
    expect(soilDaysOf(forecast, 'Asia/Kolkata', from, 0)[0]?.airC).toBeCloseTo((0 + 18) / 2, 9);
    expect(soilDaysOf(forecast, 'UTC', from, 0)[0]?.airC).toBe(11.5);
  });

  test("the person's readings of sixty days count, with their own band where it is the wider", () => {
    const readings = soilReadings(
      contextWith([
        seen(soil, 9, 60 * 24 + 1),
        seen(soil, 8, 60 * 24),
        seen(soil, 7, 48, { low: 6.5 }),
        seen(soil, 6, 24, { high: 7 }),
        seen(soil, 99, 3),
        { ...seen(soil, 1, 2), reading: { type: 'does-not-know' } },
        seen(soil, 5, 1),
      ]),
    );
    expect(readings.map(({ valueC }) => valueC)).toEqual([8, 7, 6, 5]);
    expect(readings.map(({ sdC }) => sdC * 1.96)).toEqual([0.05, 0.5, 1, 0.05].map((sd) => expect.closeTo(sd, 9)));
    expect(readings.map((one) => one.at)).toEqual([60 * 24, 48, 24, 1].map((hours) => hoursAfter(at, -hours)));
  });

  test('the input of the model begins with the first of forecast and readings, at the latitude of the field', () => {
    const inputWith = (observations: readonly FactObservation[], weather = forecast) => {
      const context = contextWith(observations, weather);
      return soilInputOf(context, context.trusted!, 1);
    };
    const old = inputWith([seen(soil, 9, 100), seen('field.latitude', 53.1), seen('field.longitude', -1)]);
    expect(old!.days[0]!.iso).toBe('2026-11-02');
    expect(old!.days.at(-1)!.iso).toBe('2026-11-08');
    expect([old!.latitudeDeg, old!.at, old!.airKnownUntil, old!.airErrorFactor]).toEqual([53.1, at, at, 1]);
    expect(old).not.toHaveProperty('climatology');
    const late = inputWith([seen(soil, 9, 1)], { ...forecast, fetchedAt: hoursAfter(at, -26) });
    expect(late!.days[0]!.iso).toBe('2026-11-05');
    expect([late!.latitudeDeg, late!.airErrorFactor]).toEqual([53, 2]);
    expect(late!.airKnownUntil).toBe(hoursAfter(at, -26));
    expect(inputWith([seen(soil, 9, 1)], { ...forecast, fetchedAt: hoursAfter(at, 2) })!.airKnownUntil).toBe(at);
    expect(inputWith([])).toBeNull();
    expect(inputWith([seen(soil, 9, 1)], { ...forecast, times: [] })).toBeNull();
    const climatology = { meanAirCByDayOfYear: Array(366).fill(8), spreadC: 3, years: 10, source: 'x' };
    expect(inputWith([seen(soil, 9, 1)], { ...forecast, climatology })?.climatology).toBe(climatology);
  });
});

describe('the parameters that a pack must hold', () => {
  const own = {
    ...coreFacts['rain.next48hMm'],
    goodFor: { kind: 'hours', parameter: 'ownHours', untilRainMm: 'ownRainMm' },
  } as const;
  const core = [...parametersFor({}, false)];
  const beyond = (registry: Parameters<typeof parametersFor>[0], dose = false) =>
    [...parametersFor(registry, dose)].filter((id) => !core.includes(id)).toSorted();

  test('are those by which its facts age, are worked out and are told, and those of the dose where it gives one', () => {
    expect(core).toHaveLength(9);
    expect(beyond({}, true)).toEqual([
      'productStepLPerHa',
      'severeDensityPlantsPerM2',
      'severeDoseGPerHa',
      'usualDoseGPerHa',
    ]);
    expect(beyond({ 'crop.frostOnLeaves': coreFacts['crop.frostOnLeaves'] })).toEqual([
      'goodForSeenNowHours',
      'noFrostAboveC',
    ]);
    expect(beyond({ 'soil.feel': coreFacts['soil.feel'] })).toEqual(['goodForSoilSeenHours', 'goodForSoilSeenRainMm']);
    expect(beyond({ 'field.drained': coreFacts['field.drained'] })).toEqual([]);
  });

  test('count those of a fact of its own: hours, rain, hours ahead, and the band of its weather', () => {
    expect(beyond({ 'own.a': own })).toEqual(['ownHours', 'ownRainMm']);
    const taken = { variable: 'relative-humidity', take: 'min', over: { hoursAhead: 'ownAhead' } } as const;
    const ahead = { ...own, goodFor: { kind: 'same-day' }, forecast: taken } as const;
    expect(beyond({ 'own.a': ahead })).toEqual(['forecastHumidityBandPercent', 'ownAhead']);
    expect(beyond({ 'own.a': { ...ahead, forecast: { ...taken, over: 'now' }, scope: 'near' } })).toEqual([
      'forecastHumidityBandPercent',
      'nearFieldsHours',
      'nearFieldsKm',
    ]);
    expect(Object.keys(neededParameters)).toEqual(expect.arrayContaining([...parametersFor(coreFacts, true)]));
  });
});
