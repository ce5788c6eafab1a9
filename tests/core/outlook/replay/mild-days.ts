import type { WeatherDay } from '../../../../src/core/outlook/replay/types.ts';

/** Where the invented days were recorded. */
export const place = { latitude: 53, longitude: -1, elevationM: 80 };

/** Invented days in a row from 1 August 2026, mild and dry unless said otherwise by their number. */
export function daysOf(count: number, more: (at: number) => Partial<WeatherDay> = () => ({})): WeatherDay[] {
  return Array.from({ length: count }, (_, at) => ({
    iso: new Date(Date.UTC(2026, 7, 1 + at)).toISOString().slice(0, 10),
    airMeanC: 12,
    airMinC: 8,
    airMaxC: 16,
    rainMm: 0,
    windKmh: 10,
    gustKmh: 20,
    referenceMm: 1,
    soil30cmC: 13,
    ...more(at),
  }));
}
