import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { vapourPressureOfAir } from '../../../../src/core/science/air/vapour-pressure.ts';
import {
  referenceEvapotranspirationOfHour,
  type WeatherHour,
} from '../../../../src/core/science/evapotranspiration/hour.ts';
import {
  extraterrestrialRadiationOfHour,
  seasonalCorrection,
  solarHourAngle,
} from '../../../../src/core/science/evapotranspiration/hour-sky.ts';
import { extraterrestrialRadiation } from '../../../../src/core/science/evapotranspiration/sky.ts';
import { metresPerSecond } from '../../../../src/core/units/brands.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';
import { afternoon } from './examples.ts';

/** The same place, 2 to 3 h at night. */
const night: WeatherHour = {
  ...afternoon,
  middleUtcH: 3.5,
  temperatureC: 28,
  vapourPressureKPa: vapourPressureOfAir(28, 90),
  windAt2m: metresPerSecond(1.9),
  solarRadiation: 0,
};

const memory = (where: string) => `${fao56(where)}; intermediate value from memory`;
const rows: PublishedCall[] = [
  ['ex19-Sc', 0.1889, 0.0005, memory('eq. 32, Example 19'), () => seasonalCorrection(274)],
  ['ex19-omega', 0.682, 0.001, memory('eq. 31, Example 19'), () => solarHourAngle(afternoon)],
  ['ex19-Ra', 3.543, 0.005, memory('eq. 28, Example 19'), () => extraterrestrialRadiationOfHour(afternoon)],
  [
    'ex19-ETo-day',
    0.63,
    0.005,
    fao56('Example 19, 14 to 15 h'),
    () => referenceEvapotranspirationOfHour(afternoon, 0.5).mm,
  ],
  [
    'ex19-ETo-night',
    0,
    0.006,
    fao56('Example 19, 2 to 3 h, sky share 0.8'),
    () => referenceEvapotranspirationOfHour(night, 0.8).mm,
  ],
];

describe('reference evapotranspiration of an hour', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('the radiation of 24 hours is that of the day (FAO-56 eq. 21 against eq. 28)', () => {
    const place = fc.record({
      latitude: between(-80, 80),
      longitude: between(-180, 180),
      dayOfYear: fc.integer({ min: 1, max: 366 }),
    });
    fc.assert(
      fc.property(place, (where) => {
        const hours = Array.from({ length: 24 }, (_, hour) =>
          extraterrestrialRadiationOfHour({ ...where, middleUtcH: hour + 0.5 }),
        );
        const sum = hours.reduce((total, hour) => total + hour, 0);
        expectWithin(sum, extraterrestrialRadiation(where.latitude, where.dayOfYear), 0.03 + 0.02 * sum);
      }),
    );
  });

  test('a sun that stands high tells the cloud of the night, a low one or none does not', () => {
    expect(referenceEvapotranspirationOfHour(afternoon, 0.5).skyShare).toBeCloseTo(0.92, 2);
    expect(referenceEvapotranspirationOfHour(night, 0.3).skyShare).toBe(0.3);
    expect(referenceEvapotranspirationOfHour({ ...afternoon, middleUtcH: 18.8 }, 0.3).skyShare).toBe(0.3);
  });

  test('air wetter than saturated counts as saturated; what cannot be is refused', () => {
    const wet = referenceEvapotranspirationOfHour({ ...night, vapourPressureKPa: 5 }, 0.8).mm;
    expect(wet).toBe(
      referenceEvapotranspirationOfHour({ ...night, vapourPressureKPa: vapourPressureOfAir(28, 100) }, 0.8).mm,
    );
    expect(() => referenceEvapotranspirationOfHour({ ...night, temperatureC: 99 }, 0.8)).toThrow(outOfRange);
    expect(() => referenceEvapotranspirationOfHour({ ...night, middleUtcH: Number.NaN }, 0.8)).toThrow(outOfRange);
    expect(() => referenceEvapotranspirationOfHour(night, 1.5)).toThrow(outOfRange);
  });
});
