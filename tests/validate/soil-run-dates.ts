import { startOfRun } from './soil-temperature-spells.ts';

/** A day of a record and its temperatures by depth in cm, C. */
export interface DepthDay {
  readonly iso: string;
  readonly byDepth: Readonly<Record<number, number | null>>;
}

/** Depths whose dates are told, cm: 30 drawn between the other two. */
const depths = [20, 30, 50] as const;

/** The date of the first week below 10 C in one autumn: by the definition that forecasts are scored with, and counted anew. */
export interface RunDates {
  readonly year: string;
  /** By depth in cm; null where no such week came. */
  readonly scored: Readonly<Record<number, string | null>>;
  readonly counted: Readonly<Record<number, string | null>>;
}

/**
 * Dates of the first 7-day run below 10 C in each autumn whose days are known from 1 September on. The second count goes the
 * other way about: the first day by which the warmest of the last seven was below 10 C, less six days.
 */
export function runDates(days: readonly DepthDay[]): RunDates[] {
  const years = [...new Set(days.map(({ iso }) => iso.slice(0, 4)))];
  return years.flatMap((year) => {
    const autumn = days.filter(({ iso }) => iso >= `${year}-09-01` && iso <= `${year}-12-31`);
    if (autumn[0]?.iso !== `${year}-09-01` || autumn.length !== 122) return [];
    const by = (start: (values: readonly (number | null)[]) => number | null) =>
      Object.fromEntries(
        depths.map((depth) => [
          depth,
          autumn[start(autumn.map(({ byDepth }) => byDepth[depth] ?? null)) ?? -1]?.iso ?? null,
        ]),
      );
    return [{ year, scored: by(startOfRun), counted: by(countedStart) }];
  });
}

/** The dates in words, and whether both counts agree and 30 cm falls no earlier than 20 and no later than 50 cm. */
export function runDatesLine(name: string, { year, scored }: RunDates): string {
  const text = depths.map((depth) => `${depth} cm ${scored[depth] ?? 'none'}`).join(', ');
  return `${name}, ${year}: first 7-day run below 10 C begins at ${text} (30 cm drawn between 20 and 50)`;
}

/** Why the dates of one autumn do not hold together; null where they do. */
export function runDatesProblem({ scored, counted }: RunDates): string | null {
  const other = depths.find((depth) => scored[depth] !== counted[depth]);
  if (other !== undefined) return `${other} cm: ${scored[other]} scored, ${counted[other]} counted`;
  const [at20, at30, at50] = depths.map((depth) => scored[depth] ?? '9999');
  return at20! <= at30! && at30! <= at50! ? null : `30 cm at ${at30}, not between ${at20} and ${at50}`;
}

function countedStart(values: readonly (number | null)[]): number | null {
  for (let end = 6; end < values.length; end += 1) {
    const warmest = Math.max(...values.slice(end - 6, end + 1).map((value) => value ?? Number.POSITIVE_INFINITY));
    if (warmest < 10) return end - 6;
  }
  return null;
}
