import { type EpochSeconds, epochSeconds } from '../../../src/core/units/brands.ts';

/** An instant written in UTC, for example `2026-11-06T09:00Z`. */
export function utc(iso: string): EpochSeconds {
  return epochSeconds(Date.parse(iso) / 1000);
}

/** A moment some hours away from another. */
export function hoursAfter(at: EpochSeconds, hours: number): EpochSeconds {
  return epochSeconds(at + hours * 3600);
}
