import { DateTime } from 'luxon';
import { codedError } from '../errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { atField, dayAtField } from '../units/field-clock.ts';
import { remember } from '../units/remember.ts';

/** A moment in an IANA time zone. Throws ZONE_UNKNOWN. */
function inZone(at: EpochSeconds, zone: string): DateTime {
  const local = atField(at, zone);
  if (!local.isValid) {
    throw codedError('ZONE_UNKNOWN', { expected: 'an IANA time zone, for example Europe/London', came: zone });
  }
  return local;
}

/** One calendar day in a zone: its name and the moments from which and until which it lasts. */
interface LocalDay {
  readonly iso: string;
  readonly from: number;
  readonly until: EpochSeconds;
}

/** Days last asked for, by zone and day of UTC; a local day touches two or three of those. */
const recentDays = new Map<string, LocalDay[]>();
const mostRecent = 512;

function dayAt(at: EpochSeconds, zone: string): LocalDay {
  const key = `${zone} ${Math.floor(at / 86_400)}`;
  const recent = recentDays.get(key) ?? [];
  const known = recent.find(({ from, until }) => at >= from && at < until);
  if (known) return known;
  const start = inZone(at, zone).startOf('day');
  const until = epochSeconds(start.plus({ days: 1 }).startOf('day').toSeconds());
  const day = { iso: start.toFormat('yyyy-MM-dd'), from: start.toSeconds(), until };
  if (recentDays.size >= mostRecent) recentDays.clear();
  recentDays.set(key, [...recent, day]);
  return day;
}

/** The calendar day of a moment in a zone, ISO 8601 (YYYY-MM-DD). */
export function localDate(at: EpochSeconds, zone: string): string {
  return dayAt(at, zone).iso;
}

/** A moment in a zone as day and time to the minute (2026-11-06 09:00), for notes. */
export const localTime = remember((at: EpochSeconds, zone: string): string =>
  inZone(at, zone).toFormat('yyyy-MM-dd HH:mm'),
);

/** The first moment of the next calendar day in a zone; days may last 23, 24 or 25 hours. */
export function nextMidnight(at: EpochSeconds, zone: string): EpochSeconds {
  return dayAt(at, zone).until;
}

/** The first moment after `at` that begins a day of the given month and day (MM-DD) in a zone. */
export const nextYearlyDay = remember((at: EpochSeconds, zone: string, monthDay: string): EpochSeconds => {
  const local = inZone(at, zone);
  const [month, day] = monthDay.split('-').map(Number) as [number, number];
  const thisYear = local.set({ month, day }).startOf('day');
  return epochSeconds((thisYear > local ? thisYear : thisYear.plus({ years: 1 }).startOf('day')).toSeconds());
});

/** True for a day that the calendar has, written YYYY-MM-DD. */
export function isCalendarDay(iso: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  return parts !== null && DateTime.fromSeconds(utcNoon(iso), { zone: 'utc' }).toFormat('yyyy-MM-dd') === iso;
}

/** Noon of a calendar day (YYYY-MM-DD) in a zone. */
export const noonOf = remember((iso: string, zone: string): EpochSeconds => {
  const noon = DateTime.fromSeconds(utcNoon(iso), { zone: 'utc' }).setZone(zone, { keepLocalTime: true });
  if (!noon.isValid) {
    throw codedError('ZONE_UNKNOWN', { expected: 'an IANA time zone, for example Europe/London', came: zone });
  }
  return epochSeconds(noon.toSeconds());
});

function utcNoon(iso: string): number {
  const [year, month, day] = iso.split('-').map(Number) as [number, number, number];
  return Date.UTC(year, month - 1, day, 12) / 1000;
}

/** The moment of a minute of a calendar day on the clocks of a zone. */
export function momentOfDay(iso: string, minute: number, zone: string): EpochSeconds {
  const day = dayAtField(iso, zone);
  return epochSeconds(day.set({ hour: Math.floor(minute / 60), minute: minute % 60 }).toSeconds());
}
