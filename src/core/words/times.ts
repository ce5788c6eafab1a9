import { DateTime } from 'luxon';
import type { EpochSeconds } from '../units/brands.ts';
import { atField } from '../units/field-clock.ts';
import type { Catalogue } from './catalogue.ts';

/** A calendar day (ISO 8601) as "6 November 2026"; what is no such day is given back as it came. */
export function showDay(iso: string, words: Catalogue): string {
  const [year, month, day] = iso.split('-');
  const told = dayInMonth(month, day, words);
  return told === null ? iso : `${told} ${year}`;
}

/** A month and day (MM-DD) as "1 October"; what is no such day is given back as it came. */
export function showMonthDay(monthDay: string, words: Catalogue): string {
  const [month, day] = monthDay.split('-');
  return dayInMonth(month, day, words) ?? monthDay;
}

/** ISO day as "12 November"; what is no such day is given back as it came. */
export function showDayOfYear(iso: string, words: Catalogue): string {
  const [, month, day] = iso.split('-');
  return dayInMonth(month, day, words) ?? iso;
}

function dayInMonth(month: string | undefined, day: string | undefined, { values }: Catalogue): string | null {
  const name = values.months[Number(month) - 1];
  return name === undefined || !day ? null : `${values.dayOfMonth(Number(day))} ${name}`;
}

/** Format of an ISO day. */
export const isoDay = 'yyyy-MM-dd';

/** A moment at the field: "09:10" on the day of `now`, else "09:10 on 6 November 2026". `zone` is an IANA zone. */
export function showTime(at: EpochSeconds, zone: string, now: EpochSeconds | null, words: Catalogue): string {
  const local = atField(at, zone);
  const clock = local.toFormat('HH:mm');
  const isToday = now !== null && local.hasSame(atField(now, zone), 'day');
  return isToday ? clock : words.values.clockOnDay(clock, showDay(local.toFormat(isoDay), words));
}

/** An ISO instant as epoch seconds. */
export function secondsOf(instant: string): EpochSeconds {
  return DateTime.fromISO(instant, { zone: 'utc' }).toSeconds() as EpochSeconds;
}

/** How long ago a moment was: "just now", "25 min ago", "2 h ago", "3 days ago". */
export function showAgo(at: EpochSeconds, now: EpochSeconds, words: Catalogue): string {
  const minutes = Math.floor((now - at) / 60);
  const { ago } = words.values;
  if (minutes < 5) return ago.now;
  if (minutes < 60) return ago.minutes(minutes);
  return minutes < 48 * 60 ? ago.hours(Math.floor(minutes / 60)) : ago.days(Math.floor(minutes / (24 * 60)));
}
