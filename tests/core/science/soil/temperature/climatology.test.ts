import { describe, expect, test } from 'vitest';
import {
  type ArchiveDay,
  climatologyFrom,
  soilTemperaturePath,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { asked, daysWith } from './field-days.ts';

/** Invented: a yearly wave of 10 C about 5 C that is coldest on 20 January, with weather of 2 C to either side by turns. */
const wave = (dayOfYear: number) => 5 - 10 * Math.cos((2 * Math.PI * (dayOfYear - 20)) / 365.25);
const archive = (years: number): ArchiveDay[] =>
  Array.from({ length: years * 365 }, (_, index) => {
    const noon = Date.UTC(2016, 0, 1, 12) + index * 86_400_000;
    const iso = new Date(noon).toISOString().slice(0, 10);
    const dayOfYear = Math.floor((noon - Date.UTC(Number(iso.slice(0, 4)), 0, 1)) / 86_400_000) + 1;
    return { iso, airC: wave(dayOfYear) + (index % 2 === 0 ? 2 : -2) };
  });

describe('the usual air of a place from an archive', () => {
  const ofTenYears = () => climatologyFrom(archive(10), 'invented archive')!;

  test('is the mean of the season, with the spread of single days, for every day of the year', () => {
    const found = ofTenYears();
    expect(found.meanAirCByDayOfYear).toHaveLength(366);
    for (const day of [1, 60, 180, 300, 366]) {
      expect(Math.abs(found.meanAirCByDayOfYear[day - 1]! - wave(day))).toBeLessThan(0.2);
    }
    expect(found.spreadC).toBeCloseTo(2, 1);
    expect(found).toMatchObject({ years: 10, source: 'invented archive' });
  });

  test('leaves out values that cannot be, and does not mind the order', () => {
    const bad = [{ iso: '2017-06-01', airC: 999 }, { iso: '2017-06-02', airC: null }, ...archive(10).reverse()];
    const again = climatologyFrom(bad, 'invented archive')!;
    expect(again.spreadC).toBeCloseTo(ofTenYears().spreadC, 9);
  });

  test.each([
    ['nothing', []],
    ['half a year', archive(1).slice(0, 180)],
    ['years without a February', archive(5).filter(({ iso }) => iso.slice(5, 7) !== '02')],
  ])('is not told from %s', (_, days) => {
    expect(climatologyFrom(days, 'invented archive')).toBeNull();
  });

  test('stands in beyond the forecast in place of that of the latitude, and narrows the band there', () => {
    const found = ofTenYears();
    const days = daysWith(Array.from({ length: 40 }, (_, day) => (day < 25 ? 9 : null)));
    const byLatitude = soilTemperaturePath(asked({ days }), 10);
    const byArchive = soilTemperaturePath(asked({ days, climatology: found }), 10);
    expect(byArchive[19]!.sdC).toBeLessThan(byLatitude[19]!.sdC);
    const colder = { ...found, meanAirCByDayOfYear: found.meanAirCByDayOfYear.map((mean) => mean - 8) };
    expect(soilTemperaturePath(asked({ days, climatology: colder }), 10)[19]!.valueC).toBeLessThan(
      byArchive[19]!.valueC - 1,
    );
    expect(byArchive[4]!.valueC).toBeCloseTo(byLatitude[4]!.valueC, 1);
  });

  test('rests on little where it has one year: the band is wider than with ten', () => {
    const days = daysWith(Array.from({ length: 40 }, (_, day) => (day < 25 ? 9 : null)));
    const steady = { ...ofTenYears(), meanAirCByDayOfYear: Array.from({ length: 366 }, () => 9) };
    const sd = (years: number) => soilTemperaturePath(asked({ days, climatology: { ...steady, years } }), 10)[19]!.sdC;
    expect(sd(1)).toBeGreaterThan(sd(10));
  });

  test.each([
    ['too few days', { meanAirCByDayOfYear: [9] }],
    ['no spread', { spreadC: 0 }],
    ['no year', { years: 0 }],
    ['air that cannot be', { meanAirCByDayOfYear: Array.from({ length: 366 }, () => Number.NaN) }],
  ])('with %s is refused with its code', (_, part) => {
    expect(() => soilTemperaturePath(asked({ climatology: { ...ofTenYears(), ...part } }), 10)).toThrow(
      expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }),
    );
  });
});
