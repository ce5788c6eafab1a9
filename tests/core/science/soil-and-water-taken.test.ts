import { describe, expect, test } from 'vitest';
import {
  extraterrestrialRadiationOfHour,
  seasonalCorrection,
  solarHourAngle,
} from '../../../src/core/science/evapotranspiration/hour-sky.ts';
import {
  type PenmanMonteithTerms,
  referenceEvapotranspirationDaily,
} from '../../../src/core/science/evapotranspiration/penman-monteith.ts';
import {
  clearSkyRadiation,
  monthlySoilHeat,
  netLongwave,
  netLongwaveOf,
  netShortwave,
  radiationFromSunshine,
  radiationFromTemperature,
} from '../../../src/core/science/evapotranspiration/radiation.ts';
import { inverseSunDistance, sunsetHourAngle } from '../../../src/core/science/evapotranspiration/sky.ts';
import { soilSurfaceTemperature, stepSoilTemperature } from '../../../src/core/science/soil/heat-step.ts';
import { dampingDepth, depthOfShare, waveShare, waveTemperature } from '../../../src/core/science/soil/heat-wave.ts';
import { temperatureAt30cm } from '../../../src/core/science/soil/reading-at-depth.ts';
import { estimateSoilWater } from '../../../src/core/science/soil/saxton-rawls.ts';
import { textureClassOf } from '../../../src/core/science/soil/texture-triangle.ts';
import { slopePerDay } from '../../../src/core/science/soil/trend.ts';
import {
  availableShareFromFieldCapacityShare,
  fieldCapacityShareFromAvailableShare,
} from '../../../src/core/science/soil/water-shares.ts';
import { startState, stepWater } from '../../../src/core/science/water/balance.ts';
import {
  easyShare,
  readilyAvailableWater,
  totalAvailableWater,
  totalEvaporableWater,
} from '../../../src/core/science/water/root-zone.ts';
import { soilStoreOf } from '../../../src/core/science/water/soil-store.ts';
import { epochSeconds, metresPerSecond } from '../../../src/core/units/brands.ts';
import { expectTaken, refusal, type Taken, takenTitle } from './taken.ts';

const held = { fieldCapacity: 0.32, wiltingPoint: 0.15 };
const layer = { totalMm: 100, readyMm: 60, coefficient: 1 };
const fromFull = { upperMm: 0, lowerMm: 0 };
const crop = (coefficient: number) => ({ kind: 'crop', coefficient }) as const;

describe('what the soil water balance takes', () => {
  test.each<Taken>([
    ['a field capacity of 0 to 1 m3/m3', 0, 1, (x) => totalAvailableWater({ fieldCapacity: x, wiltingPoint: 0 }, 1)],
    [
      'a wilting point not above field capacity of 0 to 0.32 m3/m3',
      0,
      0.32,
      (x) => totalAvailableWater({ ...held, wiltingPoint: x }, 1),
    ],
    ['a root depth of 0 to 5 m', 0, 5, (x) => totalAvailableWater(held, x)],
    ['a share p of 0.1 to 0.8', 0.1, 0.8, (x) => easyShare(x, 5)],
    ['a water use of 0 to 20 mm/day', 0, 20, (x) => easyShare(0.6, x)],
    ['a share p of 0 to 1', 0, 1, (x) => readilyAvailableWater(100, x)],
    ['an available water of 0 to 5000 mm', 0, 5000, (x) => readilyAvailableWater(x, 0.5)],
    ['a field capacity of 0 to 1 m3/m3', 0, 1, (x) => totalEvaporableWater({ fieldCapacity: x, wiltingPoint: 0 }, 0.1)],
    [
      'a wilting point not above field capacity of 0 to 0.32 m3/m3',
      0,
      0.32,
      (x) => totalEvaporableWater({ ...held, wiltingPoint: x }, 0.1),
    ],
    ['an evaporating depth of 0.05 to 0.2 m', 0.05, 0.2, (x) => totalEvaporableWater(held, x)],
    ['a depth of soil of 0.01 to 3 m', 0.01, 3, (x) => soilStoreOf('loam', x, { kind: 'bare' })],
    ['a crop coefficient of 0 to 1.5', 0, 1.5, (x) => soilStoreOf('loam', 0.3, crop(x))],
    ['a soil moisture deficit of -3000 to 3000 mm', -3000, 3000, (x) => startState(x, { dryingShare: 1 })],
    ['a rain of 0 to 2000 mm', 0, 2000, (x) => stepWater(fromFull, { rainMm: x, referenceMm: 0 }, layer)],
    [
      'a reference evapotranspiration of -5 to 30 mm',
      -5,
      30,
      (x) => stepWater(fromFull, { rainMm: 0, referenceMm: x }, layer),
    ],
  ])(takenTitle, (...row) => expectTaken(row));
});

