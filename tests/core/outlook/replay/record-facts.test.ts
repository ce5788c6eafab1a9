import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../../src/core/facts/registry/index.ts';
import type { FactDefinition, ForecastTaking, Resolved } from '../../../../src/core/facts/types.ts';
import { recordedOwn } from '../../../../src/core/outlook/replay/recorded-own.ts';
import { seasonDatesOf, seasonOf } from '../../../../src/core/outlook/replay/season.ts';
import type { WeatherDay } from '../../../../src/core/outlook/replay/types.ts';
import { recordedWeather } from '../../../../src/core/outlook/replay/weather.ts';
import { windAtBoom } from '../../../../src/core/science/wind/at-boom.ts';
import { kilometresPerHour } from '../../../../src/core/units/brands.ts';
import { testParameters } from '../../../generators/parameters.ts';
import { utc } from '../../facts/moments.ts';

const at = utc('2026-11-06T12:00Z');
const parameters = testParameters({ forecastFreshHours: 30 });
const dayWith = (more: Partial<WeatherDay> = {}): WeatherDay => ({
  iso: '2026-11-06',
  airMeanC: 8,
  airMinC: 4,
  airMaxC: 13,
  rainMm: 2,
  windKmh: 10,
  gustKmh: 20,
  referenceMm: null,
  soil30cmC: null,
  ...more,
});
const gap = { known: false, reason: 'forecast-gap', note: 'the record has a gap there' };

describe('the weather of a day of a record', () => {
  const told = (
    id: string,
    today: Partial<WeatherDay> = {},
    next: Partial<WeatherDay> | null = {},
  ): Resolved | null => {
    const days = [dayWith(today), next === null ? undefined : dayWith(next)] as const;
    return recordedWeather[id]!({ at, days, parameters });
  };
  const derived = { known: true, type: 'number', source: 'derived', at, goodUntil: null };

  test.each<[Partial<WeatherDay>, readonly [value: number, low: number, high: number] | null]>([
    [{}, [10.5, 8, 13]],
    [{ airMaxC: null }, [8, 8, 8]],
    [{ airMaxC: 6 }, [8, 8, 8]],
    [{ airMeanC: null }, null],
  ])('%j gives the air at noon %j: between the mean and the highest', (today, air) => {
    const [value, low, high] = air ?? [];
    const note = 'from the record, air temperature';
    expect(told('air.temperatureC', today)).toEqual(air && { ...derived, value, low, high, note });
  });

  test('wind and gusts are brought down to the boom, each from its own column', () => {
    const heights = { boomHeightM: 0.8, canopyHeightM: 0.3 };
    const value = (kmh: number) => Math.round(windAtBoom(kilometresPerHour(kmh), heights) * 100) / 100;
    expect(told('wind.boomKmh')).toMatchObject({ value: value(10), low: value(10), high: value(10) });
    expect(told('wind.gustKmh')).toMatchObject({ value: value(20), note: expect.stringContaining('from the record') });
    expect([told('wind.boomKmh', { windKmh: null }), told('wind.gustKmh', { gustKmh: null })]).toEqual([null, null]);
  });

  test('rain of two days is that of the day and the next; where either is missing it is a gap', () => {
    expect(told('rain.next48hMm', { rainMm: 3 }, { rainMm: 0.5 })).toMatchObject({ value: 3.5, low: 3.5, high: 3.5 });
    expect(told('rain.next48hMm', { rainMm: null })).toEqual(gap);
    expect(told('rain.next48hMm', {}, { rainMm: null })).toEqual(gap);
    expect(told('rain.next48hMm', {}, null)).toEqual(gap);
  });

  test('the heaviest hour is that recorded; else all rain of a day may have fallen in one', () => {
    const heaviest = (...days: Parameters<typeof told> extends [string, ...infer Rest] ? Rest : never) =>
      told('rain.next48hMaxMmPerH', ...days);
    expect(heaviest({ heaviestMmPerH: 1 }, { heaviestMmPerH: 3 })).toEqual({
      ...derived,
      value: 3,
      low: 3,
      high: 3,
      note: `from the record, ${coreFacts['rain.next48hMaxMmPerH'].label}`,
    });
    expect(heaviest({ heaviestMmPerH: 4 }, { heaviestMmPerH: 3 })).toMatchObject({ value: 4 });
    expect(heaviest({ rainMm: 12 }, { rainMm: 6 })).toMatchObject({
      value: 12,
      low: 12,
      high: 12,
      note: 'cautious end of the band 0.5 to 12',
    });
    expect(heaviest({ heaviestMmPerH: 2 }, { rainMm: 0.6 })).toMatchObject({ value: 2, low: 2, high: 2 });
    expect(heaviest({ rainMm: 0 }, { rainMm: 0 })).toMatchObject({ value: 0, high: 0 });
    expect(heaviest({ rainMm: null })).toEqual(gap);
    expect(heaviest({}, { rainMm: null, heaviestMmPerH: null })).toEqual(gap);
    expect(heaviest({}, null)).toEqual(gap);
    expect(heaviest({ rainMm: null, heaviestMmPerH: 1 }, { rainMm: null, heaviestMmPerH: 2 })).toMatchObject({
      value: 2,
    });
  });
});

