import type { EpochSeconds } from '../../../units/brands.ts';
import type { SoilTemperatureDay, SoilTemperatureInput } from './types.ts';

/** Soil temperature at 30 cm on every day from that of `input.at` on, with the chance of being below `limitC`. */
export function soilTemperaturePath(input: SoilTemperatureInput, limitC: number): readonly SoilTemperatureDay[] {
  return input.days.filter(({ at }) => at > input.at - 43_200).map((day) => persisted(input, day, limitC));
}

/** Soil temperature at 30 cm at one moment within the days given; null outside them. */
export function soilTemperatureAt(
  input: SoilTemperatureInput,
  at: EpochSeconds,
  limitC: number,
): SoilTemperatureDay | null {
  const path = soilTemperaturePath({ ...input, at }, limitC);
  return path[0] ?? null;
}

function persisted(
  { at: now, readings }: SoilTemperatureInput,
  day: { at: EpochSeconds; iso: string; airC: number | null },
  limitC: number,
): SoilTemperatureDay {
  const last = readings.at(-1)?.valueC ?? 8;
  const sd = 1 + Math.max(0, day.at - now) / 86_400 / 4;
  const chanceBelow = last < limitC ? 0.7 : 0.3;
  return {
    at: day.at,
    iso: day.iso,
    valueC: last,
    sdC: sd,
    low80C: last - 1.28 * sd,
    high80C: last + 1.28 * sd,
    low95C: last - 1.96 * sd,
    high95C: last + 1.96 * sd,
    chanceBelow,
    beyondForecast: day.airC === null,
  };
}
