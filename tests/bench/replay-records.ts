import type { RecordPlace, WeatherDay } from '../../src/core/outlook/replay/index.ts';
import { dayNumber, isoOfDay } from '../../src/tools/soil-records/days.ts';
import { readSoilRecords } from '../../src/tools/soil-records/index.ts';
import { inventedDays } from '../generators/weather-days.ts';
import { type DataFile, dataFiles, numberOf, rowsWith } from '../validate/folder.ts';
import { irishStation } from '../validate/irish-days.ts';

/** A station's days and where it stands. */
export interface StationRecord {
  readonly name: string;
  readonly place: RecordPlace;
  readonly days: readonly WeatherDay[];
}

const kmhOfKnot = 1.852;

/** Eight stations of twenty seasons of invented weather, the same in every run. */
export function inventedStations(): StationRecord[] {
  return Array.from({ length: 8 }, (_, index) => ({
    name: `invented ${index + 1}`,
    place: { latitude: 50 + index, longitude: -1, elevationM: 40 * index },
    days: inventedDays(index + 1, 2005, 20),
  }));
}

/** Every station of a folder with air and rain, found by the form of its files; soil at 30 cm where a record of it is there. */
export function recordedStations(folder: string): StationRecord[] {
  const files = dataFiles(folder, ['.csv', '.txt']);
  const soils = readSoilRecords(folder).filter(({ depthM }) => depthM === 0.3);
  const soilOf = (station: string) =>
    new Map(soils.filter((one) => one.station === station).flatMap(({ days }) => days.map((d) => [d.day, d.soilC])));
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

function usNetwork(file: DataFile, soilOf: (station: string) => ReadonlyMap<number, number | null>): StationRecord[] {
  const rows = rowsWith(file, ['WBANNO', 'LST_DATE', 'T_DAILY_MAX', 'T_DAILY_MIN', 'T_DAILY_AVG', 'P_DAILY_CALC']);
  const missing = [-9999, -99];
  return [...new Set(rows.map((row) => row['WBANNO'] ?? ''))].map((station) => {
    const own = rows.filter((row) => row['WBANNO'] === station);
    const soil = soilOf(`WBAN ${station}`);
    const days = own.map((row): [number, WeatherDay] => {
      const date = row['LST_DATE'] ?? '';
      const day = dayNumber(Number(date.slice(0, 4)), Number(date.slice(4, 6)), Number(date.slice(6, 8)));
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
