import { describe, expect, test } from 'vitest';
import { localDate } from '../../src/core/facts/local-day.ts';
import { utc } from '../core/facts/moments.ts';
import { build, decided, expectNoSurer, fit, iso, soil } from './weather-answers.ts';

describe('days that are odd', () => {
  const hourly = (day: string) => {
    const moment = utc(`${day}T09:00Z`);
    return decided({ 'soil.temperature30cmC': { value: 8, readAt: iso(-48, moment) } }, build({}, moment), moment);
  };
  test.each([
    ['2026-10-23', 'clocks go back on 25 October 2026'],
    ['2027-03-26', 'clocks go forward on 28 March 2027'],
    ['2028-02-27', '29 February 2028'],
  ])('from %s (%s) hours stay an hour apart, days are all there, daylight holds noon', async (day) => {
    const { outlook } = await hourly(day);
    const stamps = outlook.hours.map((hour) => hour.at);
    expect(stamps.every((stamp, index) => index === 0 || stamp - stamps[index - 1]! === 3600)).toBe(true);
    expect(stamps.length).toBe(240);
    const days = outlook.soilTemperature.map((point) => localDate(point.at, outlook.zone));
    const wanted = days.map((_, index) =>
      new Date(Date.parse(days[0]!) + index * 86_400_000).toISOString().slice(0, 10),
    );
    expect(days).toEqual(wanted);
    for (const { daylight } of outlook.windows) {
      for (const span of daylight ?? []) {
        const noon = Math.floor(span.from / 86_400) * 86_400 + 43_200;
        expect(span.until - span.from).toBeLessThan(14 * 3600);
        expect(Math.abs((span.from + span.until) / 2 - noon)).toBeLessThan(6 * 3600);
      }
    }
  });

  test('the leap day is out of season, with the soil carried and the sun as on the days beside it', async () => {
    const leap = await hourly('2028-02-29');
    const before = await hourly('2028-02-28');
    expect(leap.verdict).toBe('do-not-spray');
    expect(leap.reasons.map(({ rule }) => rule)).toContain('season-closed');
    expect(Math.abs(soil(leap).value - soil(before).value)).toBeLessThan(0.3);
    expect(leap.facts['sun.daylight']).toEqual({
      ...before.facts['sun.daylight'],
      at: expect.anything(),
      goodUntil: expect.anything(),
    });
  });
});

test('a place in the sea: no soil layers, no height, no surer than land, and nothing that only a field can tell', async () => {
  const sea = build({
    place: { askedLatitude: 53.5, askedLongitude: 2.5, latitude: 53.5, longitude: 2.5, elevationM: 0 },
    columns: { soilTemperature18cmC: null, soilTemperature54cmC: null },
  });
  const facts = { 'field.latitude': 53.5, 'field.longitude': 2.5 };
  expectNoSurer(await decided(facts, sea), await decided({}));
  const none = Object.fromEntries(Object.keys(fit).map((id) => [id, null]));
  const unknown = await decided({ ...none, ...facts }, sea);
  expect(unknown.verdict).not.toBe('spray-today');
  expect(unknown.facts['soil.temperature30cmC']).toMatchObject({ known: false });
});
