import { parseForecastJson } from '../../src/adapters/openmeteo/json-reply.ts';
import { type DataFile, dataFiles, numberOf, rowsWith } from '../../src/adapters/weather-records/folder.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { referenceEvapotranspirationOfDay } from '../../src/core/science/evapotranspiration/day.ts';
import { metresPerSecond } from '../../src/core/units/brands.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';

/** Name of the service's own value. */
const referenceName = 'et0_fao_evapotranspiration';

/** Every hourly forecast or archive of the service (JSON, or its table export) that carries its own value. */
export function forecastsWithReference(folder: string): { readonly path: string; readonly forecast: Forecast }[] {
  const texts = [
    ...dataFiles(folder, ['.json']).map((file) => ({ path: file.path, text: file.text })),
    ...dataFiles(folder, ['.csv']).flatMap((file) => hourlyReply(file) ?? []),
  ];
  return texts
    .filter(({ text }) => text.includes(referenceName))
    .flatMap(({ path, text }) => {
      try {
        const forecast = parseForecastJson(text);
        return forecast.values.et0Mm?.some((mm) => mm !== null) ? [{ path, forecast }] : [];
      } catch (error) {
        if (isLoamwardError(error)) return [];
        throw error;
      }
    });
}

/** Every daily table of the service with its own value beside what is needed to work one out. */
export function archiveReferences(folder: string) {
  return dataFiles(folder, ['.csv']).flatMap((file) => {
    const head = headOf(file);
    const find = (name: string) => tableNames(file).find((column) => column.startsWith(`${name} (`)) ?? '';
    const [told, high, low, sun] = [
      referenceName,
      'temperature_2m_max',
      'temperature_2m_min',
      'shortwave_radiation_sum',
    ].map(find);
    if (!(head && told && high && low)) return [];
    const wind = find('wind_speed_10m_mean');
    const pairs = rowsWith(file, ['time', told, high, low]).flatMap((row) => {
      const [mm, highestC, lowestC] = [told, high, low].map((name) => numberOf(row[name]));
      const time = Date.parse(row['time'] ?? '');
      if (mm == null || highestC == null || lowestC == null || highestC < lowestC || !Number.isFinite(time)) return [];
      const kmh = numberOf(row[wind]);
      const solarRadiation = sun ? numberOf(row[sun]) : null;
      const year = new Date(time).getUTCFullYear();
      const ours = referenceEvapotranspirationOfDay({
        latitude: head.latitude,
        elevationM: head.elevationM,
        dayOfYear: Math.floor((time - Date.UTC(year, 0, 1)) / 86_400_000) + 1,
        highestC,
        lowestC,
        humidity: { unknown: true },
        wind: kmh === null ? null : metresPerSecond(kmh / 3.6),
        windHeightM: 10,
        sun: solarRadiation === null ? { unknown: 'inland' } : { solarRadiation },
      });
      return [[ours, mm] as const];
    });
    return pairs.length === 0 ? [] : [{ path: file.path, pairs }];
  });
}

/** An hourly table export as the reply it was made from, so that one reader reads both; null for other files. */
function hourlyReply(file: DataFile): { readonly path: string; readonly text: string } | null {
  const names = tableNames(file);
  const head = headOf(file);
  if (
    !head ||
    !names.some((name) => name.startsWith(`${referenceName} (`)) ||
    !names.some((name) => /^temperature_2m \(/.test(name))
  )
    return null;
  const rows = rowsWith(file, ['time', ...names.slice(1, 2)]);
  const hourly: Record<string, unknown> = { time: rows.map((row) => row['time']) };
  const units: Record<string, string> = { time: 'iso8601' };
  for (const name of names.slice(1)) {
    const [, variable = name, unit = ''] = /^(\S+) \((.*)\)$/.exec(name) ?? [];
    hourly[variable] = rows.map((row) => numberOf(row[name]));
    units[variable] = unit;
  }
  const { latitude, longitude, elevationM, offsetS } = head;
  const reply = {
    latitude,
    longitude,
    elevation: elevationM,
    utc_offset_seconds: offsetS,
    hourly_units: units,
    hourly,
  };
  return { path: file.path, text: JSON.stringify(reply) };
}

function headOf(file: DataFile) {
  const [row] = rowsWith(file, ['latitude', 'longitude', 'elevation', 'utc_offset_seconds']);
  const [latitude, longitude] = [numberOf(row?.['latitude']), numberOf(row?.['longitude'])];
  if (latitude === null || longitude === null) return null;
  return {
    latitude,
    longitude,
    elevationM: numberOf(row?.['elevation']) ?? 0,
    offsetS: numberOf(row?.['utc_offset_seconds']) ?? 0,
  };
}

function tableNames({ text }: DataFile): string[] {
  const line = text.split(/\r?\n/, 10).find((one) => /^"?time"?[,;]/.test(one)) ?? '';
  return line.split(/[,;]/).map((cell) => cell.trim().replace(/^"|"$/g, ''));
}
