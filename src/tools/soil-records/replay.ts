import { airOfDays } from '../../core/science/soil/temperature/air.ts';
import { filterReadings } from '../../core/science/soil/temperature/filter.ts';
import { type Memories, remembered } from '../../core/science/soil/temperature/memories.ts';
import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { type DayEstimate, estimateDays } from '../../core/science/soil/temperature/path.ts';
import { startState } from '../../core/science/soil/temperature/state.ts';
import { passDay, type Tracked, takeReading, track } from '../../core/science/soil/temperature/tracked.ts';
import type { SoilAirDay } from '../../core/science/soil/temperature/types.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { isoOfDay } from './days.ts';
import type { RecordDay, SoilRecord } from './types.ts';

/** Days ahead at which forecasts are scored. */
export const leads = [1, 3, 5, 7, 10] as const;
/** Standard error taken for a station's sensor, C. */
const sensorSdC = 0.05;
/** Variance of the two memories on the first day of a record, and the part that they share, C2. */
const unknownPast = { quickVariance: 9, slowVariance: 9, shared: 4 };

/** Forecasts issued on one day of a record: the day itself, then each day ahead; standard errors are of what would be read. */
export interface Issue {
  readonly index: number;
  readonly path: readonly DayEstimate[];
}

/** What a replay is made with. */
export interface ReplayPlan {
  readonly of: SoilModelConstants;
  /** Days on which forecasts are issued. */
  readonly choose: (day: RecordDay, index: number) => boolean;
  /** Days ahead; 10 where absent. */
  readonly aheadDays?: number;
  /** Air as forecast on the day of that index, in place of the true air; its error is then counted in the band. */
  readonly forecastAir?: (days: readonly RecordDay[], index: number) => readonly RecordDay[];
}

/** Days of a record as the model takes them. */
export function daysOf(days: readonly RecordDay[]): SoilAirDay[] {
  return days.map(({ day, airC }) => ({ at: epochSeconds(day * 86_400 + 43_200), iso: isoOfDay(day), airC }));
}

/** Forecasts through a record, the site known by all its readings up to each day and by no later one. */
export function replayWithHistory(record: SoilRecord, plan: ReplayPlan): Issue[] {
  const { of, choose } = plan;
  const { days } = record;
  const [first] = days;
  if (first === undefined) return [];
  const input = { days: daysOf(days), readings: [], at: epochSeconds(days.at(-1)!.day * 86_400 + 86_400) };
  const air = airOfDays({ ...input, latitudeDeg: record.latitudeDeg }, { shiftC: 0, variance: 9 });
  const month = days.slice(0, 30).flatMap(({ airC }) => airC ?? []);
  const start = month.length === 0 ? 8 : month.reduce((sum, one) => sum + one, 0) / month.length;
  const memories = remembered(of, { quickC: start, slowC: start }, air);
  const tracked = track(startState(of, unknownPast));
  return days.flatMap((day, index) => {
    passDay(tracked, of, air[index]!, memories[index]!.slowC);
    if (day.soilC === null) return [];
    const now = memories[index]!;
    takeReading(tracked, of, now, { valueC: day.soilC, variance: sensorSdC ** 2 });
    return choose(day, index) ? [{ index, path: pathFrom(record, index, now, tracked, plan) }] : [];
  });
}

function pathFrom(
  { days, latitudeDeg }: SoilRecord,
  index: number,
  now: Memories,
  tracked: Tracked,
  { of, aheadDays = 10, forecastAir }: ReplayPlan,
): DayEstimate[] {
  const truth = days.slice(index, index + aheadDays + 1);
  const taken = daysOf(forecastAir === undefined ? truth : forecastAir(truth, index));
  const at = taken[0]!.at;
  const airErrorFactor = forecastAir === undefined ? 0 : 1;
  const input = { days: taken, readings: [], at, latitudeDeg, airErrorFactor };
  const air = airOfDays(input, { shiftC: 0, variance: 9 });
  const memories = [now, ...remembered(of, now, air.slice(1))];
  return asRead(of, estimateDays({ air, memories, today: 0, tracked }, of));
}

/** Forecasts from one reading and the air of the `pastDays` before it alone, with the true air ahead. */
export function replayOneReading(
  record: SoilRecord,
  { of, choose, aheadDays = 10 }: ReplayPlan,
  pastDays: number,
): Issue[] {
  const { days, latitudeDeg } = record;
  return days.flatMap((day, index) => {
    if (day.soilC === null || index < pastDays || !choose(day, index)) return [];
    const part = daysOf(days.slice(index - pastDays, index + aheadDays + 1));
    const { at } = part[pastDays]!;
    const readings = [{ at, valueC: day.soilC, sdC: sensorSdC }];
    const filtered = filterReadings({ days: part, readings, at, latitudeDeg, airErrorFactor: 0 }, of);
    return [{ index, path: asRead(of, estimateDays(filtered, of)) }];
  });
}

function asRead(of: SoilModelConstants, path: readonly DayEstimate[]): DayEstimate[] {
  return path.map(({ sdC, ...rest }) => ({ ...rest, sdC: Math.hypot(sdC, of.spotSdC, sensorSdC) }));
}
