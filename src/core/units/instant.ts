import { DateTime } from 'luxon';
import { codedError } from '../errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from './brands.ts';

/** An ISO 8601 instant with its offset, as epoch seconds. Throws MOMENT_UNREADABLE for anything else, local times included. */
export function parseInstant(text: string): EpochSeconds {
  const written = /^\d{4}-\d{2}-\d{2}T\d{2}(:?\d{2}){0,2}([.,]\d+)?(Z|[+-](0\d|1[0-4])(:?[0-5]\d)?)$/.test(text);
  const parsed = DateTime.fromISO(text);
  if (!written || !parsed.isValid) {
    throw codedError('MOMENT_UNREADABLE', { expected: 'a date and time with Z or an offset', came: text });
  }
  return epochSeconds(parsed.toSeconds());
}
