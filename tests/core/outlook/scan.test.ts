import { expect, test } from 'vitest';
import { localTime } from '../../../src/core/facts/local-day.ts';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import { scanHours } from '../../../src/core/outlook/scan.ts';
import type { HourOutlook } from '../../../src/core/outlook/types.ts';
import { numberParameter, parametersOn } from '../../../src/core/units/parameter.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { hoursAfter, utc } from '../facts/moments.ts';
import { hoursFrom, input, morning } from './field.ts';

const ids = (blocks: HourOutlook['hourBlocks']) => blocks.map(({ rule }) => rule);
const hourAt = (hours: readonly HourOutlook[], ahead: number) =>
  hours.find(({ at }) => at === hoursAfter(morning, ahead))!;

test('ten days from cracked soil the sixth day has a conditional window that says what to look at again', () => {
  const { hours, windows } = outlookOf(input({ facts: { 'soil.surface': ['cracked'] } }));
  expect(hours[0]).toMatchObject({ state: 'blocked', dayBlocks: [{ rule: 'soil-cracked', lifts: 'days' }] });
  const sixth = windows.find(
    ({ from, until }) => from <= hoursAfter(morning, 120) && until > hoursAfter(morning, 126),
  )!;
  expect(sixth.state).toBe('clear-if');
  expect(ids(sixth.ifLifted)).toEqual(['soil-cracked']);
  expect(sixth.lookAgain).toEqual(expect.arrayContaining(['soil.surface', 'soil.feel', 'soil.drainsRunning']));
});

test('what was seen holds for its good time, then becomes an assumption; a window is split there', () => {
  const { hours, windows } = outlookOf(input({}));
  expect(hourAt(hours, 0).state).toBe('clear');
  expect(hourAt(hours, 23)).toMatchObject({ lookAgain: [], ifLifted: [] });
  expect(hourAt(hours, 24).state).toBe('clear-if');
  expect(hourAt(hours, 24).lookAgain).toContain('soil.feel');
  expect(windows[0]).toMatchObject({ from: morning, until: hoursAfter(morning, 24), endedBy: 'look-again' });
});

test('five millimetres of rain age what was seen of the soil before its day is over', () => {
  const shower = (time: number) => (time === morning + 6 * 3600 ? 5 : 0);
  const { hours } = outlookOf(input({ weather: { columns: { precipitationMm: shower } } }));
  expect(hourAt(hours, 4).lookAgain).not.toContain('soil.surface');
  expect(hourAt(hours, 7).lookAgain).toContain('soil.surface');
});

test('rain counts over the 48 hours after each hour, and no longer once it has fallen', () => {
  const burst = (time: number) => (time === hoursAfter(morning, 60) ? 12 : 0);
  const { hours } = outlookOf(input({ weather: { columns: { precipitationMm: burst } } }));
  const heavy = hours
    .filter(({ hourBlocks }) => ids(hourBlocks).includes('heavy-rain-coming'))
    .map(({ at }) => hoursFrom(morning, at));
  expect([heavy[0], heavy.at(-1), heavy.length]).toEqual([12, 59, 48]);
});

test.each([
  ['too-windy', { windSpeed10mKmh: 40 }],
  ['gusty', { windGusts10mKmh: 60 }],
  ['frost-on-leaves', { temperature2mC: -4 }],
  ['raining-now', { precipitationMm: 2 }],
] as const)('weather of an hour that %s forbids blocks that hour as one that hours lift', (rule, columns) => {
  const on = Object.fromEntries(
    Object.entries(columns).map(([name, value]) => [
      name,
      (time: number) =>
        time === hoursAfter(morning, 30) || time === hoursAfter(morning, 31)
          ? value
          : name === 'temperature2mC'
            ? 8
            : 0,
    ]),
  );
  const { hours } = outlookOf(input({ weather: { columns: on } }));
  const hour = hourAt(hours, 30);
  expect(hour.state).toBe('blocked');
  expect(ids(hour.hourBlocks)).toContain(rule);
  expect(ids(hourAt(hours, 34).hourBlocks)).not.toContain(rule);
});

test('where the forecast no longer reaches 48 hours ahead an hour lies beyond it, and nothing is made up', () => {
  const { hours, windows, reachesTo } = outlookOf(input({}));
  const beyond = hours.filter(({ state }) => state === 'beyond-forecast');
  expect(hoursFrom(morning, beyond[0]!.at)).toBe(240 - 48);
  expect(beyond.every(({ sureness, unknown }) => sureness === null && unknown.length > 0)).toBe(true);
  expect(reachesTo).toBe(hoursAfter(morning, 240 - 48));
  expect(windows.at(-1)).toMatchObject({ until: reachesTo, endedBy: 'forecast-ends' });
});

test('drains that the forecast cannot tell for seven days are a condition of the hour, not its end', () => {
  const { hours } = outlookOf(input({ facts: { 'field.drained': 'yes' } }));
  expect(hourAt(hours, 24).unknown).not.toContain('soil.drainsExpected7d');
  expect(hourAt(hours, 150).state).toBe('clear-if');
  expect(hourAt(hours, 150).unknown).toContain('soil.drainsExpected7d');
});

