import { dataFiles } from '../../src/adapters/weather-records/folder.ts';
import { airForecastSdC } from '../../src/core/science/soil/temperature/air.ts';

/** Least whole days that each lead time must have before its error is taken as measured. */
const leastDays = 30;

/** How large the error of a day's mean air temperature is by days ahead, and in words where that is from. */
export interface AirErrorSize {
  readonly sdC: (daysAhead: number) => number;
  readonly said: string;
}

/**
 * Error of forecasts of earlier runs (hourly `temperature_2m_previous_dayN` beside `temperature_2m`) in a folder, by days ahead;
 * between and beyond the lead times held it is drawn out in a straight line. The stated size where fewer than 30 days are held.
 */
export function airErrorSize(folder: string): AirErrorSize {
  const squares = new Map<number, number[]>();
  let hours = 0;
  for (const { text } of dataFiles(folder, ['.json'])) {
    const hourly = hourlyOf(text);
    const came = hourly?.['temperature_2m'];
    if (hourly === null || came === undefined) continue;
    for (const [key, values] of Object.entries(hourly)) {
      const lead = /^temperature_2m_previous_day(\d+)$/.exec(key)?.[1];
      if (lead === undefined) continue;
      hours = Math.max(hours, values.length);
      const errors = dayMeans(values).map((mean, day) => mean - dayMeans(came)[day]!);
      const held = errors.filter(Number.isFinite).map((error) => error ** 2);
      squares.set(Number(lead), [...(squares.get(Number(lead)) ?? []), ...held]);
    }
  }
  const points = [...squares]
    .filter(([, own]) => own.length >= leastDays)
    .map(([lead, own]): [number, number] => [lead, Math.sqrt(own.reduce((sum, one) => sum + one, 0) / own.length)])
    .toSorted(([a], [b]) => a - b);
  if (points.length < 2) {
    const why = `earlier runs in the folder hold ${hours} hours, fewer than ${leastDays} days at two lead times`;
    return { sdC: airForecastSdC, said: `of the stated size, 0.6 + 0.3 C a day (${why})` };
  }
  const text = points.map(([lead, sd]) => `${lead} d ${sd.toFixed(2)}`).join(', ');
  return { sdC: (ahead) => alongLine(points, ahead), said: `as measured from earlier runs, C: ${text}` };
}

function alongLine(points: readonly (readonly [number, number])[], ahead: number): number {
  if (ahead <= 0) return 0;
  const next = points.findIndex(([lead]) => lead >= ahead);
  const high = Math.max(1, next < 0 ? points.length - 1 : next);
  const [[fromLead, from], [toLead, to]] = [points[high - 1]!, points[high]!];
  return Math.max(0, from + ((to - from) * (ahead - fromLead)) / (toLead - fromLead));
}

function dayMeans(hours: readonly (number | null)[]): number[] {
  return Array.from({ length: Math.floor(hours.length / 24) }, (_, day) => {
    const own = hours.slice(day * 24, day * 24 + 24);
    return own.some((one) => one === null) ? Number.NaN : own.reduce<number>((sum, one) => sum + one!, 0) / 24;
  });
}

function hourlyOf(text: string): Readonly<Record<string, readonly (number | null)[]>> | null {
  try {
    const { hourly } = JSON.parse(text);
    return typeof hourly === 'object' ? hourly : null;
  } catch {
    return null;
  }
}
