import { isoOfDay } from './days.ts';
import type { RecordDay, SoilRecord } from './types.ts';

const monthOf = ({ day }: RecordDay) => Number(isoOfDay(day).slice(5, 7));
/** Calendar year of a day. */
export const yearOf = ({ day }: RecordDay) => Number(isoOfDay(day).slice(0, 4));
const isAutumn = (day: RecordDay) => monthOf(day) >= 9;

/** True where a record has readings of at least 30 days from September to December. */
export function hasAutumn({ days }: SoilRecord): boolean {
  return days.filter((day) => day.soilC !== null && isAutumn(day)).length >= 30;
}

/** True for days that constants are fitted on: September to December of even years, or January to April where a record has no autumn. */
export function isFitted(record: SoilRecord): (day: RecordDay) => boolean {
  return hasAutumn(record) ? (day) => isAutumn(day) && yearOf(day) % 2 === 0 : (day) => monthOf(day) <= 4;
}

/** True where a record has readings of at least 30 days from September to December of odd years. */
export function hasOddAutumn({ days }: SoilRecord): boolean {
  return days.filter((day) => day.soilC !== null && isAutumn(day) && yearOf(day) % 2 === 1).length >= 30;
}

/**
 * True for days that are scored and that `npm run fit` leaves out: September to December of odd years, or from May on where a
 * record has no autumn. A record with autumns of even years alone is scored on those.
 */
export function isScored(record: SoilRecord): (day: RecordDay) => boolean {
  if (!hasAutumn(record)) return (day) => monthOf(day) >= 5;
  return hasOddAutumn(record) ? (day) => isAutumn(day) && yearOf(day) % 2 === 1 : isAutumn;
}

/** True for days of April to August of even years: the noise of summer is fitted on them; no day of them is scored. */
export function isSummer(day: RecordDay): boolean {
  return monthOf(day) >= 4 && monthOf(day) <= 8 && yearOf(day) % 2 === 0;
}

/** Records with days to fit on: all at 30 cm, every second station at 10 cm, in order of their names. */
export function fittedRecords(records: readonly SoilRecord[], depthM: number): readonly SoilRecord[] {
  const own = records.filter((one) => one.depthM === depthM).toSorted((a, b) => (a.station < b.station ? -1 : 1));
  const chosen = depthM === 0.3 ? own : own.filter((_, index) => index % 2 === 0);
  return chosen.filter((record) => {
    const fitted = isFitted(record);
    return record.days.some((day) => day.soilC !== null && fitted(day));
  });
}
