import type { DateTime } from 'luxon';
import type { EpochSeconds } from '../units/brands.ts';
import { atField } from '../units/field-clock.ts';
import type { Catalogue } from './catalogue.ts';
import { isoDay, showDayOfYear } from './times.ts';

/** A day at the field as "Thursday 12 November". */
export function showWeekday(local: DateTime, words: Catalogue): string {
  return words.outlook.time.day(
    words.outlook.weekdays[local.weekday - 1] ?? '',
    showDayOfYear(local.toFormat(isoDay), words),
  );
}

/** A day at the field as "Thu 12", for the edge of a figure. */
export function showShortDay(local: DateTime, words: Catalogue): string {
  return `${words.outlook.time.shortDay(words.outlook.weekdays[local.weekday - 1] ?? '')} ${local.day}`;
}

/** A moment at the field: "Thursday 12 November, 09:00". */
export function showDayAndTime(at: EpochSeconds, zone: string, words: Catalogue): string {
  const local = atField(at, zone);
  return words.outlook.time.at(showWeekday(local, words), showClock(local, words));
}

/** A moment up to which something lasts: midnight is the end of the day before, "Friday 13 November, 24:00". */
export function showEnd(at: EpochSeconds, zone: string, words: Catalogue): string {
  const [day, clock] = endParts(atField(at, zone), words);
  return words.outlook.time.at(day, clock);
}

/** From one moment to another at the field: "Thursday 12 November, 09:00 to 14:00". An hour that comes twice is told apart. */
export function showSpan(from: EpochSeconds, until: EpochSeconds, zone: string, words: Catalogue): string {
  const [first, last] = [atField(from, zone), atField(until, zone)];
  const { time } = words.outlook;
  const day = showWeekday(first, words);
  const [untilDay, untilClock] = endParts(last, words);
  if (day === untilDay) return time.sameDay(day, showClock(first, words), untilClock);
  return time.acrossDays(day, showClock(first, words), untilDay, untilClock);
}

/** Day and clock at which something ends. */
function endParts(local: DateTime, words: Catalogue): [string, string] {
  const isMidnight = local.toSeconds() === local.startOf('day').toSeconds();
  if (isMidnight) return [showWeekday(local.minus({ seconds: 1 }), words), words.outlook.time.endOfDay];
  return [showWeekday(local, words), showClock(local, words)];
}

/** The same, without the day where it is that of `start`: "10:00 to 14:00". */
export function showSpanFrom(
  start: EpochSeconds,
  from: EpochSeconds,
  until: EpochSeconds,
  zone: string,
  words: Catalogue,
): string {
  const span = showSpan(from, until, zone, words);
  const day = showWeekday(atField(from, zone), words);
  const isSameDay = atField(start, zone).hasSame(atField(from, zone), 'day');
  return isSameDay ? span.replace(`${day}, `, '') : span;
}

/** Clock times alone, for a span within a day that is named already: "07:15 to 16:20". */
export function showClocks(from: EpochSeconds, until: EpochSeconds, zone: string, words: Catalogue): string {
  const [first, last] = [from, until].map((at) => showClock(atField(at, zone), words));
  return `${first} ${words.outlook.figures.to} ${last}`;
}

function showClock(local: DateTime, words: Catalogue): string {
  const clock = local.toFormat('HH:mm');
  return local.minus({ hours: 1 }).toFormat('HH:mm') === clock ? words.outlook.time.secondTime(clock) : clock;
}
