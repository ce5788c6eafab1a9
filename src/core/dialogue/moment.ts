import { DateTime } from 'luxon';
import type { EpochSeconds } from '../units/brands.ts';

export { parseInstant } from '../units/instant.ts';

/** The instant as ISO 8601 in UTC, whole seconds. */
export function instantText(at: EpochSeconds): string {
  return DateTime.fromSeconds(Math.floor(at), { zone: 'utc' }).toISO({ suppressMilliseconds: true }) ?? '';
}