test('a gap in the forecast is not bridged', () => {
  const gap = (time: number) => (time === hoursAfter(morning, 100) ? null : 0);
  const { hours } = outlookOf(input({ weather: { columns: { precipitationMm: gap } } }));
  expect(
    hours
      .filter(({ at }) => at >= hoursAfter(morning, 52) && at < hoursAfter(morning, 100))
      .every(({ state }) => state === 'beyond-forecast'),
  ).toBe(true);
  expect(hourAt(hours, 101).state).toBe('clear-if');
});

test.each([
  ['too old', { fetchedAt: hoursAfter(morning, -60), from: hoursAfter(morning, -60) }, 'too-old'],
  ['of another place', { place: { latitude: 40, distanceKm: 1400 } }, 'forecast-gap'],
] as const)('a forecast %s tells no hour, and why is said', (_, weather, reason) => {
  const outlook = outlookOf(input({ weather }));
  expect(outlook).toMatchObject({ hours: [], windows: [], reachesTo: null, untold: { known: false, reason } });
  expect(outlook.untold?.note).toMatch(reason === 'too-old' ? /^forecast fetched .* 60 h before$/ : /from the field/);
});

test('the bands of the forecast are wider with each day ahead, by the share of the pack', () => {
  const halves = new Map<number, number>();
  scanHours(input({}), (at, _, { held }) => {
    const fact = held['wind.boomKmh'];
    if (fact?.known && fact.type === 'number') halves.set(hoursFrom(morning, at), fact.high - fact.value);
  });
  const share = numberParameter(parametersOn(shipped.pack.parameters, '2026-11-06'), 'forecastLeadGrowthSharePerDay');
  expect(share).toBeGreaterThan(0);
  expect(halves.get(96)! / halves.get(0)!).toBeCloseTo(1 + 4 * share, 1);
});

test('what a model carries on need not be looked at again, and is known then', () => {
  const soil = 'soil.temperature30cmC';
  let modelled = 0;
  scanHours(input({}), (at, _, { strict, aged }) => {
    if (hoursFrom(morning, at) < 30 || hoursFrom(morning, at) > 180) return;
    modelled += 1;
    expect(aged).not.toContain(soil);
    expect(aged).toContain('soil.feel');
    expect(strict[soil]).toMatchObject({ known: true, source: 'derived' });
  });
  expect(modelled).toBe(151);
});

test('no fact of an hour to come is past its time then, but those that are held as assumptions', () => {
  let known = 0;
  scanHours(input({ facts: { 'field.drained': 'yes' } }), (at, _, { strict, held, aged }) => {
    for (const [id, fact] of Object.entries(held)) {
      if (!fact.known || aged.includes(id)) continue;
      known += 1;
      expect(strict[id]).toBe(fact);
      // An earlier object stands for a like one of a later hour, so that what moves little may name an earlier end.
      if (!id.startsWith('rain.next48h')) continue;
      expect(fact.goodUntil, id).toBeGreaterThan(fact.at);
      expect(fact.at).toBeLessThanOrEqual(at);
    }
  });
  expect(known).toBeGreaterThan(1000);
});

test('without a forecast, or with one that has ended, no hour is told', () => {
  expect(outlookOf(input({ weather: null }))).toMatchObject({ hours: [], windows: [], untold: null, reachesTo: null });
  expect(outlookOf(input({ weather: { from: hoursAfter(morning, -40), hours: 20 } }))).toMatchObject({
    hours: [],
    reachesTo: null,
  });
});

test('only sixteen days are looked at, and every hour only once', () => {
  const { hours } = outlookOf(input({ weather: { hours: 600 } }));
  expect(hours).toHaveLength(384);
  expect(new Set(hours.map(({ at }) => at)).size).toBe(384);
});

test.each([
  ['clocks go back', '2026-10-24T09:00Z', '2026-10-24 10:00', ['2026-10-25 01:00', '2026-10-25 01:00']],
  ['clocks go forward', '2027-03-27T09:00Z', '2027-03-27 09:00', ['2027-03-28 00:00', '2027-03-28 02:00']],
  ['a leap day comes', '2028-02-28T09:00Z', '2028-02-28 09:00', ['2028-02-29 00:00', '2028-02-29 01:00']],
] as const)('hours stay one apart when %s', (_, iso, first, [before, after]) => {
  const at = utc(iso);
  const { hours, zone } = outlookOf(input({ at, weather: { hours: 96 } }));
  expect(localTime(hours[0]!.at, zone)).toBe(first);
  expect(hours.every((hour, index) => hour.at === hoursAfter(at, index))).toBe(true);
  const texts = hours.map((hour) => localTime(hour.at, zone));
  const found = texts.findIndex((text, index) => text === before && texts[index + 1] === after);
  expect(found).toBeGreaterThan(0);
});

test('the season closes at midnight at the field, not in Greenwich time of another day', () => {
  const at = utc('2027-01-31T12:00Z');
  const { hours } = outlookOf(input({ at, weather: { hours: 96 } }));
  const closed = hours.find(({ dayBlocks }) => ids(dayBlocks).includes('season-closed'))!;
  expect(closed.at).toBe(utc('2027-02-01T00:00Z'));
});
