import { codedError, type LoamwardError } from '../../core/errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import { hourSeconds } from '../../core/weather/series.ts';

const localForm = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/;

/**
 * The stamps of a JSON reply as epoch seconds UTC. ISO stamps are local and carry one fixed offset for the whole reply, past
 * clock changes too, so it is simply taken off; unix stamps are UTC already. Throws FORECAST_GARBLED unless an hour apart.
 */
export function timesFromJson(stamps: readonly (string | number)[], offsetSeconds: number | undefined): EpochSeconds[] {
  const times = stamps.map((stamp, index) => stampSeconds(stamp, index, offsetSeconds));
  times.forEach((time, index) => {
    const before = times[index - 1];
    if (before === undefined || time - before === hourSeconds) return;
    throw wrong(index, 'stamps an hour apart', `${stamps[index - 1]} then ${stamps[index]}`);
  });
  if (times.length > 0) return times;
  throw codedError('FORECAST_INCOMPLETE', { expected: 'hourly stamps', came: 'none', pointer: '/hourly/time' });
}

/** Epoch seconds of an ISO text with Z or an offset, whole seconds; null for any other text. */
export function isoInstant(text: string): EpochSeconds | null {
  const parts = /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})$/.exec(text);
  if (!parts?.[1] || localSeconds(parts[1]) === null) return null;
  const milliseconds = Date.parse(text);
  return Number.isFinite(milliseconds) ? epochSeconds(Math.floor(milliseconds / 1000)) : null;
}

function stampSeconds(stamp: string | number, index: number, offsetSeconds: number | undefined): EpochSeconds {
  if (typeof stamp === 'number') {
    if (Number.isSafeInteger(stamp)) return epochSeconds(stamp);
    throw wrong(index, 'whole unix seconds', String(stamp));
  }
  const local = localSeconds(stamp);
  if (local === null) throw wrong(index, 'a stamp such as 2026-11-06T09:00', stamp.slice(0, 40));
  if (offsetSeconds !== undefined) return epochSeconds(local - offsetSeconds);
  throw codedError('FORECAST_FILE_UNREADABLE', {
    expected: 'utc_offset_seconds beside local stamps',
    came: 'none',
    pointer: '/utc_offset_seconds',
  });
}

/** A local stamp counted as if it were UTC; null where the calendar has no such moment. */
function localSeconds(text: string): number | null {
  const parts = localForm.exec(text);
  if (!parts) return null;
  const [year, month, day, hour, minute] = parts.slice(1).map(Number) as [number, number, number, number, number];
  const moment = new Date(Date.UTC(year, month - 1, day, hour, minute));
  return moment.toISOString().startsWith(text) ? moment.getTime() / 1000 : null;
}

function wrong(index: number, expected: string, came: string): LoamwardError {
  return codedError('FORECAST_GARBLED', { expected, came, pointer: `/hourly/time/${index}` });
}