describe('a fact of its own that a pack takes from days', () => {
  const definition: FactDefinition = coreFacts['air.temperatureC'];
  const own = (taking: ForecastTaking, days: readonly Partial<WeatherDay>[], precision = 0.1) =>
    recordedOwn({ ...definition, precision, forecast: taking }, { at, days: days.map(dayWith), parameters });
  const air = (take: ForecastTaking['take'], over: ForecastTaking['over'] = 'next-night') =>
    ({ variable: 'air-temperature', take, over }) as const;
  const two = [
    { airMinC: 4, airMeanC: 8, airMaxC: 13 },
    { airMinC: -1, airMeanC: 6, airMaxC: 16 },
  ];

  test.each<[ForecastTaking['take'], low: number, value: number, high: number]>([
    ['min', -1, 2.5, 6],
    ['max', 8, 12, 16],
    ['mean', -1, 7.5, 16],
    ['value', 6, 9.5, 13],
  ])('%s of the air lies between what the days allow: %d, %d, %d', (take, low, value, high) => {
    expect(own(air(take), two)).toEqual({
      known: true,
      type: 'number',
      source: 'derived',
      at,
      goodUntil: null,
      low,
      value,
      high,
      note: 'from the record, air temperature',
    });
  });

  test('now is the day itself, a night reaches into the next day, hours ahead into as many days as they take', () => {
    expect(own(air('min', 'now'), two.slice(0, 1))).toMatchObject({ low: 4, high: 8 });
    expect(own(air('min', 'now'), two)).toMatchObject({ low: 4, high: 8 });
    expect(own(air('min', 'now'), [])).toBeNull();
    expect(own(air('min'), two.slice(0, 1))).toBeNull();
    // 30 h take two days, and the hour of asking may lie late in the first.
    const ahead = { hoursAhead: 'forecastFreshHours' };
    expect(own(air('min', ahead), [...two, { airMinC: -5, airMeanC: 1 }])).toMatchObject({ low: -5, high: 1 });
    expect(own(air('min', ahead), [...two, two[0]!, { airMinC: -9 }])).toMatchObject({ low: -1, high: 6 });
    expect(own(air('min', ahead), two)).toBeNull();
  });

  test('a day that lacks what is needed tells nothing', () => {
    expect(own(air('min'), [two[0]!, { airMinC: null }])).toBeNull();
    expect(own(air('min'), [two[0]!, { airMeanC: null }])).toBeNull();
    expect(own(air('max'), [two[0]!, { airMaxC: null }])).toBeNull();
    expect(own(air('max'), [two[0]!, { airMinC: null }])).toMatchObject({ known: true });
  });

  test('a sum of rain over hours to come lies between none and all of the days but the last', () => {
    const sum = { variable: 'rain', take: 'sum', over: { hoursAhead: 'forecastFreshHours' } } as const;
    const days = [{ rainMm: 3 }, { rainMm: 1.5 }, { rainMm: 9 }];
    expect(own(sum, days)).toMatchObject({ low: 0, value: 2.3, high: 4.5 });
    expect(own(sum, [{ rainMm: null }, ...days])).toBeNull();
    expect(own(sum, [...days.slice(0, 2), { rainMm: null }])).toMatchObject({ high: 4.5 });
    expect(own({ ...sum, take: 'max' }, days)).toBeNull();
    expect(own({ ...sum, over: 'next-night' }, days)).toBeNull();
    expect(own({ ...sum, variable: 'relative-humidity' }, days)).toBeNull();
  });

  test('the end that a pack names stands for the band, at the precision of the fact', () => {
    const night = { ...air('min'), end: 'low' } as const;
    expect(own(night, [{ airMinC: -1.26 }, {}], 0.5)).toMatchObject({
      low: -1.5,
      value: -1.5,
      high: -1.5,
      note: 'cautious end of the band -1.5 to 8',
    });
    expect(own({ ...night, end: 'high' }, two)).toMatchObject({ low: 6, value: 6, high: 6 });
  });

  test('a fact that is not taken from a forecast is not told', () => {
    expect(recordedOwn(definition, { at, days: two.map(dayWith), parameters })).toBeNull();
  });
});

describe('the season of a day', () => {
  const winter = { opens: '10-01', lastDay: '01-31' };
  const spring = { opens: '03-01', lastDay: '05-31' };
  test.each([
    [winter, '2026-09-30', null],
    [winter, '2026-10-01', 2026],
    [winter, '2026-12-31', 2026],
    [winter, '2027-01-01', 2026],
    [winter, '2027-01-31', 2026],
    [winter, '2027-02-01', null],
    [spring, '2026-02-28', null],
    [spring, '2026-03-01', 2026],
    [spring, '2026-05-31', 2026],
    [spring, '2026-06-01', null],
    [{ opens: '04-01', lastDay: '04-01' }, '2026-04-01', 2026],
  ])('%j has %s in the one that opened in %s', (dates, iso, year) => {
    expect(seasonOf(iso, dates)).toBe(year);
  });

  test('is asked of the pack, as month and day', () => {
    const source = { source: 'invented', why: { en: 'x' }, validFrom: '2020-01-01', tighter: 'neither' } as const;
    const dates = (opens: number | string) =>
      seasonDatesOf(
        new Map(
          Object.entries({ seasonOpens: opens, seasonLastDay: '01-31' }).map(([id, value]) => [
            id,
            { ...source, id, value, unit: 'month-day' },
          ]),
        ),
      );
    expect(dates('10-01')).toEqual({ opens: '10-01', lastDay: '01-31' });
    for (const wrong of ['1 October', '110-01', '10-011', 1001]) {
      expect(() => dates(wrong)).toThrow(
        expect.objectContaining({
          code: 'PARAMETER_MISSING',
          details: { expected: 'a month and day (MM-DD)', came: String(wrong), parameter: 'seasonOpens' },
        }),
      );
    }
    expect(() => seasonDatesOf(new Map())).toThrow('came undefined');
  });
});
