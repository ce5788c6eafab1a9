import { type EpochSeconds, epochSeconds } from '../core/units/brands.ts';

/** One spell of invented rain: mm in each hour, the first hour ending one hour after `from`. */
interface Spell {
  readonly from: EpochSeconds;
  readonly hourlyMm: readonly number[];
}

/** Epoch seconds of an hour of the invented November of 2026, UTC (which is local time there in winter). */
export function novemberHour(day: number, hour: number, minute = 0): EpochSeconds {
  return epochSeconds(Date.UTC(2026, 10, day, hour, minute) / 1000);
}

/** The rain of the invented November: showers, and one heavy front on the 19th. */
const spells: readonly Spell[] = [
  { from: novemberHour(2, 20), hourlyMm: [0.4, 0.8, 1.2, 1.6, 1.4, 0.9, 0.5, 0.2] },
  { from: novemberHour(6, 3), hourlyMm: [0.3, 0.8, 1.1, 0.7, 0.3] },
  { from: novemberHour(9, 13), hourlyMm: [0.2, 0.6, 0.5] },
  { from: novemberHour(16, 5), hourlyMm: [0.3, 0.5, 0.4, 0.2] },
  { from: novemberHour(19, 2), hourlyMm: [0.6, 1.2, 2.1, 3.4, 5.2, 4.6, 2.8, 1.5, 0.8, 0.3] },
  { from: novemberHour(21, 17), hourlyMm: [0.4, 0.9, 0.6, 0.2] },
  { from: novemberHour(28, 1), hourlyMm: [0.3, 0.7, 1.3, 1.1, 0.6, 0.2] },
];

/** Invented rain of the hour that ends at a stamp, mm; 0 outside the spells. */
export function inventedRainMm(stamp: EpochSeconds): number {
  for (const { from, hourlyMm } of spells) {
    const hour = Math.round((stamp - from) / 3600) - 1;
    const amount = hourlyMm[hour];
    if (amount !== undefined) return amount;
  }
  return 0;
}
