import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soilSurfaceTemperature, stepSoilTemperature } from '../../../../src/core/science/soil/heat-step.ts';
import {
  dampingDepth,
  depthOfShare,
  waveLag,
  waveShare,
  waveTemperature,
} from '../../../../src/core/science/soil/heat-wave.ts';
import { slopePerDay } from '../../../../src/core/science/soil/trend.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { between, expectWithin, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const day = 86_400;
const year = 365 * day;
const wave = (diffusivityM2PerS: number, periodS: number) => ({ diffusivityM2PerS, periodS });
const textbook = 'Hillel 1982; Campbell & Norman 1998, ch. 2; computed';
const step = 'Katterer & Andren 2009, Acta Agric. Scand. B 59:77-86; computed';
const surface = { ...wave(5e-7, year), meanC: 10.5, amplitudeC: 7.5, coldestAtS: 25 * day };
const soilDay = { airC: 8, depthCm: 30, greenAreaIndex: 1, leafAreaIndex: 0.8 };

const rows: PublishedCall[] = [
  ['damping-day-D2e-07', 0.0742, 0.0001, textbook, () => dampingDepth(wave(2e-7, day))],
  ['damping-year-D2e-07', 1.417, 0.001, textbook, () => dampingDepth(wave(2e-7, year))],
  ['damping-day-D4e-07', 0.1049, 0.0001, textbook, () => dampingDepth(wave(4e-7, day))],
  ['damping-year-D4e-07', 2.004, 0.001, textbook, () => dampingDepth(wave(4e-7, year))],
  ['damping-day-D5e-07', 0.1173, 0.0001, textbook, () => dampingDepth(wave(5e-7, day))],
  ['damping-year-D5e-07', 2.24, 0.001, textbook, () => dampingDepth(wave(5e-7, year))],
  ['damping-day-D6e-07', 0.1285, 0.0001, textbook, () => dampingDepth(wave(6e-7, day))],
  ['damping-year-D6e-07', 2.454, 0.001, textbook, () => dampingDepth(wave(6e-7, year))],
  ['damping-day-D8e-07', 0.1483, 0.0001, textbook, () => dampingDepth(wave(8e-7, day))],
  ['damping-year-D8e-07', 2.834, 0.001, textbook, () => dampingDepth(wave(8e-7, year))],
  ['depth-5pct-annual', 4.24, 0.01, textbook, () => depthOfShare(wave(2e-7, year), 0.05)],
  ['att-30cm-day', 0.0774, 0.0005, textbook, () => waveShare(wave(5e-7, day), 0.3)],
  ['lag-30cm-day in hours', 9.77, 0.02, textbook, () => waveLag(wave(5e-7, day), 0.3) / 3600],
  ['att-30cm-year', 0.875, 0.0006, textbook, () => waveShare(wave(5e-7, year), 0.3)],
  ['lag-30cm-year in days', 7.78, 0.02, textbook, () => waveLag(wave(5e-7, year), 0.3) / day],
  ['annual-wave-30cm-doy288', 12.56, 0.01, textbook, () => waveTemperature(surface, 0.3, 288 * day)],
  ['annual-wave-30cm-doy305', 10.67, 0.01, textbook, () => waveTemperature(surface, 0.3, 305 * day)],
  ['annual-wave-30cm-doy319', 9.1, 0.01, textbook, () => waveTemperature(surface, 0.3, 319 * day)],
  ['annual-wave-30cm-doy335', 7.41, 0.01, textbook, () => waveTemperature(surface, 0.3, 335 * day)],
  ['KA-surface-warm', 11.16, 0.001, step, () => soilSurfaceTemperature(10, 0)],
  ['KA-surface-LAI3', 10, 1e-6, step, () => soilSurfaceTemperature(10, 3)],
  ['KA-surface-frost', -1, 1e-6, step, () => soilSurfaceTemperature(-5, 1)],
  ['KA-step-30cm', 11.5738, 0.0005, step, () => stepSoilTemperature({ ...soilDay, previousC: 12 })],
  ['KA-10days-30cm', 9.478, 0.002, step, () => afterDays(10, 12)],
];

function afterDays(days: number, startC: number): number {
  let temperature = startC;
  for (let n = 0; n < days; n++) temperature = stepSoilTemperature({ ...soilDay, previousC: temperature });
  return temperature;
}

