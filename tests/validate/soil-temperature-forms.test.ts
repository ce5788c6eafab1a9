import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { validateSoilClimatology } from './soil-climatology.ts';
import { dailyWaveLines } from './soil-daily-wave.ts';
import { validateSoilDepths } from './soil-depths.ts';
import { airErrorSize } from './soil-temperature-previous-runs.ts';

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'forms-'));
});
afterAll(() => rmSync(root, { recursive: true }));

/** A folder of its own with one invented file; its name says nothing of its form. */
function folderWith(name: string, ending: string, text: string): string {
  const folder = join(root, name);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `a${ending}`), text);
  return folder;
}

describe('earlier runs of a forecast', () => {
  const reply = (days: number) => {
    const hours = Array.from({ length: days * 24 }, (_, hour) => Math.floor(hour / 24));
    const off = (size: number) => hours.map((day) => 10 + (day % 2 === 0 ? size : -size));
    return JSON.stringify({
      hourly: {
        temperature_2m: hours.map(() => 10),
        temperature_2m_previous_day1: off(0.5),
        temperature_2m_previous_day5: off(2.5),
      },
    });
  };

  test('give the error of a day by days ahead where they hold thirty days', () => {
    const { sdC, said } = airErrorSize(folderWith('long', '.json', reply(30)));
    expect([0, 1, 3, 5, 7].map(sdC)).toEqual([0, 0.5, 1.5, 2.5, 3.5]);
    expect(said).toContain('measured');
  });

  test.each([
    ['a day fewer', reply(29)],
    ['another form', JSON.stringify({ hourly: { temperature_2m: [1, 2] } })],
    ['no JSON', '{'],
  ])('leave the stated size with %s, and say so', (name, text) => {
    const { sdC, said } = airErrorSize(folderWith(name, '.json', text));
    expect(sdC(1)).toBeCloseTo(0.9, 9);
    expect(said).toContain('stated size');
  });
});

describe('soil at other depths', () => {
  const daily = (at20: number) =>
    [
      'STATIONS_ID;MESS_DATUM;QN_2;V_TE002M;V_TE005M;V_TE010M;V_TE020M;V_TE050M;eor',
      ...Array.from(
        { length: 600 },
        (_, day) => `1;2017${String(9 + (day % 4)).padStart(2, '0')}10;3;-999;9;9;${at20};9;eor`,
      ),
    ].join('\n');

  test('is found by its columns, and holds where depths differ little', () => {
    expect(validateSoilDepths(folderWith('near', '.txt', daily(9.3)))).toMatchObject({ passed: 4, failed: 0 });
  });

  test('fails where the band of a reading does not hold', () => {
    expect(validateSoilDepths(folderWith('far', '.txt', daily(19))).failed).toBeGreaterThan(0);
  });

  test('is said to be absent', () => {
    expect(validateSoilDepths(folderWith('none', '.txt', 'x'))).toMatchObject({ passed: 0, failed: 0 });
  });
});

test('the daily wave of invented soil is found as it was made: half as high and 6 hours later', () => {
  const wave = (hour: number) => Math.cos((2 * Math.PI * (hour - 15)) / 24);
  const moments = Array.from({ length: 240 }, (_, index) => {
    const hour = index % 24;
    return { hour, byDepth: { 5: 10 + 4 * wave(hour), 20: 11 + 2 * wave(hour - 6) } };
  });
  expect(dailyWaveLines('invented', moments, [5, 20])).toEqual([
    expect.stringContaining('at 20 cm keeps 0.50 of that at 5 cm and lags 6.0 h'),
  ]);
});

describe('monthly means of soil at 30 cm', () => {
  const table = (soilC: number) =>
    [
      'Invented means,,',
      'Month,Mean average temperature,Mean soil temperature 30 cm under grass',
      ...'January February March April May June July August September October November December'
        .split(' ')
        .map((month, index) => {
          const wave = -6.5 * Math.cos((2 * Math.PI * (index - 0.5)) / 12);
          return `${month},${(10 + wave).toFixed(2)},${(soilC + wave).toFixed(2)}`;
        }),
    ].join('\n');

  test('near what usual air tells pass, far from it fail', () => {
    expect(validateSoilClimatology(folderWith('usual', '.csv', table(10.8)))).toMatchObject({ passed: 1, failed: 0 });
    expect(validateSoilClimatology(folderWith('warm', '.csv', table(20)))).toMatchObject({ passed: 0, failed: 1 });
  });
});
