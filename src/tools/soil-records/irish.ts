import { dayNumber, meanOf, numberOrNull, tidyDays } from './days.ts';
import type { RecordFile, SoilRecord } from './types.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Irish daily tables: mean soil temperature at 10 cm, least and greatest air temperature, by the place of each column's name. */
export function readIrish({ text }: RecordFile): SoilRecord[] {
  if (!/^\s*Station Name:/.test(text)) return [];
  const lines = text.split(/\r?\n/);
  const heading = lines.findIndex((line) => line.startsWith('date,'));
  const columns = (lines[heading] ?? '').split(',');
  const [high, low, soil] = ['maxtp', 'mintp', 'soil'].map((name) => columns.indexOf(name));
  if (heading < 0 || !(high! > 0 && low! > 0 && soil! > 0)) return [];
  const days = lines
    .slice(heading + 1)
    .filter((line) => /^\d/.test(line))
    .flatMap((line) => {
      const cells = line.split(',');
      const [day = '', month = '', year = ''] = (cells[0] ?? '').split('-');
      const number = dayNumber(Number(year), months.indexOf(month.toLowerCase()) + 1, Number(day));
      if (!Number.isFinite(number)) return [];
      const airC = meanOf(numberOrNull(cells[low!]), numberOrNull(cells[high!]));
      return [{ day: number, airC, soilC: numberOrNull(cells[soil!]) }];
    });
  return [
    {
      station: /Station Name:\s*(.+?)\s*$/m.exec(text)?.[1] ?? 'unnamed',
      source: 'Met Eireann daily',
      latitudeDeg: numberOrNull(/Latitude:\s*([-\d.]+)/.exec(text)?.[1]),
      depthM: 0.1,
      days: tidyDays(days),
    },
  ];
}
