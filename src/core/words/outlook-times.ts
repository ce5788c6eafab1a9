import { DateTime } from 'luxon';
import type { EpochSeconds } from '../units/brands.ts';
import type { Catalogue } from './catalogue.ts';

/** A day at the field as "Thursday 12 November". */
export function showWeekday(local: DateTime, words: Catalogue): string {
  const month = words.values.months[local.month - 1] ?? '';
  return words.outlook.time.day(words.outlook.weekdays[local.weekday - 1] ?? '', `${local.day} ${month}`);
}

/** A day at the field as "Thu 12", for the edge of a figure. */
export function showShortDay(local: DateTime, words: Catalogue): string {
  return `${(words.outlook.weekdays[local.weekday - 1] ?? '').slice(0, 3)} ${local.day}`;
}

/** A moment at the field: "Thursday 12 November, 09:00". */
export function showDayAndTime(at: EpochSeconds, zone: string, words: Catalogue): string {
  const local = DateTime.fromSeconds(at, { zone });
  return words.outlook.time.at(showWeekday(local, words), showClock(local, words));
}

/** ISO day as "12 November"; what is no such day is given back as it came. */
export function showDayOfYear(iso: string, words: Catalogue): string {
  const [, month = '', day = ''] = iso.split('-');
  const name = words.values.months[Number(month) - 1];
  return name === undefined || day === '' ? iso : `${Number(day)} ${name}`;
}

/** From one moment to another at the field: "Thursday 12 November, 09:00 to 14:00". An hour that comes twice is told apart. */
export function showSpan(from: EpochSeconds, until: EpochSeconds, zone: string, words: Catalogue): string {
  const [first, last] = [DateTime.fromSeconds(from, { zone }), DateTime.fromSeconds(until, { zone })];
  const { time } = words.outlook;
  const endsDay = last.toSeconds() === first.plus({ days: 1 }).startOf('day').toSeconds();
  if (endsDay) return time.sameDay(showWeekday(first, words), showClock(first, words), time.endOfDay);
  if (first.hasSame(last, 'day')) {
    return time.sameDay(showWeekday(first, words), showClock(first, words), showClock(last, words));
  }
  const days = [showWeekday(first, words), showWeekday(last, words)] as const;
  return time.acrossDays(days[0], showClock(first, words), days[1], showClock(last, words));
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
  const day = showWeekday(DateTime.fromSeconds(from, { zone }), words);
  const isSameDay = DateTime.fromSeconds(start, { zone }).hasSame(DateTime.fromSeconds(from, { zone }), 'day');
  return isSameDay ? span.replace(`${day}, `, '') : span;
}

/** Clock times alone, for a span within a day that is named already: "07:15 to 16:20". */
export function showClocks(from: EpochSeconds, until: EpochSeconds, zone: string, words: Catalogue): string {
  const [first, last] = [from, until].map((at) => showClock(DateTime.fromSeconds(at, { zone }), words));
  return `${first} ${words.outlook.figures.to} ${last}`;
}

function showClock(local: DateTime, words: Catalogue): string {
  const clock = local.toFormat('HH:mm');
  return local.minus({ hours: 1 }).toFormat('HH:mm') === clock ? words.outlook.time.secondTime(clock) : clock;
}
