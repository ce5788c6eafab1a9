import { dayNumber, meanOf, numberOrNull, tidyDays } from './days.ts';
import type { RecordFile, SoilRecord } from './types.ts';

type Row = Readonly<Record<string, string>>;

/**
 * British land surface data (BADC-CSV): 30 cm read at 09 UTC, and the least and greatest air temperature of the 24 hours that
 * end then, of the same station; rows of other periods are left out.
 */
export function readBritish(files: readonly RecordFile[]): SoilRecord[] {
  const tables = files.filter(({ text }) => /^Conventions,G,BADC-CSV/.test(text));
  const soils = tables.filter(({ text }) => text.includes(',q30cm_soil_temp,'));
  const airs = tables.filter(({ text }) => text.includes(',max_air_temp,'));
  return [...new Set(soils.map(({ text }) => stationOf(text)))].flatMap((station) => {
    const rowsFor = (all: readonly RecordFile[]) =>
      all.filter(({ text }) => stationOf(text) === station).flatMap(({ text }) => rowsOf(text));
    const soil = new Map(rowsFor(soils).map((row) => [morningOf(row['ob_time']), value(row['q30cm_soil_temp'])]));
    const air = new Map(
      rowsFor(airs)
        .filter((row) => row['ob_hour_count'] === '24')
        .map((row) => [morningOf(row['ob_end_time']), meanOf(value(row['min_air_temp']), value(row['max_air_temp']))]),
    );
    const days = [...new Set([...soil.keys(), ...air.keys()])]
      .filter((day) => day !== null)
      .map((day) => ({ day, airC: air.get(day) ?? null, soilC: soil.get(day) ?? null }));
    if (days.length === 0) return [];
    const latitudeDeg = numberOrNull(/^location,G,([-\d.]+),/m.exec(soils[0]?.text ?? '')?.[1]);
    const source = 'Met Office MIDAS Open, 09 UTC';
    return [{ station, source, latitudeDeg, depthM: 0.3, days: tidyDays(days) }];
  });
}

function stationOf(text: string): string {
  return /^observation_station,G,(.+)$/m.exec(text)?.[1]?.trim() ?? 'unnamed';
}

function rowsOf(text: string): Row[] {
  const lines = text.split(/\r?\n/);
  const from = lines.indexOf('data');
  const columns = (lines[from + 1] ?? '').split(',');
  return lines
    .slice(from + 2)
    .filter((line) => /^\d/.test(line))
    .map((line) => {
      const cells = line.split(',');
      return Object.fromEntries(columns.map((name, index) => [name, cells[index] ?? '']));
    });
}

function morningOf(stamp: string | undefined): number | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2}) 09:00/.exec(stamp ?? '');
  return parts && dayNumber(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

function value(text: string | undefined): number | null {
  return numberOrNull(text, [-999, -9999]);
}