describe('heat in the soil', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('yearly and daily damping depth stand as 1.8 to 0.1 m, within 15 % (Jacobs, Heusinkveld & Holtslag 2011, 27 years of grass)', () => {
    const ratio = dampingDepth(wave(5e-7, year)) / dampingDepth(wave(5e-7, day));
    expect(Math.abs(ratio / (1.8 / 0.1) - 1)).toBeLessThan(0.15);
  });

  test('the whole wave is at the surface', () => {
    expect(depthOfShare(wave(5e-7, day), 1)).toBe(0);
  });

  const depth = between(0, 5);

  test('deeper soil swings less and later, and never beyond the surface', () => {
    fc.assert(
      fc.property(depth, depth, between(0, 2 * year), (a, b, time) => {
        const [shallow, deep] = [Math.min(a, b), Math.max(a, b)];
        expect(waveShare(surface, deep)).toBeLessThanOrEqual(waveShare(surface, shallow));
        expect(waveLag(surface, deep)).toBeGreaterThanOrEqual(waveLag(surface, shallow));
        expect(Math.abs(waveTemperature(surface, deep, time) - 10.5)).toBeLessThanOrEqual(7.5 + 1e-9);
        expect(depthOfShare(surface, waveShare(surface, a))).toBeCloseTo(a, 6);
      }),
    );
  });

  test('a day moves the soil towards its surface and never past it, less so deeper down', () => {
    const celsius = between(-20, 40);
    const index = between(0, 8);
    fc.assert(
      fc.property(celsius, celsius, index, between(0, 100), (previousC, airC, lai, depthCm) => {
        const weather = { previousC, airC, leafAreaIndex: lai, greenAreaIndex: lai };
        const target = soilSurfaceTemperature(airC, lai);
        const next = stepSoilTemperature({ ...weather, depthCm });
        expect(Math.abs(next - target)).toBeLessThanOrEqual(Math.abs(previousC - target));
        const deeper = stepSoilTemperature({ ...weather, depthCm: Math.min(100, depthCm + 10) });
        expect(Math.abs(deeper - previousC)).toBeLessThanOrEqual(Math.abs(next - previousC) + 1e-12);
        const leafier = stepSoilTemperature({ ...weather, depthCm, greenAreaIndex: lai + 1 });
        expect((leafier - previousC) * Math.exp(0.15)).toBeCloseTo(next - previousC, 9);
      }),
    );
  });

  const readings = (values: readonly number[], band = 0) =>
    values.map((value, n) => ({ at: epochSeconds(n * day), value, low: value - band, high: value + band }));

  test('five daily readings of 10.8, 10.5, 10.3, 9.9 and 9.7 C fall by 0.28 C/day (ordinary least squares; computed)', () => {
    expect(slopePerDay(readings([10.8, 10.5, 10.3, 9.9, 9.7])).value).toBeCloseTo(-0.28, 9);
  });

  test('the band of a slope encloses it and is reached by the readings at their ends', () => {
    fc.assert(
      fc.property(fc.array(between(-5, 25), { minLength: 2, maxLength: 10 }), (values) => {
        const { value, low, high } = slopePerDay(readings(values, 0.3));
        expect(low).toBeLessThan(value);
        expect(high).toBeGreaterThan(value);
        const middle = (values.length - 1) / 2;
        const tilted = values.map((each, n) => each + 0.3 * Math.sign(n - middle));
        expect(slopePerDay(readings(tilted)).value).toBeCloseTo(high, 9);
      }),
    );
  });

  test.each([
    () => dampingDepth(wave(0, day)),
    () => dampingDepth(wave(5e-7, 0)),
    () => waveShare(wave(5e-7, day), -0.1),
    () => depthOfShare(wave(5e-7, day), 0),
    () => waveTemperature(surface, 0.3, Number.NaN),
    () => stepSoilTemperature({ ...soilDay, previousC: 12, depthCm: 150 }),
    () => soilSurfaceTemperature(Number.NaN, 1),
    () => slopePerDay([]),
    () => slopePerDay(readings([10])),
    () => slopePerDay(readings([10, Number.NaN])),
  ])('what lies outside the range of a formula is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
