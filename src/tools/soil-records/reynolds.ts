import { dayNumber, meanOf, numberOrNull, tidyDays } from './days.ts';
import type { RecordDay, RecordFile, SoilRecord } from './types.ts';

const source = 'USDA ARS Reynolds Creek, 17:00 MST';
/** Latitude of the watershed, degrees (Seyfried et al. 2001); its files give map coordinates only. */
const watershedLatitudeDeg = 43.2;
const record = (station: string, days: readonly RecordDay[]): SoilRecord[] =>
  days.some(({ soilC }) => soilC !== null)
    ? [{ station, source, latitudeDeg: watershedLatitudeDeg, depthM: 0.3, days: tidyDays(days) }]
    : [];

/** Table of 17:00 readings at eight depths (y_4 is 30 cm) beside least and greatest air temperature. */
export function readReynoldsTable({ text }: RecordFile): SoilRecord[] {
  const [heading = '', ...rows] = text.split(/\r?\n/);
  if (!/^DATE;LOC;y_1;y_2;y_3;y_4;.*C1;C2$/.test(heading)) return [];
  const cells = rows.filter(Boolean).map((row) => row.split(';'));
  return [...new Set(cells.map((row) => row[1] ?? ''))].flatMap((station) => {
    const days = cells
      .filter((row) => row[1] === station)
      .map((row): RecordDay => {
        const [year = 0, month = 0, day = 0] = (row[0] ?? '').split('-').map(Number);
        const airC = meanOf(numberOrNull(row[10]), numberOrNull(row[11]));
        return { day: dayNumber(year, month, day), airC, soilC: numberOrNull(row[5]) };
      });
    return record(station, days);
  });
}

/** Raw hourly soil files, each joined to the raw daily climate of the same station; without one it has no air and is left out. */
export function readReynoldsRaw(files: readonly RecordFile[]): SoilRecord[] {
  const climates = files.filter(({ text }) => /^# Contents:\s+Daily interval climate/.test(text));
  return files
    .filter(({ text }) => /^# Contents:\s+Hourly interval soil temperature/.test(text))
    .flatMap(({ text }) => {
      const station = stationOf(text);
      const climate = climates.find((one) => stationOf(one.text).startsWith(station));
      return climate ? record(stationOf(climate.text), joined(text, airOf(climate.text))) : [];
    });
}

function stationOf(text: string): string {
  return /station (\w+)/.exec(text)?.[1] ?? 'unnamed';
}

function rowsOf(text: string): string[] {
  return text.split(/\r?\n/).filter((line) => /^\d/.test(line));
}

function dayOf(row: string): number {
  return dayNumber(Number(row.slice(6, 10)), Number(row.slice(0, 2)), Number(row.slice(3, 5)));
}

function airOf(text: string): ReadonlyMap<number, number | null> {
  return new Map(
    rowsOf(text).map((row) => [dayOf(row), meanOf(numberOrNull(row.slice(11, 16)), numberOrNull(row.slice(16, 22)))]),
  );
}

function joined(text: string, air: ReadonlyMap<number, number | null>): RecordDay[] {
  const soil = new Map(
    rowsOf(text)
      .filter((row) => row.slice(11, 13) === '17')
      .map((row) => [dayOf(row), numberOrNull(row.slice(35, 40))]),
  );
  const first = Math.min(...soil.keys()) - 365;
  return [...new Set([...air.keys(), ...soil.keys()])]
    .filter((day) => day >= first)
    .map((day) => ({ day, airC: air.get(day) ?? null, soilC: soil.get(day) ?? null }));
}
