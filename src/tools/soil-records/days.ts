import type { RecordDay } from './types.ts';

/** Least readings in a row that are the same, from which on they count as a sensor that stood still. */
const stuckRun = 4;

/** Days since 1970-01-01 of a calendar day. */
export function dayNumber(year: number, month: number, day: number): number {
  return Math.round(Date.UTC(year, month - 1, day) / 86_400_000);
}

/** Calendar day (YYYY-MM-DD) of a day number. */
export function isoOfDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}

/** A number as written, null where it is blank, not a number or one of the codes for missing. */
export function numberOrNull(text: string | undefined, missing: readonly number[] = []): number | null {
  const value = Number(text?.trim() || Number.NaN);
  return Number.isFinite(value) && !missing.includes(value) ? value : null;
}

/** Mean of both, null where one is missing. */
export function meanOf(low: number | null, high: number | null): number | null {
  return low === null || high === null ? null : (low + high) / 2;
}

/** Days in order without a hole between the first and the last; readings that repeat 4 times or more are taken out. */
export function tidyDays(found: readonly RecordDay[]): RecordDay[] {
  const byDay = new Map(found.map((one) => [one.day, one]));
  const numbers = [...byDay.keys()];
  const first = numbers.reduce((least, day) => Math.min(least, day), Number.POSITIVE_INFINITY);
  const last = numbers.reduce((most, day) => Math.max(most, day), Number.NEGATIVE_INFINITY);
  if (!(last >= first)) return [];
  const days = Array.from(
    { length: last - first + 1 },
    (_, index) => byDay.get(first + index) ?? { day: first + index, airC: null, soilC: null },
  );
  return withoutStuck(days);
}

function withoutStuck(days: readonly RecordDay[]): RecordDay[] {
  const kept = [...days];
  for (let start = 0; start < days.length; ) {
    let end = start + 1;
    while (end < days.length && days[end]?.soilC === days[start]?.soilC) end += 1;
    if (end - start >= stuckRun) {
      for (let index = start; index < end; index += 1) kept[index] = { ...kept[index]!, soilC: null };
    }
    start = end;
  }
  return kept;
}
