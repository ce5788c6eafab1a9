import { type DataFile, dataFiles, numberOf, rowsWith } from '../../src/adapters/weather-records/folder.ts';
import { errorVariance } from '../../src/core/science/soil/temperature/readings.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { sayScore, score } from './score.ts';
import { dailyWaveLines } from './soil-daily-wave.ts';
import { runDates, runDatesLine, runDatesProblem } from './soil-run-dates.ts';
import { hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

/** Temperatures at one moment by depth in cm, C. */
interface Profile {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** 0 to 23; null for the mean of a day. */
  readonly hour: number | null;
  readonly byDepth: Readonly<Record<number, number | null>>;
}

interface Station {
  readonly name: string;
  readonly profiles: readonly Profile[];
}

const hourlyDepths = [5, 10, 20, 30, 40, 50];
/** Depths asked about, cm, and the share that a band of 95 % must hold: of readings of a whole season, hours mixed. */
const otherDepths = [5, 10, 20, 40, 50];
const leastHeld = 0.93;
/** Least readings from which on a share is judged. */
const leastReadings = 500;

/**
 * A reading of another depth against 30 cm at the same moment: how far it is off, and whether the band that the model gives it
 * holds; below 30 cm, where the band was fitted, on the other half of the years. From hourly records with a sensor at 30 cm, and from daily records at 20 and 50 cm, between which 30 cm lies.
 */
export function validateSoilDepths(folder: string): ValidationResult {
  const stations = dataFiles(folder, ['.txt', '.csv']).flatMap((file) => [...hourly(file), ...daily(file)]);
  if (stations.length === 0) return nothingToCheck('soil temperatures at several depths');
  const found = stations.flatMap(({ name, profiles }) =>
    otherDepths.flatMap((depth) => {
      const pairs = profiles
        .filter(({ year, month }) => month >= 9 && (depth < 30 || year % 2 === 1))
        .flatMap(({ byDepth }): [number, number][] => {
          const [other, at30] = [byDepth[depth] ?? null, byDepth[30] ?? null];
          return other === null || at30 === null ? [] : [[other, at30]];
        });
      if (pairs.length === 0) return [];
      const sd = Math.sqrt(errorVariance({ at: epochSeconds(0), valueC: 0, sdC: 0.2, depthM: depth / 100 }));
      const held = pairs.filter(([other, at30]) => Math.abs(other - at30) <= 1.96 * sd).length / pairs.length;
      return [{ name, depth, pairs, sd, held }];
    }),
  );
  const lines = found.map(
    ({ name, depth, pairs, sd, held }) =>
      `${name}, September to December${depth < 30 ? '' : ' of odd years, the even ones fitted on'}: ${depth} cm for 30 cm ${sayScore(score(pairs), 2, 'C')}; 95 % band of ${(1.96 * sd).toFixed(1)} C either side holds ${(held * 100).toFixed(0)} %`,
  );
  const waves = stations.flatMap(({ name, profiles }) => {
    const autumn = profiles.filter(({ month }) => month >= 9);
    return dailyWaveLines(
      name,
      autumn.flatMap(({ hour, byDepth }) => (hour === null ? [] : [{ hour, byDepth }])),
      hourlyDepths,
    );
  });
  const dates = stations.flatMap(({ name, profiles }) =>
    runDates(profiles.flatMap((one) => (one.hour === null ? [{ iso: isoOf(one), byDepth: one.byDepth }] : []))).map(
      (one) => ({ name, one }),
    ),
  );
  const bandChecks = found
    .filter(({ pairs }) => pairs.length >= leastReadings)
    .map(
      ({ name, depth, held }) =>
        [
          `${name}: the band of a reading at ${depth} cm holds`,
          () => hold(held >= leastHeld, () => `${(held * 100).toFixed(1)} % held`),
        ] as const,
    );
  const dateChecks = dates.map(
    ({ name, one }) =>
      [
        `${name}, ${one.year}: the first week below 10 C is the same by both counts, at 30 cm between those of 20 and 50 cm`,
        () => hold(runDatesProblem(one) === null, () => runDatesProblem(one) ?? ''),
      ] as const,
  );
  const checks = runChecks([...bandChecks, ...dateChecks]);
  const figures = Object.fromEntries(
    found.map(({ name, depth, pairs, held }) => [`${name} ${depth} cm`, { held, rmse: score(pairs).rmse }]),
  );
  return {
    ...checks,
    lines: [...lines, ...waves, ...dates.map(({ name, one }) => runDatesLine(name, one)), ...checks.lines],
    figures,
  };
}

function isoOf({ year, month, day }: Profile): string {
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** Raw hourly soil file of the Reynolds Creek watershed: date, hour, then the temperatures from 5 cm down. */
function hourly({ text }: DataFile): Station[] {
  if (!/^# Contents:\s+Hourly interval soil temperature/.test(text)) return [];
  const profiles = text
    .split(/\r?\n/)
    .filter((line) => /^\d/.test(line))
    .map((line): Profile => {
      const [month, day, year, hour, , ...values] = line.trim().split(/\s+/);
      const byDepth = Object.fromEntries(hourlyDepths.map((depth, index) => [depth, numberOf(values[index])]));
      return { year: Number(year), month: Number(month), day: Number(day), hour: Number(hour), byDepth };
    });
  return [{ name: `station ${/station (\w+)/.exec(text)?.[1] ?? 'unnamed'}, hourly`, profiles }];
}

/** German daily soil temperatures: 30 cm lies a third of the way from 20 to 50 cm. Missing is -999. */
function daily(file: DataFile): Station[] {
  const rows = rowsWith(file, ['STATIONS_ID', 'MESS_DATUM', 'V_TE020M', 'V_TE050M']);
  const value = (text: string | undefined) => numberOf(text, [-999]);
  return [...new Set(rows.map((row) => row['STATIONS_ID']))].map((station) => ({
    name: `DWD ${station}, daily`,
    profiles: rows
      .filter((row) => row['STATIONS_ID'] === station)
      .map((row): Profile => {
        const [at20, at50] = [value(row['V_TE020M']), value(row['V_TE050M'])];
        const at30 = at20 === null || at50 === null ? null : at20 + (at50 - at20) / 3;
        const byDepth = { 5: value(row['V_TE005M']), 10: value(row['V_TE010M']), 20: at20, 30: at30, 50: at50 };
        const day = row['MESS_DATUM'] ?? '';
        const [year = 0, month = 0, date = 0] = [day.slice(0, 4), day.slice(4, 6), day.slice(6, 8)].map(Number);
        return { year, month, day: date, hour: null, byDepth };
      }),
  }));
}
