import { dayNumber, numberOrNull, tidyDays } from './days.ts';
import type { RecordFile, SoilRecord } from './types.ts';

/**
 * Daily table of the US Climate Reference Network, by its heading: 30 cm lies a third of the way from 20 to 50 cm. Missing is
 * -9999 or -99.
 */
export function readUsNetwork({ text }: RecordFile): SoilRecord[] {
  const [heading = '', ...rows] = text.split(/\r?\n/);
  const columns = heading.split(',');
  const needed = ['WBANNO', 'LST_DATE', 'LATITUDE', 'T_DAILY_AVG', 'SOIL_TEMP_20_DAILY', 'SOIL_TEMP_50_DAILY'];
  const places = needed.map((name) => columns.indexOf(name));
  if (places.includes(-1)) return [];
  const cells = rows.filter(Boolean).map((row) => {
    const parts = row.split(',');
    return places.map((place) => parts[place]);
  });
  return [...new Set(cells.map(([station]) => station ?? ''))].map((station) => {
    const own = cells.filter(([one]) => one === station);
    const days = own.map(([, date = '', , air, at20, at50]) => {
      const [high, low] = [at20, at50].map((one) => numberOrNull(one, [-9999, -99]));
      const soilC = high == null || low == null ? null : high + (low - high) / 3;
      const day = dayNumber(Number(date.slice(0, 4)), Number(date.slice(4, 6)), Number(date.slice(6, 8)));
      return { day, airC: numberOrNull(air, [-9999, -99]), soilC };
    });
    const latitudeDeg = numberOrNull(own[0]?.[2]);
    return {
      station: `WBAN ${station}`,
      source: 'NOAA US Climate Reference Network, daily',
      latitudeDeg,
      depthM: 0.3,
      days: tidyDays(days),
    };
  });
}
