import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { validateEvapotranspiration } from './evapotranspiration.ts';
import { validateMeasuredMoisture } from './measured-moisture.ts';
import { validateRetention } from './retention.ts';
import { validateTwoHeights } from './two-heights.ts';
import { validateWaterBalance } from './water-balance.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'validate-water-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** A folder with one invented file under a name that says nothing. */
function invented(name: string, text: string, ending: string, note?: string): string {
  const data = join(folder, name);
  mkdirSync(join(data, 'deep'), { recursive: true });
  writeFileSync(join(data, 'deep', `anything.${ending}`), text);
  if (note) writeFileSync(join(data, 'SOURCE.md'), note);
  return data;
}

const nothing = { passed: 0, failed: 0, lines: [expect.stringContaining('absent')] };

describe('files are found by their form, not by their name', () => {
  test('retention: a loam that holds just what Saxton & Rawls say has no error', () => {
    // Saxton & Rawls 2006, Table 3: loam of 40 % sand, 20 % clay, 2.5 % organic matter holds 28 % and 14 %.
    const soil = {
      particle_size: {
        7: [
          [2, 50, 2000],
          [0.2, 0.6, 1],
        ],
      },
      soil_properties: { 7: { OM_content: '2.5' } },
      'lab_drying_h-t': {
        7: [
          [10, 337, 15_296],
          [0.4, 0.28, 0.14],
        ],
        8: [[10], [0.4]],
      },
    };
    const { lines, failed } = validateRetention(invented('retention', JSON.stringify(soil), 'json'));
    expect(failed).toBe(0);
    expect(lines[0]).toContain('1 samples');
    expect(lines[1]).toMatch(/at 33 kPa bias [+-]0.00[0-4], RMSE 0.00[0-4] m3\/m3 \(1\)/);
  });

  test('a soil beyond the equations is counted, not dropped in silence', () => {
    const soil = {
      particle_size: {
        7: [
          [2, 50],
          [0.7, 0.9],
        ],
      },
      'lab_drying_h-t': { 7: [[337], [0.5]] },
    };
    expect(validateRetention(invented('clay', JSON.stringify(soil), 'json')).lines[0]).toContain(
      '1 beyond the equations',
    );
  });

  const rows = Array.from({ length: 60 }, (_, index) => {
    const date = new Date(Date.UTC(2021, 8, 1 + index));
    const month = date.toLocaleString('en', { month: 'short', timeZone: 'UTC' }).toLowerCase();
    const day = String(date.getUTCDate()).padStart(2, '0');
    return `${day}-${month}-2021,0,15.0,0,9.0,0,2.0,1010.0,8.0,3.0,1.4,${(90 - index).toFixed(1)}`;
  });
  const daily = [
    'Station Name: INVENTED',
    'Station Height: 50 M',
    'Latitude:53.000  ,Longitude: -7.000',
    '',
    'date,ind,maxtp,ind,mintp,ind,rain,cbl,wdsp,sun,pe,smd_wd',
    ...rows,
  ].join('\n');

  test('evapotranspiration and deficits of a daily table are scored beside persistence', () => {
    const data = invented('daily', daily, 'csv');
    const reference = validateEvapotranspiration(data);
    expect(reference.lines.some((line) => line.startsWith('INVENTED, September to December'))).toBe(true);
    const water = validateWaterBalance(data);
    expect(water.lines.find((line) => line.includes('well drained, 7 d'))).toMatch(/\(53\); persistence RMSE 7.00 mm/);
  });

  test('water measured in the soil is scored beside persistence once a year of it is past', () => {
    const rows = Array.from({ length: 700 }, (_, index) => {
      const date = new Date(Date.UTC(2019, 0, 1 + index)).toISOString().slice(0, 10).replaceAll('-', '');
      const held = (0.3 - 0.001 * (index % 100)).toFixed(3);
      return `1,${date},40.0,0.0,12,15.0,5.0,${held},${held},${held}`;
    });
    const heading =
      'WBANNO,LST_DATE,LATITUDE,P_DAILY_CALC,SOLARAD_DAILY,T_DAILY_MAX,T_DAILY_MIN,' +
      'SOIL_MOISTURE_5_DAILY,SOIL_MOISTURE_10_DAILY,SOIL_MOISTURE_20_DAILY';
    const { lines } = validateMeasuredMoisture(invented('measured', [heading, ...rows].join('\n'), 'csv'));
    expect(lines).toHaveLength(6);
    expect(lines[0]).toMatch(/^station 1, as grass, 1 d ahead: bias .* persistence RMSE \d/);
  });

  const hours = Array.from({ length: 24 }, (_, hour) => {
    const sun = hour > 6 && hour < 20 ? 500 * Math.sin(((hour - 6) / 14) * Math.PI) : 0;
    const warmerAbove = hour < 5 || hour > 20 ? 2 : -0.5;
    return `2018-08-19 ${String(hour).padStart(2, '0')}:00:00,15,${15 + warmerAbove},1.5,2,${sun}`;
  });
  const twoHeights = ['datetime,Ta_2m,Ta_10m,Windspeed_2m,Windspeed_10m,rad_sw_in', ...hours].join('\n');

  test('two heights: a wind of three quarters fits the profile, and the place comes from the note', () => {
    const found = validateTwoHeights(invented('heights', twoHeights, 'csv', 'Somewhere, 50.84 N 8.68 E'));
    expect(found.failed).toBe(0);
    expect(found.lines.find((line) => line.includes('from 0.5 m/s, all'))).toMatch(/measured 0.75 .*ratio RMSE 0.00/);
    expect(found.lines.some((line) => line.includes('signs say yes at'))).toBe(true);
    const without = validateTwoHeights(invented('no-note', twoHeights, 'csv'));
    expect(without.lines.some((line) => line.includes('not scored'))).toBe(true);
  });

  test("the service's own value in an hourly reply is compared with what its weather gives", () => {
    const times = Array.from({ length: 48 }, (_, hour) =>
      new Date(Date.UTC(2026, 9, 6, hour)).toISOString().slice(0, 16),
    );
    const hourly = { time: times, temperature_2m: times.map(() => 10), relative_humidity_2m: times.map(() => 80) };
    const column = { shortwave_radiation: times.map(() => 0), et0_fao_evapotranspiration: times.map(() => 0.02) };
    const units = {
      temperature_2m: '°C',
      relative_humidity_2m: '%',
      shortwave_radiation: 'W/m²',
      et0_fao_evapotranspiration: 'mm',
    };
    const reply = {
      latitude: 53,
      longitude: -1,
      utc_offset_seconds: 0,
      hourly_units: units,
      hourly: { ...hourly, ...column },
    };
    const { lines } = validateEvapotranspiration(invented('reply', JSON.stringify(reply), 'json'));
    expect(lines.some((line) => /worked out hourly: bias .* mm\/h \(48\)/.test(line))).toBe(true);
  });

  test('a folder without such files says so', () => {
    const empty = invented('empty', 'a,b\n1,2\n', 'csv');
    expect(validateRetention(empty)).toEqual(nothing);
    expect(validateWaterBalance(empty)).toEqual(nothing);
    expect(validateMeasuredMoisture(empty)).toEqual(nothing);
    expect(validateTwoHeights(empty)).toEqual(nothing);
  });
});
