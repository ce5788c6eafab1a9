import { describe, expect, test } from 'vitest';
import { codedError } from '../../../src/core/errors/coded-error.ts';
import { saturationVapourPressure, vapourPressureOfAir } from '../../../src/core/science/air/vapour-pressure.ts';
import { referenceEvapotranspirationOfHour } from '../../../src/core/science/evapotranspiration/hour.ts';
import { windAt2m } from '../../../src/core/science/wind/over-grass.ts';
import { metresPerSecond } from '../../../src/core/units/brands.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import {
  computeEvapotranspiration,
  referenceEvapotranspirationHours,
} from '../../../src/core/weather/reference-evapotranspiration.ts';
import { forecastOf } from './forecast-of.ts';

const values: Forecast['values'] = {
  temperature2mC: [8, 10, 13],
  dewPoint2mC: [4, 5, 5],
  relativeHumidity2mPercent: [70, 80, 60],
  windSpeed10mKmh: [18, 36, 18],
  shortwaveRadiationWPerM2: [200, 300, 250],
};
/** Three hours to 11:00 UTC of 6 November. */
const three = (more: Forecast['values'] = {}) => forecastOf('2026-11-06T09:00Z', 3, { ...values, ...more });
const hour = {
  latitude: 53.4,
  longitude: -1.9,
  dayOfYear: 310,
  elevationM: 180,
  windAt2m: metresPerSecond(windAt2m(7.5, 10)),
  middleUtcH: 9.5,
  temperatureC: 9,
  vapourPressureKPa: saturationVapourPressure(4.5),
  solarRadiation: 1.08,
};
const first = { ...hour, middleUtcH: 8.5, temperatureC: 8, solarRadiation: 0.72 };
/** What the hour should give, with the sky that the hour before left. */
function mm(more: Partial<typeof hour> = {}, before: Partial<typeof hour> = {}): number {
  const firstHour = { ...first, vapourPressureKPa: saturationVapourPressure(4), ...before };
  const { skyShare } = referenceEvapotranspirationOfHour(firstHour, 0.5);
  return referenceEvapotranspirationOfHour({ ...hour, ...more }, skyShare).mm;
}
const found = (more: Forecast['values'], index = 1) => computeEvapotranspiration(three(more))[index];

describe('reference evapotranspiration of one hour of a forecast', () => {
  test('is worked out from the means of what is known at both its ends, and the radiation of the hour', () => {
    expect(found({})).toEqual({ mm: expect.closeTo(mm(), 12), from: 'hourly' });
  });

  test.each<[string, Forecast['values'], Partial<typeof hour>]>([
    ['temperature at its beginning missing', { temperature2mC: [null, 10, 13] }, { temperatureC: 10 }],
    ['temperature at its end missing', { temperature2mC: [8, null, 13] }, { temperatureC: 8 }],
    ['wind missing', { windSpeed10mKmh: [null, null, 18] }, { windAt2m: metresPerSecond(2) }],
    ['dew point missing', { dewPoint2mC: [null, null, 5] }, { vapourPressureKPa: vapourPressureOfAir(9, 75) }],
  ])('with %s goes on with what there is', (_, missing, more) => {
    expect(found(missing)?.mm).toBeCloseTo(mm(more), 12);
  });

  test('of the first stamp goes by that stamp alone', () => {
    const { mm: expected } = referenceEvapotranspirationOfHour(
      { ...first, vapourPressureKPa: saturationVapourPressure(4), windAt2m: metresPerSecond(windAt2m(5, 10)) },
      0.5,
    );
    expect(found({}, 0)?.mm).toBeCloseTo(expected, 12);
  });

  test('is not told without temperature, nor without any humidity where no day tells its lowest', () => {
    expect(found({ temperature2mC: [null, null, 13] })).toBeNull();
    expect(found({ temperature2mC: [null, null, 13], dewPoint2mC: [null, null, 5] })).toBeNull();
    expect(found({ dewPoint2mC: [null, null, 5], relativeHumidity2mPercent: [null, null, 60] })).toBeNull();
    expect(found({ shortwaveRadiationWPerM2: [200, null, 250] })).toBeNull();
  });

  test('has its dew point from the lowest temperature of the day where nothing else tells it', () => {
    const air = Array.from({ length: 24 }, (_, index) => (index === 3 ? 2 : 9));
    const long = forecastOf('2026-11-06T00:00Z', 24, {
      temperature2mC: air,
      windSpeed10mKmh: air.map(() => 27),
      shortwaveRadiationWPerM2: air.map(() => 0),
    });
    const { mm: expected } = referenceEvapotranspirationOfHour(
      { ...hour, middleUtcH: 22.5, vapourPressureKPa: saturationVapourPressure(2), solarRadiation: 0 },
      0,
    );
    expect(computeEvapotranspiration(long)[23]?.mm).toBeCloseTo(expected, 9);
  });
});

describe('what the service gives', () => {
  test('stands as it is, and is asked for once', () => {
    const given = three({ et0Mm: [0.01, 0, 0.03] });
    const hours = referenceEvapotranspirationHours(given);
    expect(hours.map((one) => [one?.mm, one?.from])).toEqual([
      [0.01, 'service'],
      [0, 'service'],
      [0.03, 'service'],
    ]);
    expect(referenceEvapotranspirationHours(given)).toBe(hours);
  });

  test('too short a column is filled to the end', () => {
    const hours = referenceEvapotranspirationHours(three({ et0Mm: [0.01, 0.02] }));
    expect(hours.map((one) => one?.from)).toEqual(['service', 'service', 'hourly']);
    expect(
      referenceEvapotranspirationHours(three({ et0Mm: [null, 0.02, 0.03], temperature2mC: [null, 9, 9] }))[0],
    ).toBeNull();
  });
});

test('a fault that is no weather beyond the equations is not hidden', () => {
  const failing = (fault: Error): Forecast => ({
    ...three(),
    values: {
      ...values,
      get shortwaveRadiationWPerM2(): never {
        throw fault;
      },
    },
  });
  const coded = codedError('PARAMETER_MISSING', { expected: 'a number', came: 'none' });
  expect(() => computeEvapotranspiration(failing(new RangeError('broken')))).toThrow('broken');
  expect(() => computeEvapotranspiration(failing(coded))).toThrow(coded);
});
