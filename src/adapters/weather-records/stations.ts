import type { RecordPlace, WeatherDay } from '../../core/outlook/replay/index.ts';
import { type DataFile, dataFiles, numberOf, rowsWith } from './folder.ts';
import { irishStation } from './irish-days.ts';

/** A station's days and where it stands. */
export interface StationRecord {
  readonly name: string;
  readonly place: RecordPlace;
  readonly days: readonly WeatherDay[];
}

/** Soil temperature at 30 cm of a station, C, by day since 1970-01-01. */
export type SoilOf = (station: string) => ReadonlyMap<number, number | null>;

const kmhOfKnot = 1.852;
const dayMs = 86_400_000;

/**
 * Every station of a folder with air and rain, found by the form of its files: Irish daily tables and those of the US climate
 * reference network. Soil at 30 cm where `soilOf` knows it.
 */
export function stationRecords(folder: string, soilOf: SoilOf = () => new Map()): StationRecord[] {
  const files = dataFiles(folder, ['.csv', '.txt']);
  return files.flatMap((file) => [...irish(file), ...usNetwork(file, soilOf)]).filter(({ days }) => days.length > 0);
}

const silent = {
  airMeanC: null,
  airMinC: null,
  airMaxC: null,
  rainMm: null,
  windKmh: null,
  gustKmh: null,
  referenceMm: null,
  soil30cmC: null,
} satisfies Omit<WeatherDay, 'iso'>;

function irish(file: DataFile): StationRecord[] {
  const station = irishStation(file);
  if (station === null) return [];
  const gusts = rowsWith(file, ['date', 'maxtp', 'hg']).map((row) => numberOf(row['hg']));
  const days = station.days.map((one, index): [number, WeatherDay] => {
    const gust = gusts[index] ?? null;
    const airMeanC = one.highestC === null || one.lowestC === null ? null : (one.highestC + one.lowestC) / 2;
    return [
      one.day,
      {
        iso: isoOfDay(one.day),
        airMeanC,
        airMinC: one.lowestC,
        airMaxC: one.highestC,
        rainMm: one.rainMm,
        windKmh: one.windMPerS === null ? null : one.windMPerS * 3.6,
        gustKmh: gust === null ? null : gust * kmhOfKnot,
        referenceMm: one.potentialMm,
        soil30cmC: null,
      },
    ];
  });
  const longitude = numberOf(/Longitude:\s*([-\d.]+)/.exec(file.text)?.[1]) ?? 0;
  const place = { latitude: station.latitude, longitude, elevationM: station.elevationM };
  return [{ name: station.name, place, days: withoutHoles(days) }];
}

function usNetwork(file: DataFile, soilOf: SoilOf): StationRecord[] {
  const rows = rowsWith(file, ['WBANNO', 'LST_DATE', 'T_DAILY_MAX', 'T_DAILY_MIN', 'T_DAILY_AVG', 'P_DAILY_CALC']);
  const missing = [-9999, -99];
  return [...new Set(rows.map((row) => row['WBANNO'] ?? ''))].map((station) => {
    const own = rows.filter((row) => row['WBANNO'] === station);
    const soil = soilOf(`WBAN ${station}`);
    const days = own.map((row): [number, WeatherDay] => {
      const date = row['LST_DATE'] ?? '';
      const day = Date.UTC(Number(date.slice(0, 4)), Number(date.slice(4, 6)) - 1, Number(date.slice(6, 8))) / dayMs;
      const number = (name: string) => numberOf(row[name], missing);
      return [
        day,
        {
          ...silent,
          iso: isoOfDay(day),
          airMeanC: number('T_DAILY_AVG'),
          airMinC: number('T_DAILY_MIN'),
          airMaxC: number('T_DAILY_MAX'),
          rainMm: number('P_DAILY_CALC'),
          soil30cmC: soil.get(day) ?? null,
        },
      ];
    });
    const number = (name: string) => numberOf(own[0]?.[name], missing) ?? 0;
    const place = { latitude: number('LATITUDE'), longitude: number('LONGITUDE'), elevationM: 0 };
    return { name: `WBAN ${station}`, place, days: withoutHoles(days) };
  });
}

function withoutHoles(found: readonly (readonly [number, WeatherDay])[]): WeatherDay[] {
  const byDay = new Map(found);
  const numbers = [...byDay.keys()].sort((a, b) => a - b);
  const [first, last] = [numbers[0] ?? 0, numbers.at(-1) ?? -1];
  return Array.from({ length: last - first + 1 }, (_, index) => {
    const day = first + index;
    return byDay.get(day) ?? { ...silent, iso: isoOfDay(day) };
  });
}

/** Calendar day (YYYY-MM-DD) of a day since 1970-01-01. */
function isoOfDay(day: number): string {
  return new Date(day * dayMs).toISOString().slice(0, 10);
}
