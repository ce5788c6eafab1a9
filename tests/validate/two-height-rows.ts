import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type DataFile, numberOf, rowsWith } from '../../src/adapters/weather-records/folder.ts';
import type { Place } from '../../src/core/science/sun/position.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';

/** Wind and temperature at 2 and 10 m at one moment. */
export interface TwoHeights {
  readonly at: EpochSeconds;
  readonly wind2mMPerS: number;
  readonly wind10mMPerS: number;
  readonly temperature2mC: number;
  readonly temperature10mC: number;
  /** Solar radiation, W/m2, 0 or more. */
  readonly solarWPerM2: number;
}

/** A record at two heights, with its place where a note beside it says so. */
export interface TwoHeightRecord {
  readonly rows: readonly TwoHeights[];
  readonly place: Place | null;
  /** Hours by which its clock is taken to be ahead of UTC, from when its sun stands highest; 0 where the place is not known. */
  readonly clockAheadH: number;
}

const columns = ['datetime', 'Ta_2m', 'Ta_10m', 'Windspeed_2m', 'Windspeed_10m', 'rad_sw_in'];

/** A table with wind and temperature at 2 and 10 m; null for other files. */
export function readTwoHeights(file: DataFile): TwoHeightRecord | null {
  const rows = rowsWith(file, columns).flatMap((row): TwoHeights[] => {
    const at = Date.parse(`${(row['datetime'] ?? '').replace(' ', 'T')}Z`) / 1000;
    const number = (name: string) => numberOf(row[name], [-9999, -99]) ?? Number.NaN;
    const one = {
      at: epochSeconds(at),
      wind2mMPerS: number('Windspeed_2m'),
      wind10mMPerS: number('Windspeed_10m'),
      temperature2mC: number('Ta_2m'),
      temperature10mC: number('Ta_10m'),
      solarWPerM2: Math.max(0, number('rad_sw_in')),
    };
    return Object.values(one).every(Number.isFinite) ? [one] : [];
  });
  if (rows.length === 0) return null;
  const place = placeBeside(file.path);
  const clockAheadH = place === null ? 0 : clockAhead(rows, place);
  return { place, clockAheadH, rows: rows.map((row) => ({ ...row, at: epochSeconds(row.at - clockAheadH * 3600) })) };
}

/** "50.84 N 8.68 E" in the note of the folder or the one above it. */
function placeBeside(path: string): Place | null {
  for (const folder of [dirname(path), dirname(dirname(path))]) {
    const note = join(folder, 'SOURCE.md');
    if (!existsSync(note)) continue;
    const found = /([\d.]+) ?([NS])[, ]+([\d.]+) ?([EW])/.exec(readFileSync(note, 'utf8'));
    if (!found) continue;
    const [, north, ns, east, ew] = found;
    return { latitude: Number(north) * (ns === 'S' ? -1 : 1), longitude: Number(east) * (ew === 'W' ? -1 : 1) };
  }
  return null;
}

/** Whole hours from the middle of the sun's radiation of all days to noon by the sun at the place. */
function clockAhead(rows: readonly TwoHeights[], { longitude }: Place): number {
  const weight = rows.reduce((sum, { solarWPerM2 }) => sum + solarWPerM2, 0);
  if (weight === 0) return 0;
  const middle = rows.reduce((sum, { at, solarWPerM2 }) => sum + solarWPerM2 * ((at / 3600) % 24), 0) / weight;
  return Math.round(middle - (12 - longitude / 15));
}
