import { drawsFrom } from '../../src/core/science/soil/temperature/draws.ts';
import type { RecordDay } from '../../src/tools/soil-records/types.ts';

/** What of the error of one forecast day stays in the next. */
const kept = 0.7;

/** True air with errors of a size by days ahead, C, added to the days ahead; the same for the same day. */
export function withForecastError(
  days: readonly RecordDay[],
  index: number,
  sdC: (daysAhead: number) => number,
): RecordDay[] {
  const draw = drawsFrom(index + 1);
  for (let skipped = 0; skipped < 8; skipped += 1) draw();
  let unit = draw();
  return days.map((day, ahead) => {
    if (ahead === 0 || day.airC === null) return day;
    unit = kept * unit + Math.sqrt(1 - kept ** 2) * draw();
    return { ...day, airC: day.airC + unit * sdC(ahead) };
  });
}