describe('what the formulas of soil and its heat take', () => {
  const loam = { sandPercent: 40, clayPercent: 20, organicMatterPercent: 2.5 };
  const day = { previousC: 10, airC: 12, depthCm: 30, leafAreaIndex: 1, greenAreaIndex: 1 };
  const wave = { diffusivityM2PerS: 5e-7, periodS: 86_400, meanC: 10, amplitudeC: 3, coldestAtS: 0 };
  test.each<Taken>([
    ['a sand content of 0 to 100 %', 0, 100, (x) => textureClassOf({ sandPercent: x, clayPercent: 0 })],
    ['a clay content of 0 to 100 %', 0, 100, (x) => textureClassOf({ sandPercent: 0, clayPercent: x })],
    ['an organic matter content of 0 to 8 %', 0, 8, (x) => estimateSoilWater({ ...loam, organicMatterPercent: x })],
    ['a clay content of 0 to 60 %', 0, 60, (x) => estimateSoilWater({ ...loam, clayPercent: x })],
    ['a share of field capacity of 0 to 250 %', 0, 250, (x) => availableShareFromFieldCapacityShare('loam', x)],
    ['a share of available water of 0 to 250 %', 0, 250, (x) => fieldCapacityShareFromAvailableShare('loam', x)],
    ['a depth of a thermometer of 5 to 100 cm', 5, 100, (x) => temperatureAt30cm(10, x, 43_200)],
    ['an air temperature of -50 to 60 C', -50, 60, (x) => soilSurfaceTemperature(x, 1)],
    ['a leaf area index of 0 to 12', 0, 12, (x) => soilSurfaceTemperature(10, x)],
    ['a soil temperature of -50 to 60 C', -50, 60, (x) => stepSoilTemperature({ ...day, previousC: x })],
    ['a depth of 0 to 100 cm', 0, 100, (x) => stepSoilTemperature({ ...day, depthCm: x })],
    ['a green area index of 0 to 12', 0, 12, (x) => stepSoilTemperature({ ...day, greenAreaIndex: x })],
    ['a depth of 0 to 20 m', 0, 20, (x) => waveShare(wave, x)],
    ['a mean temperature of -40 to 60 C', -40, 60, (x) => waveTemperature({ ...wave, meanC: x }, 0.3, 0)],
    ['an amplitude of 0 to 60 C', 0, 60, (x) => waveTemperature({ ...wave, amplitudeC: x }, 0.3, 0)],
  ])(takenTitle, (...row) => expectTaken(row));

  test.each<[says: string, came: string, call: () => unknown]>([
    ['sand and clay together of 0 to 100 %', '101', () => textureClassOf({ sandPercent: 60, clayPercent: 41 })],
    ['a sand content of 0 to 100 %', '101', () => estimateSoilWater({ ...loam, sandPercent: 101 })],
    ['a sand content of 0 to 100 %', '-1', () => estimateSoilWater({ ...loam, sandPercent: -1 })],
    ['sand and clay together of 0 to 100 %', '101', () => estimateSoilWater({ ...loam, sandPercent: 81 })],
    ['a thermal diffusivity of 1e-8 to 0.00001 m2/s', '9e-9', () => dampingDepth({ ...wave, diffusivityM2PerS: 9e-9 })],
    ['a period above 0 s', '0', () => dampingDepth({ ...wave, periodS: 0 })],
    ['a share of 0 to 1', '1.1', () => depthOfShare(wave, 1.1)],
    ['a share above 0', '0', () => depthOfShare(wave, 0)],
    ['readings of at least two different moments', '0 of which no slope can be taken', () => slopePerDay([])],
  ])('%s is wanted, %s is refused', (says, came, call) => {
    expect(call).toThrow(refusal(says, came));
  });

  test('a wave without a moment is refused', () => {
    expect(() => waveTemperature(wave, 0.3, Number.NaN)).toThrow(
      expect.objectContaining({ details: { expected: expect.stringMatching(/^a time of .* s$/), came: 'NaN' } }),
    );
  });

  test('one reading, or two of one moment, have no slope', () => {
    const one = { at: epochSeconds(0), value: 10, low: 9, high: 11 };
    const says = 'readings of at least two different moments';
    expect(() => slopePerDay([one])).toThrow(refusal(says, '1 of which no slope can be taken'));
    expect(() => slopePerDay([one, one])).toThrow(refusal(says, '2 of which no slope can be taken'));
    expect(() => slopePerDay([one, { ...one, at: epochSeconds(86_400), high: Number.NaN }])).toThrow(
      refusal(says, '2 of which no slope can be taken'),
    );
  });
});

