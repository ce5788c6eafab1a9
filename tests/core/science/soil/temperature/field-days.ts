import type {
  SoilAirDay,
  SoilReading,
  SoilTemperatureInput,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { epochSeconds } from '../../../../../src/core/units/brands.ts';

/** Noon of 1 October 2026. */
export const firstNoon = Date.UTC(2026, 9, 1, 12) / 1000;

/** A moment some days (may be a fraction) after the first noon. */
export const dayAt = (days: number) => epochSeconds(firstNoon + days * 86_400);

/** Days with the air given, in order from 1 October 2026. */
export function daysWith(air: readonly (number | null)[], layers: readonly (number | null)[] = []): SoilAirDay[] {
  return air.map((airC, index) => {
    const at = dayAt(index);
    const iso = new Date(at * 1000).toISOString().slice(0, 10);
    return { at, iso, airC, layerC: layers[index] ?? null };
  });
}

/** A reading some days after the first noon. */
export function reading(day: number, valueC: number, sdC = 0.1): SoilReading {
  return { at: dayAt(day), valueC, sdC };
}

/** Asked on day 20 of 40 with steady air of 9 C and one reading of that day, but for what is given. */
export function asked(given: Partial<SoilTemperatureInput> = {}): SoilTemperatureInput {
  const days = daysWith(Array.from({ length: 40 }, () => 9));
  return { days, readings: [reading(20, 10.5)], at: dayAt(20), latitudeDeg: 52, ...given };
}
