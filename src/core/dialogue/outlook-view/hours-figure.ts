import type { DateTime } from 'luxon';
import type { HourOutlook, Outlook } from '../../outlook/types.ts';
import { epochSeconds } from '../../units/brands.ts';
import { atField } from '../../units/field-clock.ts';
import { showShortDay, showSpan } from '../../words/outlook-times.ts';
import { namesOf, type OutlookWording } from '../../words/outlook-windows.ts';
import { hoursBetween } from './day-ticks.ts';
import type { HourRun, HoursFigure } from './types.ts';

const hourSeconds = 3600;

interface Day {
  readonly start: DateTime;
  readonly hours: HourOutlook[];
}

/** Windows along the hours, a row for each day at the field; null where no hour is told. */
export function hoursFigure({ hours, zone }: Outlook, wording: OutlookWording): HoursFigure | null {
  if (hours.length === 0) return null;
  const { words } = wording;
  const said = words.outlook.figures;
  const days = byDay(hours, zone);
  const count = (state: HourOutlook['state']) => words.outlook.hours(hours.filter((one) => one.state === state).length);
  return {
    title: said.hours.title,
    description: said.hours.description(days.length, count('clear'), count('clear-if')),
    rows: days.map(({ start, hours: ofDay }) => ({
      label: showShortDay(start, words),
      hours: hoursBetween(start.toSeconds(), start.plus({ days: 1 }).toSeconds()),
      runs: runsOf(ofDay, start.toSeconds()),
    })),
    table: {
      columns: [said.day, said.hours.clear, said.hours.clearIf, said.hours.forHours, said.hours.forDays],
      rows: days.map(({ start, hours: ofDay }) => [
        showShortDay(start, words),
        spansOf(ofDay, 'clear', wording),
        spansOf(ofDay, 'clear-if', wording),
        inTheWay(ofDay, 'hourBlocks', wording),
        inTheWay(ofDay, 'dayBlocks', wording),
      ]),
    },
  };
}

function byDay(hours: readonly HourOutlook[], zone: string): Day[] {
  const days = new Map<number, Day>();
  for (const hour of hours) {
    const start = atField(hour.at, zone).startOf('day');
    const day = days.get(start.toSeconds()) ?? { start, hours: [] };
    day.hours.push(hour);
    days.set(start.toSeconds(), day);
  }
  return [...days.values()];
}

function runsOf(hours: readonly HourOutlook[], midnight: number): HourRun[] {
  const runs: HourRun[] = [];
  for (const { at, state } of hours) {
    const from = hoursBetween(midnight, at);
    const last = runs.at(-1);
    if (last?.state === state && last.until === from) runs[runs.length - 1] = { ...last, until: from + 1 };
    else runs.push({ from, until: from + 1, state });
  }
  return runs;
}

/** The hours of a day in a state: "09:00 to 14:00; 16:00 to 18:00". The day stands in the row's first cell. */
function spansOf(hours: readonly HourOutlook[], state: HourOutlook['state'], { words, zone }: OutlookWording): string {
  const spans: [number, number][] = [];
  for (const hour of hours.filter((one) => one.state === state)) {
    const last = spans.at(-1);
    if (last?.[1] === hour.at) last[1] = hour.at + hourSeconds;
    else spans.push([hour.at, hour.at + hourSeconds]);
  }
  const shown = spans.map(([from, until]) => showSpan(epochSeconds(from), epochSeconds(until), zone, words));
  return shown.map((span) => span.slice(span.indexOf(', ') + 2)).join('; ') || words.outlook.figures.hours.none;
}

function inTheWay(hours: readonly HourOutlook[], kind: 'hourBlocks' | 'dayBlocks', wording: OutlookWording): string {
  const blocked = hours.filter(({ state }) => state === 'blocked');
  const blocks = blocked.flatMap((one) => one[kind]);
  if (blocks.length > 0) return namesOf(blocks, wording);
  const { states, figures } = wording.words.outlook;
  return blocked.length === 0 && hours.some(({ state }) => state === 'beyond-forecast')
    ? states['beyond-forecast']
    : figures.hours.none;
}