describe('what the formulas of evapotranspiration take', () => {
  const terms: PenmanMonteithTerms = {
    netRadiation: 10,
    soilHeat: 0,
    temperatureC: 15,
    windAt2m: metresPerSecond(2),
    saturationKPa: 1.7,
    actualKPa: 1.2,
    slope: 0.11,
    psychrometric: 0.066,
  };
  const longwave = { highestC: 20, lowestC: 10, vapourPressureKPa: 1.2, solar: 15, clearSky: 20 };
  const hour = { latitude: 53, longitude: -2, dayOfYear: 300, middleUtcH: 12 };
  test.each<Taken>([
    [
      'an air temperature of -60 to 60 C',
      -60,
      60,
      (x) => referenceEvapotranspirationDaily({ ...terms, temperatureC: x }),
    ],
    [
      'a wind at 2 m of 0 to 60 m/s',
      0,
      60,
      (x) => referenceEvapotranspirationDaily({ ...terms, windAt2m: metresPerSecond(x) }),
    ],
    [
      'a saturation vapour pressure of 0 to 20 kPa',
      0,
      20,
      (x) => referenceEvapotranspirationDaily({ ...terms, saturationKPa: x }),
    ],
    ['a vapour pressure of 0 to 20 kPa', 0, 20, (x) => referenceEvapotranspirationDaily({ ...terms, actualKPa: x })],
    [
      'a net radiation of -20 to 40 MJ/m2',
      -20,
      40,
      (x) => referenceEvapotranspirationDaily({ ...terms, netRadiation: x }),
    ],
    [
      'a soil heat flux of -20 to 40 MJ/m2',
      -20,
      40,
      (x) => referenceEvapotranspirationDaily({ ...terms, soilHeat: x }),
    ],
    [
      'a slope of the vapour pressure curve of 0.001 to 2 kPa/C',
      0.001,
      2,
      (x) => referenceEvapotranspirationDaily({ ...terms, slope: x }),
    ],
    [
      'a psychrometric constant of 0.01 to 0.1 kPa/C',
      0.01,
      0.1,
      (x) => referenceEvapotranspirationDaily({ ...terms, psychrometric: x }),
    ],
    ['possible hours of sunshine of 0 to 24 h', 0, 24, (x) => radiationFromSunshine(0, x, 20)],
    ['hours of sunshine within those possible of 0 to 10 h', 0, 10, (x) => radiationFromSunshine(x, 10, 20)],
    ['a radiation of 0 to 60 MJ/m2/day', 0, 60, (x) => radiationFromSunshine(5, 10, x)],
    ['a highest temperature not below the lowest of 0 to 60 C', 0, 60, (x) => radiationFromTemperature(x, 0, 20, 0.16)],
    ['a coefficient of 0.1 to 0.25', 0.1, 0.25, (x) => radiationFromTemperature(20, 10, 20, x)],
    ['a radiation of 0 to 60 MJ/m2/day', 0, 60, (x) => radiationFromTemperature(20, 10, x, 0.16)],
    ['an elevation of -500 to 6000 m', -500, 6000, (x) => clearSkyRadiation(x, 20)],
    ['a radiation of 0 to 60 MJ/m2/day', 0, 60, (x) => netShortwave(x)],
    ['an air temperature of -60 to 60 C', -60, 60, (x) => netLongwave({ ...longwave, highestC: x })],
    ['an air temperature of -60 to 60 C', -60, 60, (x) => netLongwave({ ...longwave, lowestC: x })],
    ['a radiation of 0 to 60 MJ/m2/day', 0, 60, (x) => netLongwave({ ...longwave, solar: x })],
    ['a vapour pressure of 0 to 5.8 kPa', 0, 5.8, (x) => netLongwaveOf(1, x, 0.5)],
    ['a share of clear sky of 0 to 1', 0, 1, (x) => netLongwaveOf(1, 1, x)],
    ['an air temperature of -60 to 60 C', -60, 60, (x) => monthlySoilHeat(x, 10)],
    ['a latitude of -90 to 90 degrees', -90, 90, (x) => sunsetHourAngle(x, 100)],
    ['a day of the year of 1 to 366', 1, 366, (x) => inverseSunDistance(x)],
    ['a day of the year of 1 to 366', 1, 366, (x) => seasonalCorrection(x)],
    ['a longitude of -180 to 180 degrees', -180, 180, (x) => solarHourAngle({ ...hour, longitude: x })],
    ['an hour of the day of 0 to 24 h', 0, 24, (x) => extraterrestrialRadiationOfHour({ ...hour, middleUtcH: x })],
  ])(takenTitle, (...row) => expectTaken(row));

  test('a clear sky without radiation is refused', () => {
    expect(() => netLongwave({ ...longwave, clearSky: 0 })).toThrow(
      refusal('a clear-sky radiation above 0 MJ/m2/day', '0'),
    );
  });
});
