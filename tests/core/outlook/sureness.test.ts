import { expect, test } from 'vitest';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import type { EpochSeconds } from '../../../src/core/units/brands.ts';
import { hoursAfter } from '../facts/moments.ts';
import { input, morning } from './field.ts';

const dry = Array.from({ length: 240 }, () => 0);
const wet = dry.map((_, hour) => (hour === 60 ? 12 : 0));
const ensemble = (wetMembers: number) => Array.from({ length: 20 }, (_, member) => (member < wetMembers ? wet : dry));

function outlookWith(members: readonly (readonly (number | null)[])[] | null) {
  const given = input({});
  const forecast = given.forecast && { ...given.forecast, ...(members && { precipitationMembersMm: members }) };
  return outlookOf({ ...given, forecast });
}

const at = (hours: ReturnType<typeof outlookOf>['hours'], ahead: number) =>
  hours.find((hour) => hour.at === hoursAfter(morning, ahead))!;

test('with calm and dry weather an hour is nearly sure, and less so the further ahead it lies', () => {
  const { hours } = outlookWith(null);
  const sure = [0, 48, 120, 190].map((ahead) => at(hours, ahead).sureness!);
  expect(sure[0]).toBeGreaterThan(0.9);
  expect(sure).toEqual(sure.toSorted((a, b) => b - a));
  expect(sure.at(-1)).toBeLessThan(0.95);
});

test('wind nearer to its limit makes an hour less sure', () => {
  const sureAt = (windSpeed10mKmh: number) =>
    at(outlookOf(input({ weather: { columns: { windSpeed10mKmh } } })).hours, 30).sureness!;
  const sure = [6, 12, 16, 17].map(sureAt);
  expect(sure).toEqual(sure.toSorted((a, b) => b - a));
  expect(sure[0]! - sure.at(-1)!).toBeGreaterThan(0.1);
});

test('with an ensemble the chance of no heavy rain is the share of members without it', () => {
  const certain = at(outlookWith(ensemble(0)).hours, 30).sureness!;
  const half = at(outlookWith(ensemble(10)).hours, 30).sureness!;
  expect(half / certain).toBeCloseTo(0.5, 2);
});

test.each([
  [4, 'clear', []],
  [5, 'blocked', ['heavy-rain-coming']],
])('with %i of 20 members wet an hour is %s: the chance asked for is 0.8', (wetMembers, state, blocks) => {
  const hour = at(outlookWith(ensemble(wetMembers)).hours, 20);
  expect(hour.state).toBe(state);
  expect(hour.hourBlocks.map(({ rule }) => rule)).toEqual(blocks);
});

test('members that are heavy in different ways count together: then an hour names rain as open', () => {
  const long = dry.map((_, hour) => (hour >= 40 && hour < 50 ? 1.5 : 0));
  const burst = dry.map((_, hour) => (hour === 60 ? 4.5 : 0));
  const members = [...ensemble(0).slice(6), ...[long, long, long], ...[burst, burst, burst]];
  const hour = at(outlookWith(members).hours, 20);
  expect([hour.state, hour.unknown]).toEqual(['clear-if', ['rain.next48hMm']]);
});

test('members with a gap do not count, and with gaps in all of them the band does', () => {
  const gap = wet.map((mm, hour) => (hour === 40 ? null : mm));
  const withGaps = outlookWith([...ensemble(10).slice(10), ...Array.from({ length: 10 }, () => gap)]);
  expect(at(withGaps.hours, 30).sureness).toBe(at(outlookWith(ensemble(0)).hours, 30).sureness);
  expect(at(outlookWith([gap]).hours, 30)).toEqual(at(outlookWith(null).hours, 30));
});

test('a window with one unsure hour names the likely stretch beside it, hours on either side', () => {
  const gusty = (_: EpochSeconds, hour: number) => (hour === 10 ? 17.5 : 8);
  const { hours, windows } = outlookOf(input({ weather: { columns: { windSpeed10mKmh: gusty } } }));
  const tenth = hoursAfter(morning, 10);
  expect(at(hours, 10).sureness).toBeLessThan(0.66);
  const around = windows.find(({ from, until }) => from <= tenth && tenth < until)!;
  expect(around.surest!.from > tenth || around.surest!.until <= tenth).toBe(true);
  expect(around.surest!.sureness).toBeGreaterThan(0.66);
});

test('a window on a day on which the soil straddles its limit carries the chance of that day, and one on cold soil none', () => {
  const { windows, soilTemperature, fallThrough } = outlookOf(input({ facts: { 'soil.temperature30cmC': 10.2 } }));
  const open = windows.filter(({ unknown }) => unknown.includes('soil.temperature30cmC'));
  expect(open.length).toBeGreaterThan(0);
  for (const { soilBelow, from } of open) {
    const near = soilTemperature.filter((point) => Math.abs(point.at - from) <= 12 * 3600);
    expect(near.map(({ chanceBelow }) => chanceBelow)).toContain(soilBelow!.first);
    expect(soilBelow!.limitC).toBe(fallThrough!.limitC);
  }
  expect(outlookOf(input({ facts: { 'soil.temperature30cmC': 4 } })).windows[0]!.soilBelow).toBeNull();
});

test('the soil line begins on the day asked about, widens, and goes past the forecast on the usual air', () => {
  const { soilTemperature, fallThrough } = outlookOf(input({ facts: { 'soil.temperature30cmC': 11 } }));
  expect(soilTemperature[0]!.at).toBeLessThanOrEqual(hoursAfter(morning, 24));
  const width = soilTemperature.map(({ low80C, high80C }) => high80C - low80C);
  expect(width.at(-1)!).toBeGreaterThan(width[0]!);
  expect(soilTemperature.at(-1)!.beyondForecast).toBe(true);
  expect(fallThrough!.limitC).toBe(10);
  expect(outlookOf(input({ facts: { 'soil.temperature30cmC': null } }))).toMatchObject({
    soilTemperature: [],
    usualAirYears: null,
    fallThrough: null,
  });
});
