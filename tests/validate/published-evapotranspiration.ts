import { vapourPressureOfAir } from '../../src/core/science/air/vapour-pressure.ts';
import { referenceEvapotranspirationOfDay } from '../../src/core/science/evapotranspiration/day.ts';
import { referenceEvapotranspirationOfHour } from '../../src/core/science/evapotranspiration/hour.ts';
import { metresPerSecond } from '../../src/core/units/brands.ts';

/** Worked examples of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith 1998): name, printed value, tolerance. */
export const publishedDays: readonly (readonly [
  name: string,
  expected: number,
  tolerance: number,
  value: () => number,
])[] = [
  [
    'FAO-56 Example 18 (Uccle, 6 July): 3.9 mm/day',
    3.9,
    0.05,
    () =>
      referenceEvapotranspirationOfDay({
        latitude: 50.8,
        elevationM: 100,
        dayOfYear: 187,
        highestC: 21.5,
        lowestC: 12.3,
        humidity: { highestPercent: 84, lowestPercent: 63 },
        wind: metresPerSecond(10 / 3.6),
        windHeightM: 10,
        sun: { sunshineH: 9.25 },
      }),
  ],
  [
    "FAO-56 Example 19 (N'Diaye, 1 October, 14 to 15 h): 0.63 mm/h",
    0.63,
    0.005,
    () =>
      referenceEvapotranspirationOfHour(
        {
          latitude: 16.217,
          longitude: -16.25,
          dayOfYear: 274,
          middleUtcH: 15.5,
          elevationM: 8,
          temperatureC: 38,
          vapourPressureKPa: vapourPressureOfAir(38, 52),
          windAt2m: metresPerSecond(3.3),
          solarRadiation: 2.45,
        },
        0.8,
      ).mm,
  ],
];
