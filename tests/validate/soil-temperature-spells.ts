import { isoOfDay } from '../../src/tools/soil-records/days.ts';
import { errorsOf, type LeadError } from '../../src/tools/soil-records/errors.ts';
import type { Issue } from '../../src/tools/soil-records/replay.ts';
import type { SoilRecord } from '../../src/tools/soil-records/types.ts';

/** Limit at which the soil is cold enough, C, and the length of the run that counts as having fallen, days. */
const limitC = 10;
const runDays = 7;

/** Errors where, after the first reading below 10 C of that autumn, the soil came to be warmer than on the day of issue. */
export function rewarmingErrors(record: SoilRecord, issues: readonly Issue[]): LeadError[] {
  const firstBelow = new Map<string, number>();
  record.days.forEach(({ day, soilC }, index) => {
    const iso = isoOfDay(day);
    if (soilC !== null && soilC < limitC && iso.slice(5) >= '09-01' && !firstBelow.has(iso.slice(0, 4))) {
      firstBelow.set(iso.slice(0, 4), index);
    }
  });
  return errorsOf(record, issues).filter(({ index, lead }) => {
    const { day, soilC } = record.days[index]!;
    const first = firstBelow.get(isoOfDay(day).slice(0, 4));
    const came = record.days[index + lead]?.soilC ?? null;
    return first !== undefined && index >= first && soilC !== null && came !== null && came > soilC;
  });
}

/** Days by which the first 7-day run below 10 C came later (+) than forecast 3 to 10 days before, over the autumns of a record. */
export function runDateErrors({ days }: SoilRecord, issues: readonly Issue[]): number[] {
  const autumns = [...new Set(issues.map(({ index }) => isoOfDay(days[index]!.day).slice(0, 4)))];
  return autumns.flatMap((year) => {
    const from = days.findIndex(({ day }) => isoOfDay(day) >= `${year}-09-01`);
    const came = startOfRun(days.slice(from, from + 122).map(({ soilC }) => soilC));
    if (came === null || came < 3) return [];
    return issues.flatMap(({ index, path }) => {
      const before = from + came - index;
      if (before < 3 || before > 10) return [];
      const forecast = startOfRun(path.map(({ valueC }) => valueC)) ?? path.length - runDays + 1;
      return [before - forecast];
    });
  });
}

/** Index of the first day of the first run of 7 days below 10 C; null where there is none. A day not known ends a run. */
export function startOfRun(values: readonly (number | null)[]): number | null {
  const start = values.findIndex((_, index) => {
    const run = values.slice(index, index + runDays);
    return run.length === runDays && run.every((value) => value !== null && value < limitC);
  });
  return start < 0 ? null : start;
}
