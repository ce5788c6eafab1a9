import type { EpochSeconds } from '../../units/brands.ts';
import { atField } from '../../units/field-clock.ts';
import type { Catalogue } from '../../words/catalogue.ts';
import { showShortDay } from '../../words/outlook-times.ts';
import type { DayTick } from './types.ts';

const hourSeconds = 3600;

/** Days that begin within `hours` hours from `from`, by the clock of the zone; the first is that of `from` itself. */
export function dayTicks(from: EpochSeconds, hours: number, zone: string, words: Catalogue): DayTick[] {
  const ticks: DayTick[] = [];
  const start = atField(from, zone);
  for (let day = start.startOf('day').plus({ days: 1 }); ; day = day.plus({ days: 1 })) {
    const hour = hoursBetween(from, day.toSeconds());
    if (hour >= hours) return ticks;
    ticks.push({ hour, label: showShortDay(day, words) });
  }
}

/** Hours from one moment to another, seconds UTC, to 0.01. */
export function hoursBetween(from: number, to: number): number {
  return Math.round(((to - from) / hourSeconds) * 100) / 100;
}

/** A number kept to 0.1: finer than a figure shows. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
