import { vapourPressureOfAir } from '../../../../src/core/science/air/vapour-pressure.ts';
import type { StationDay } from '../../../../src/core/science/evapotranspiration/day.ts';
import type { WeatherHour } from '../../../../src/core/science/evapotranspiration/hour.ts';
import { metresPerSecond } from '../../../../src/core/units/brands.ts';

/** Uccle, 6 July: FAO-56 Example 18. */
export const uccle: StationDay = {
  latitude: 50.8,
  elevationM: 100,
  dayOfYear: 187,
  highestC: 21.5,
  lowestC: 12.3,
  humidity: { highestPercent: 84, lowestPercent: 63 },
  wind: metresPerSecond(10 / 3.6),
  windHeightM: 10,
  sun: { sunshineH: 9.25 },
};

/** N'Diaye, 1 October, 14 to 15 h local time, one hour behind UTC: FAO-56 Example 19. */
export const afternoon: WeatherHour = {
  latitude: 16.217,
  longitude: -16.25,
  dayOfYear: 274,
  middleUtcH: 15.5,
  elevationM: 8,
  temperatureC: 38,
  vapourPressureKPa: vapourPressureOfAir(38, 52),
  windAt2m: metresPerSecond(3.3),
  solarRadiation: 2.45,
};
