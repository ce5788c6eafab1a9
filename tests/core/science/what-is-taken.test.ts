import { describe, expect, test } from 'vitest';
import { dailyVapourPressure } from '../../../src/core/science/air/daily-vapour-pressure.ts';
import { judgeInversion } from '../../../src/core/science/air/inversion.ts';
import { pressureAtElevation, psychrometricConstant } from '../../../src/core/science/air/pressure.ts';
import {
  dewPoint,
  saturationVapourPressure,
  vapourPressureOfAir,
} from '../../../src/core/science/air/vapour-pressure.ts';
import { vapourPressureOfBulbs, wetBulb } from '../../../src/core/science/air/wet-bulb.ts';
import { wetBulbStull } from '../../../src/core/science/air/wet-bulb-stull.ts';
import { abbott, hendersonTilton } from '../../../src/core/science/efficacy/control.ts';
import { countLimits } from '../../../src/core/science/efficacy/count-limits.ts';
import { allowedMass, dilutionVolume, waterVolume } from '../../../src/core/science/fate/dilution.ts';
import { drainflowConcentration, drainflowLossPercent } from '../../../src/core/science/fate/drainflow.ts';
import { leachingIndex, shareLeft } from '../../../src/core/science/fate/leaching.ts';
import { nozzleFlow, pressureForFlow } from '../../../src/core/science/spraying/nozzle.ts';
import {
  flowForRate,
  productPerTank,
  rateOfFlow,
  speedOver100m,
  tankLoads,
} from '../../../src/core/science/spraying/rate.ts';
import { sunPosition } from '../../../src/core/science/sun/position.ts';
import { windAtBoom, windAtBoomOverGrass } from '../../../src/core/science/wind/at-boom.ts';
import { canopyWindShare } from '../../../src/core/science/wind/over-canopy.ts';
import { grassProfile, windAt2m } from '../../../src/core/science/wind/over-grass.ts';
import { epochSeconds, kilometresPerHour } from '../../../src/core/units/brands.ts';
import { expectTaken, refusal, type Taken, takenTitle } from './taken.ts';

const most = Number.MAX_VALUE;
const strip = { speedKmh: 12, widthM: 24 };
const limits = { calmBelowKmh: 5, clearAtMostPercent: 30, hoursBeforeSunset: 1, hoursAfterSunrise: 1 };
const air = { place: { latitude: 53, longitude: -2 }, at: epochSeconds(1_793_000_000), windKmh: 3, cloudPercent: 10 };
const canopy = { boomHeightM: 0.7, canopyHeightM: 0.2 };

describe('what the formulas of the air take', () => {
  test.each<Taken>([
    ['a relative humidity of 0 to 100 %', 0, 100, (x) => dailyVapourPressure(14, 6, { meanPercent: x })],
    ['a relative humidity of 0 to 100 %', 0, 100, (x) => vapourPressureOfAir(10, x)],
    ['an air temperature of -60 to 60 C', -60, 60, (x) => saturationVapourPressure(x)],
    ['a vapour pressure of 0.01 to 20 kPa', 0.01, 20, (x) => dewPoint(x)],
    ['an elevation of -500 to 9000 m', -500, 9000, (x) => pressureAtElevation(x)],
    ['an air pressure of 30 to 110 kPa', 30, 110, (x) => psychrometricConstant(x)],
    [
      'an air pressure of 30 to 110 kPa',
      30,
      110,
      (x) => wetBulb({ temperatureC: 10, humidityPercent: 80, pressureKPa: x }),
    ],
    ['an air pressure of 30 to 110 kPa', 30, 110, (x) => vapourPressureOfBulbs({ dryC: 10, wetC: 9, pressureKPa: x })],
    [
      'a psychrometer coefficient of 0.0005 to 0.0015 1/C',
      0.0005,
      0.0015,
      (x) => vapourPressureOfBulbs({ dryC: 10, wetC: 9, coefficientPerC: x }),
    ],
    ['an air temperature of -20 to 50 C', -20, 50, (x) => wetBulbStull(x, 80)],
    ['a relative humidity of 5 to 99 %', 5, 99, (x) => wetBulbStull(10, x)],
    ['a wind at boom height of 0 to 450 km/h', 0, 450, (x) => judgeInversion({ ...air, windKmh: x }, limits)],
    ['a cloud cover of 0 to 100 %', 0, 100, (x) => judgeInversion({ ...air, cloudPercent: x }, limits)],
  ])(takenTitle, (...row) => expectTaken(row));

  test('a wet bulb above the dry one, or too far below it for any vapour, is refused', () => {
    expect(() => vapourPressureOfBulbs({ dryC: 10, wetC: 10.5 })).toThrow(
      refusal('a wet bulb not above the dry one of -60 to 10 C', '10.5'),
    );
    expect(() => vapourPressureOfBulbs({ dryC: 30, wetC: 5 })).toThrow(
      expect.objectContaining({
        details: expect.objectContaining({
          expected: expect.stringMatching(/^a wet bulb that leaves a vapour pressure of 0 to 4\.24\d+ kPa$/),
        }),
      }),
    );
    expect(vapourPressureOfBulbs({ dryC: 10, wetC: 10 })).toBe(saturationVapourPressure(10));
  });
});

