import type { FactId } from '../facts/registry/index.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { hourSeconds } from '../weather/series.ts';
import { daylightWithin } from './daylight.ts';
import { firstSureness, surestStretch } from './surest-stretch.ts';
import type { HourOutlook, Window } from './types.ts';

type OpenHour = HourOutlook & { readonly state: 'clear' | 'clear-if' };

/** What windows are looked for with. */
export interface WindowPlan {
  readonly now: EpochSeconds;
  /** Least useful length, hours. */
  readonly shortestHours: number;
  /** From which sureness on an hour is likely, 0 to 1. */
  readonly likelyLeast: number;
  /** Where the sun is looked at from, degrees; null where not known. */
  readonly place: { readonly latitude: number; readonly longitude: number } | null;
}

/**
 * Windows: consecutive hours in which nothing blocks, split once, where what was observed has aged. Hours that together last less
 * than `shortestHours` give none. A first hour begins at `now` where that lies within it.
 */
export function windowsOf(hours: readonly HourOutlook[], plan: WindowPlan): Window[] {
  const windows: Window[] = [];
  let index = 0;
  while (index < hours.length) {
    const run = openRun(hours, index);
    const after = hours[index + run.length];
    if (lengthHours(run, plan.now) >= plan.shortestHours) windows.push(...windowsIn(run, plan, after));
    index += Math.max(1, run.length);
  }
  return windows;
}

function openRun(hours: readonly HourOutlook[], from: number): OpenHour[] {
  const run: OpenHour[] = [];
  for (let index = from; index < hours.length; index += 1) {
    const hour = hours[index]!;
    const last = run.at(-1);
    if (!isOpen(hour) || (last && hour.at !== last.at + hourSeconds)) break;
    run.push(hour);
  }
  return run;
}

function isOpen(hour: HourOutlook): hour is OpenHour {
  return hour.state === 'clear' || hour.state === 'clear-if';
}

function lengthHours(run: readonly OpenHour[], now: EpochSeconds): number {
  const [first] = run;
  const last = run.at(-1);
  return first && last ? (endOf(last) - Math.max(now, first.at)) / hourSeconds : 0;
}

function endOf({ at }: HourOutlook): EpochSeconds {
  return epochSeconds(at + hourSeconds);
}

function windowsIn(run: readonly OpenHour[], plan: WindowPlan, after: HourOutlook | undefined): Window[] {
  const agesAt = run.findIndex(({ lookAgain }) => lookAgain.length > 0);
  const sure = agesAt < 0 ? run : run.slice(0, agesAt);
  const assumed = run.slice(sure.length);
  return [
    ...(sure.length === 0 ? [] : [windowOf(sure, plan, assumed[0] ?? after)]),
    ...(assumed.length === 0 ? [] : [windowOf(assumed, plan, after)]),
  ];
}

function windowOf(hours: readonly OpenHour[], plan: WindowPlan, after: HourOutlook | undefined): Window {
  const first = hours[0]!;
  const last = hours.at(-1)!;
  const blocks = hours.flatMap(({ ifLifted }) => ifLifted);
  const span = { from: epochSeconds(Math.max(plan.now, first.at)), until: endOf(last) };
  const daylight = plan.place && daylightWithin(span, plan.place);
  return {
    ...span,
    hours: hours.length,
    state: hours.every(({ state }) => state === 'clear') ? 'clear' : 'clear-if',
    lookAgain: distinct(hours.flatMap(({ lookAgain }) => lookAgain)),
    ifLifted: [...new Map(blocks.map((block) => [block.rule, block])).values()],
    unknown: distinct(hours.flatMap(({ unknown }) => unknown)),
    endedBy: endedBy(last, after),
    firstSureness: firstSureness(hours, plan.shortestHours),
    surest: surestStretch(hours, plan, daylight),
    soilBelow: null,
    daylight,
  };
}

function endedBy(last: HourOutlook, after: HourOutlook | undefined): Window['endedBy'] {
  if (after === undefined || after.at !== endOf(last) || after.state === 'beyond-forecast') return 'forecast-ends';
  return isOpen(after) ? 'look-again' : [...after.hourBlocks, ...after.dayBlocks];
}

function distinct(ids: readonly FactId[]): FactId[] {
  return [...new Set(ids)];
}
