import { DateTime } from 'luxon';
import type { EpochSeconds } from '../units/brands.ts';

/** A moment as ISO 8601 in UTC to the minute (2026-11-06T09:00Z), for messages. */
export function isoMinute(at: EpochSeconds): string {
  const moment = DateTime.fromSeconds(at, { zone: 'utc' });
  return moment.isValid ? moment.toFormat("yyyy-MM-dd'T'HH:mm'Z'") : 'no time';
}