describe('what the formulas of wind and sun take', () => {
  test.each<Taken>([
    ['a wind at 10 m of 0 to 450 km/h', 0, 450, (x) => windAtBoom(kilometresPerHour(x), canopy)],
    ['a wind at 10 m of 0 to 450 km/h', 0, 450, (x) => windAtBoomOverGrass(kilometresPerHour(x), 0.5)],
    ['a boom height of 0.2 to 10 m', 0.2, 10, (x) => windAtBoomOverGrass(kilometresPerHour(10), x)],
    ['a crop height of 0.01 to 3 m', 0.01, 3, (x) => canopyWindShare({ canopyHeightM: x, boomHeightM: 4 })],
    ['a boom height above the crop of 0.2 to 10 m', 0.2, 10, (x) => canopyWindShare({ ...canopy, boomHeightM: x })],
    ['a height above the ground of 0.2 to 100 m', 0.2, 100, (x) => grassProfile(x)],
    ['a wind of 0 or more', 0, most, (x) => windAt2m(x, 10)],
    ['a latitude of -90 to 90 degrees', -90, 90, (x) => sunPosition({ latitude: x, longitude: 0 }, air.at)],
    ['a longitude of -180 to 180 degrees', -180, 180, (x) => sunPosition({ latitude: 0, longitude: x }, air.at)],
  ])(takenTitle, (...row) => expectTaken(row));

  test('a moment from 1900 to 2100 is taken, no other', () => {
    const at = (x: number) => sunPosition(air.place, epochSeconds(x));
    const says = 'a moment of 1900 to 2100 of -2208988800 to 4133980800 s';
    expect(at(Date.UTC(1900, 0, 1) / 1000).elevationDeg).toBeLessThan(0);
    expect(at(Date.UTC(2101, 0, 1) / 1000).elevationDeg).toBeLessThan(0);
    expect(() => at(Date.UTC(1900, 0, 1) / 1000 - 1)).toThrow(refusal(says, '-2208988801'));
    expect(() => at(Date.UTC(2101, 0, 1) / 1000 + 1)).toThrow(refusal(says, '4133980801'));
  });
});

describe('what the formulas of the fate in the ground take', () => {
  const treatment = { doseGPerHa: 840, kocLPerKg: 840 };
  test.each<Taken>([
    ['a number of days of 0 or more days', 0, most, (x) => shareLeft(x, 47)],
    ['a Koc of 0 or more L/kg', 0, most, (x) => drainflowLossPercent(x)],
    ['a dose of 0 to 100000 g/ha', 0, 100_000, (x) => drainflowConcentration({ ...treatment, doseGPerHa: x })],
    ['an interception of 0 to 1', 0, 1, (x) => drainflowConcentration({ ...treatment, interception: x })],
    ['a depth of water of 0 to 100000 mm', 0, 1e5, (x) => waterVolume(x, 1)],
    ['an area of 0 to 1000000 ha', 0, 1e6, (x) => waterVolume(1, x)],
    ['a mass of 0 to 1000000000 g', 0, 1e9, (x) => dilutionVolume(x, 0.1)],
    ['a limit of 0 to 1000000000 ug/L', 0, 1e9, (x) => allowedMass(1, 1, x)],
  ])(takenTitle, (...row) => expectTaken(row));

  test.each([
    ['a half-life above 0 days', () => leachingIndex(0, 840)],
    ['a Koc above 0 L/kg', () => leachingIndex(47, 0)],
    ['a half-life above 0 days', () => shareLeft(1, 0)],
  ])('%s is wanted, 0 is refused', (says, call) => {
    expect(call).toThrow(refusal(says, '0'));
  });
});

