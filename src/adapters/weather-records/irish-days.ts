import { type DataFile, numberOf, rowsWith } from './folder.ts';

/** A day of an Irish daily table; null where missing. */
export interface IrishDay {
  /** Days since 1970-01-01. */
  readonly day: number;
  readonly year: number;
  readonly month: number;
  readonly dayOfYear: number;
  readonly highestC: number | null;
  readonly lowestC: number | null;
  readonly rainMm: number | null;
  /** At 10 m. */
  readonly windMPerS: number | null;
  readonly sunshineH: number | null;
  /** MJ/m2. */
  readonly radiation: number | null;
  /** The service's own potential evapotranspiration, mm. */
  readonly potentialMm: number | null;
  /** Its deficits by how the soil drains, mm; below 0 wetter than field capacity. */
  readonly deficits: Readonly<Record<Drainage, number | null>>;
}

/** How the soil drains. */
export type Drainage = 'well' | 'moderately' | 'poorly';

/** A station's days and place. */
export interface IrishStation {
  readonly name: string;
  readonly latitude: number;
  readonly elevationM: number;
  readonly days: readonly IrishDay[];
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const metresPerSecondOfKnot = 1852 / 3600;

/** The station of a daily table with highest and lowest temperature, wind and potential evapotranspiration; null for other files. */
export function irishStation(file: DataFile): IrishStation | null {
  const rows = rowsWith(file, ['date', 'maxtp', 'mintp', 'wdsp', 'rain', 'pe']);
  const latitude = numberOf(/Latitude:\s*([-\d.]+)/.exec(file.text)?.[1]);
  if (rows.length === 0 || latitude === null) return null;
  const elevationM = numberOf(/Station Height:\s*([-\d.]+)/.exec(file.text)?.[1]) ?? 0;
  const name = /Station Name:\s*(.+?)\s*$/m.exec(file.text)?.[1] ?? 'unnamed';
  return { name, latitude, elevationM, days: rows.flatMap(dayOf) };
}

function dayOf(row: Readonly<Record<string, string>>): IrishDay[] {
  const [dayOfMonth = '', monthName = '', yearText = ''] = (row['date'] ?? '').split('-');
  const [year, month] = [Number(yearText), months.indexOf(monthName.toLowerCase()) + 1];
  const day = Date.UTC(year, month - 1, Number(dayOfMonth)) / 86_400_000;
  if (!Number.isFinite(day) || month === 0) return [];
  const cell = (column: string) => numberOf(row[column]);
  const knots = cell('wdsp');
  const joules = cell('glorad') ?? cell('g_rad');
  return [
    {
      day,
      year,
      month,
      dayOfYear: day - Date.UTC(year, 0, 1) / 86_400_000 + 1,
      highestC: cell('maxtp'),
      lowestC: cell('mintp'),
      rainMm: cell('rain'),
      windMPerS: knots === null ? null : knots * metresPerSecondOfKnot,
      sunshineH: cell('sun'),
      radiation: joules === null ? null : joules / 100,
      potentialMm: cell('pe'),
      deficits: { well: cell('smd_wd'), moderately: cell('smd_md'), poorly: cell('smd_pd') },
    },
  ];
}
