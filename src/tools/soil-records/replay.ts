import { airOfDays } from '../../core/science/soil/temperature/air.ts';
import { type Filtered, filterReadings } from '../../core/science/soil/temperature/filter.ts';
import { type Memories, remembered } from '../../core/science/soil/temperature/memories.ts';
import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { estimateDays } from '../../core/science/soil/temperature/path.ts';
import {
  advance,
  copyState,
  loadings,
  observe,
  type SoilState,
  seen,
  startState,
} from '../../core/science/soil/temperature/state.ts';
import type { SoilAirDay, SoilTemperatureInput } from '../../core/science/soil/temperature/types.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { isoOfDay } from './days.ts';
import type { RecordDay, SoilRecord } from './types.ts';

/** Days ahead at which forecasts are scored. */
export const leads = [1, 3, 5, 7, 10] as const;
/** Standard error taken for a station's sensor, C. */
export const sensorSdC = 0.05;

/** One forecast against what came: error (came less forecast) and standard error of what would be read, C. */
export interface LeadError {
  readonly lead: number;
  readonly errorC: number;
  readonly sdC: number;
}

/** Forecasts issued on one day of a record. */
export interface Issue {
  readonly index: number;
  readonly errors: readonly LeadError[];
}

/** Which days of a record forecasts are issued on. */
export type ChooseDay = (day: RecordDay, index: number) => boolean;

/** Days of a record as the model takes them. */
export function daysOf(days: readonly RecordDay[]): SoilAirDay[] {
  return days.map(({ day, airC }) => ({ at: epochSeconds(day * 86_400 + 43_200), iso: isoOfDay(day), airC }));
}

/** Forecasts through a record with its true air, the site known by all its readings up to each day. */
export function replayWithHistory(record: SoilRecord, of: SoilModelConstants, choose: ChooseDay): Issue[] {
  const { days } = record;
  const input = trueAir(record, days, days.length - 1);
  const shift = {
    shiftC: (days.slice(0, 30).reduce((sum, { airC }) => sum + (airC ?? 8), 0) / 30 || 8) - 9,
    variance: 9,
  };
  const air = airOfDays(input, { shiftC: 0, variance: 9 });
  const start = shift.shiftC + 9;
  const memories = remembered(of, { quickC: start, slowC: start }, air);
  const state = startState(of, { quickVariance: 9, slowVariance: 9, shared: 4 });
  const issues: Issue[] = [];
  days.forEach((day, index) => {
    advance(state, of, air[index]!.error);
    if (day.soilC === null) return;
    const { quickC, slowC, middleC } = memories[index]!;
    observe(state, loadings(of, quickC, slowC), day.soilC - middleC, of.spotSdC ** 2 + sensorSdC ** 2);
    if (!choose(day, index)) return;
    issues.push({
      index,
      errors: ahead(
        days,
        index,
        memories,
        state,
        of,
        air.map(({ error }) => error),
      ),
    });
  });
  return issues;
}

function ahead(
  days: readonly RecordDay[],
  index: number,
  memories: readonly Memories[],
  state: SoilState,
  of: SoilModelConstants,
  air: Filtered['air'][number]['error'][],
): LeadError[] {
  const moving = copyState(state);
  const errors: LeadError[] = [];
  for (let lead = 1; lead <= leads[leads.length - 1]! && index + lead < days.length; lead += 1) {
    advance(moving, of, air[index + lead]!);
    const came = days[index + lead]!.soilC;
    if (came === null || !leads.some((one) => one === lead)) continue;
    const { quickC, slowC, middleC } = memories[index + lead]!;
    const { mean, variance } = seen(moving, loadings(of, quickC, slowC));
    const sdC = Math.sqrt(variance + of.spotSdC ** 2 + sensorSdC ** 2);
    errors.push({ lead, errorC: came - middleC - mean, sdC });
  }
  return errors;
}

/** Forecasts from one reading and the air of the `pastDays` before it alone, with the true air ahead. */
export function replayOneReading(
  record: SoilRecord,
  of: SoilModelConstants,
  choose: ChooseDay,
  pastDays: number,
): Issue[] {
  const { days } = record;
  return days.flatMap((day, index) => {
    if (day.soilC === null || index < pastDays || !choose(day, index)) return [];
    const part = days.slice(index - pastDays, index + leads[leads.length - 1]! + 1);
    const estimates = estimateDays(filterReadings(trueAir(record, part, pastDays), of), of);
    const errors = leads.flatMap((lead): LeadError[] => {
      const came = days[index + lead]?.soilC ?? null;
      const estimate = estimates[lead];
      if (came === null || estimate === undefined) return [];
      const sdC = Math.sqrt(estimate.sdC ** 2 + of.spotSdC ** 2 + sensorSdC ** 2);
      return [{ lead, errorC: came - estimate.valueC, sdC }];
    });
    return [{ index, errors }];
  });
}

function trueAir(record: SoilRecord, part: readonly RecordDay[], now: number): SoilTemperatureInput {
  const days = daysOf(part);
  const { at } = days[now]!;
  const readings = [{ at, valueC: part[now]!.soilC ?? 0, sdC: sensorSdC }];
  return { days, readings, at, latitudeDeg: record.latitudeDeg, airErrorFactor: 0 };
}