describe('what the formulas of spraying take', () => {
  test.each<Taken>([
    ['a volume rate of 0 to 10000 L/ha', 0, 10_000, (x) => flowForRate(x, strip)],
    ['a flow of 0 to 10000 L/min', 0, 10_000, (x) => rateOfFlow(x, strip)],
    ['a volume rate of 0 to 10000 L/ha', 0, 10_000, (x) => tankLoads(x, 10, 1000)],
    ['an area of 0 to 100000 ha', 0, 100_000, (x) => tankLoads(200, x, 1000)],
    ['a tank of 0 to 100000 L', 0, 100_000, (x) => productPerTank(x, 200, 1.7)],
    ['a product rate of 0 to 1000 L/ha', 0, 1000, (x) => productPerTank(1000, 200, x)],
    ['a pressure of 0.5 to 20 bar', 0.5, 20, (x) => nozzleFlow('03', x)],
    ['a pressure of 0.5 to 20 bar', 0.5, 20, (x) => pressureForFlow(1.2, 1.2, x)],
    ['a flow of 0 to 1000 L/min', 0, 1000, (x) => pressureForFlow(x, 1.2, 3)],
  ])(takenTitle, (...row) => expectTaken(row));

  test.each([
    ['a time for 100 m above 0 s', () => speedOver100m(0)],
    ['a speed above 0 km/h', () => flowForRate(200, { ...strip, speedKmh: 0 })],
    ['a width above 0 m', () => rateOfFlow(2, { ...strip, widthM: 0 })],
    ['a flow above 0 L/min', () => pressureForFlow(1, 0, 3)],
    ['a divisor above 0', () => tankLoads(200, 10, 0)],
    ['a divisor above 0', () => productPerTank(1000, 0, 1.7)],
  ])('%s is wanted, 0 is refused', (says, call) => {
    expect(call).toThrow(refusal(says, '0'));
  });
});

describe('what the formulas of control take', () => {
  const counts = { treatedBefore: 100, treatedAfter: 10, untreatedBefore: 100, untreatedAfter: 120 };
  const mostPlants = Number.MAX_SAFE_INTEGER;
  test.each<Taken>([
    [`a count of 0 to ${mostPlants}`, 0, mostPlants, (x) => abbott(100, x)],
    [`a count of 0 to ${mostPlants}`, 0, mostPlants, (x) => hendersonTilton({ ...counts, treatedAfter: x })],
    [`a count of 0 to ${mostPlants}`, 0, mostPlants, (x) => hendersonTilton({ ...counts, untreatedBefore: x })],
    ['a confidence of 0.5 to 0.999', 0.5, 0.999, (x) => countLimits(10, x)],
  ])(takenTitle, (...row) => expectTaken(row));

  test.each([
    ['a count in the untreated check above 0', () => abbott(0, 10)],
    ['a count in the untreated check afterwards above 0', () => hendersonTilton({ ...counts, untreatedAfter: 0 })],
    ['a count in the treated plot before above 0', () => hendersonTilton({ ...counts, treatedBefore: 0 })],
  ])('%s is wanted, 0 is refused', (says, call) => {
    expect(call).toThrow(refusal(says, '0'));
  });

  test('a count is whole and at most 10,000', () => {
    const says = 'a whole count of 0 to 10000';
    expect(countLimits(10_000, 0.95)[0]).toBeLessThan(10_000);
    expect(countLimits(0, 0.95)[0]).toBe(0);
    expect(() => countLimits(10_001, 0.95)).toThrow(refusal(says, '10001'));
    expect(() => countLimits(-1, 0.95)).toThrow(refusal(says, '-1'));
    expect(() => countLimits(2.5, 0.95)).toThrow(refusal(says, 'NaN'));
  });
});
