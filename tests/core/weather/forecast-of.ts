import { epochSeconds } from '../../../src/core/units/brands.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';

/** Epoch seconds of an ISO text. */
export const at = (iso: string) => epochSeconds(Date.parse(iso) / 1000);

/** A forecast from a start and columns, for tests of reading. */
export function forecastOf(start: string, hours: number, values: Forecast['values'], fetched = start): Forecast {
  return {
    place: {
      askedLatitude: 53.4,
      askedLongitude: -1.9,
      latitude: 53.4,
      longitude: -1.9,
      elevationM: 180,
      distanceKm: 0,
    },
    fetchedAt: at(fetched),
    attribution: 'invented',
    invented: true,
    times: Array.from({ length: hours }, (_, index) => epochSeconds(at(start) + index * 3600)),
    values,
  };
}
