import { epochSeconds } from '../units/brands.ts';
import { hourSeconds } from '../weather/series.ts';
import type { HourOutlook, Span, SureStretch } from './types.ts';
import type { WindowPlan } from './windows.ts';

/** Least sureness of the first `count` of some hours; null where none of them tells any. */
export function firstSureness(hours: readonly HourOutlook[], count: number): number | null {
  return leastOf(hours.slice(0, Math.max(1, Math.ceil(count))));
}

/**
 * The longest stretch of at least `shortestHours` whose every hour is at least `likelyLeast` sure, the surer of equally long ones;
 * without one the stretch of just that length (or all hours, where they are fewer) whose least sure hour is the surest. By daylight
 * where that lasts long enough on any day; nobody looks for drift in the dark. Null where no hour tells how sure it is.
 */
export function surestStretch(
  hours: readonly HourOutlook[],
  { now, shortestHours, likelyLeast }: Pick<WindowPlan, 'now' | 'shortestHours' | 'likelyLeast'>,
  daylight: readonly Span[] | null,
): SureStretch | null {
  const useful = Math.min(hours.length, Math.max(1, Math.ceil(shortestHours)));
  const isUseful = (run: readonly HourOutlook[]) => run.length >= useful;
  const lit = runsOf(hours, ({ at }) => isLit(at, daylight)).filter(isUseful);
  const looked = lit.length > 0 ? lit : [hours];
  const isLikely = ({ sureness }: HourOutlook) => sureness !== null && sureness >= likelyLeast;
  const runs = looked.flatMap((run) => runsOf(run, isLikely)).filter(isUseful);
  const candidates =
    runs.length > 0
      ? runs
      : looked.flatMap((run) => run.slice(useful - 1).map((_, from) => run.slice(from, from + useful)));
  const stretches = candidates.flatMap((part) => {
    const sureness = leastOf(part);
    const [first, last] = [part[0], part.at(-1)];
    if (sureness === null || first === undefined || last === undefined) return [];
    const span = { from: epochSeconds(Math.max(now, first.at)), until: epochSeconds(last.at + hourSeconds) };
    return [{ count: part.length, stretch: { ...span, sureness } }];
  });
  const [best] = stretches.toSorted((a, b) => b.count - a.count || b.stretch.sureness - a.stretch.sureness);
  return best?.stretch ?? null;
}

function isLit(at: number, daylight: readonly Span[] | null): boolean {
  return daylight === null || daylight.some(({ from, until }) => from <= at && at + hourSeconds <= until);
}

function runsOf(hours: readonly HourOutlook[], fits: (hour: HourOutlook) => boolean): HourOutlook[][] {
  const runs: HourOutlook[][] = [];
  let run: HourOutlook[] | null = null;
  for (const hour of hours) {
    if (!fits(hour)) run = null;
    else if (run !== null) run.push(hour);
    else {
      run = [hour];
      runs.push(run);
    }
  }
  return runs;
}

function leastOf(hours: readonly HourOutlook[]): number | null {
  const chances = hours.map(({ sureness }) => sureness).filter((chance) => chance !== null);
  return chances.length === 0 ? null : Math.min(...chances);
}
