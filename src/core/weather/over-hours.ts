import { sunTimes } from '../science/sun/times.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Banded } from './banded.ts';
import { hourSeconds } from './series.ts';

const daySeconds = 24 * hourSeconds;
/** A night that ends sooner than this, h, is nearly over: the one after it counts too. */
const leastNightHours = 6;

/** Moments an hour apart over so many hours from `at`, the last one hour before the end. */
export function hoursFrom(at: EpochSeconds, hours: number): EpochSeconds[] {
  return Array.from({ length: Math.max(1, Math.ceil(hours)) }, (_, index) => epochSeconds(at + index * hourSeconds));
}

/**
 * Moments an hour apart between sunset and sunrise, from `at` to the first sunrise that is at least six hours off. Null where the
 * sun does not rise and set.
 */
export function nightHours(
  place: { readonly latitude: number; readonly longitude: number },
  at: EpochSeconds,
): EpochSeconds[] | null {
  const sunrises = [0, 1, 2].map((days) => sunTimes(place, epochSeconds(at + days * daySeconds)).sunrise);
  const end = sunrises.find((sunrise) => sunrise !== null && sunrise >= at + leastNightHours * hourSeconds) ?? null;
  if (end === null) return null;
  const all = hoursFrom(at, (end - at) / hourSeconds);
  const dark = all.filter((moment) => {
    const { sunrise, sunset } = sunTimes(place, moment);
    return sunrise !== null && sunset !== null && (moment < sunrise || moment >= sunset);
  });
  return dark.length === 0 ? null : dark;
}

/** One value of several hours with its band; rain's sum is over the hours given. */
export const takeOver: Readonly<
  Record<'value' | 'min' | 'max' | 'sum' | 'mean', (hours: readonly Banded[]) => Banded>
> = {
  value: (hours) => each(hours, (values) => values[0] ?? Number.NaN),
  min: (hours) => each(hours, (values) => Math.min(...values)),
  max: (hours) => each(hours, (values) => Math.max(...values)),
  sum: (hours) => each(hours, sumOf),
  mean: (hours) => each(hours, (values) => sumOf(values) / values.length),
};

function each(hours: readonly Banded[], of: (values: readonly number[]) => number): Banded {
  return {
    value: of(hours.map(({ value }) => value)),
    low: of(hours.map(({ low }) => low)),
    high: of(hours.map(({ high }) => high)),
  };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
