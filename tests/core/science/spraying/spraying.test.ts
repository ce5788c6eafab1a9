import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type NozzleSize, nozzleFlow, pressureForFlow } from '../../../../src/core/science/spraying/nozzle.ts';
import {
  flowForRate,
  productPerTank,
  rateOfFlow,
  speedOver100m,
  tankLoads,
} from '../../../../src/core/science/spraying/rate.ts';
import { between, expectWithin, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const rows: PublishedCall[] = [
  [
    'output-from-rate',
    2,
    1e-9,
    'follows from the units; computed',
    () => flowForRate(200, { speedKmh: 12, widthM: 0.5 }),
  ],
  [
    'rate-worked-1.3',
    200,
    0.01,
    'worked example of an advisory service in a national newspaper',
    () => rateOfFlow(1.3, { speedKmh: 7.8, widthM: 0.5 }),
  ],
  [
    'rate-worked-12.24',
    408,
    0.01,
    'worked example of a sprayer instruction manual',
    () => rateOfFlow(12.24, { speedKmh: 6, widthM: 3 }),
  ],
  ['speed-100m', 12, 1e-9, 'formula of sprayer instruction manuals', () => speedOver100m(30)],
  ['tank-loads', 4, 1e-9, 'worked example of a Canadian provincial factsheet', () => tankLoads(200, 20, 1000)],
  ['tank-mix-product', 31.5, 1e-9, 'computed', () => productPerTank(3000, 200, 840 / 400)],
  ['pressure-law', 2.083, 0.001, 'flow as the square root of pressure; computed', () => pressureForFlow(1, 1.2, 3)],
];

const guide = 'ISO 10625 sizes, flows of a nozzle guide';
const nominal = 'ISO 10625 sizes, nominal flow; from memory';

/** [size, bar, L/min, tolerance, source] */
const flows: readonly [NozzleSize, number, number, number, string][] = [
  ['01', 2, 0.33, 0.012, guide],
  ['015', 2, 0.49, 0.012, guide],
  ['02', 2, 0.65, 0.012, guide],
  ['025', 2, 0.82, 0.005, `${guide}; computed, the guide misprints it`],
  ['03', 2, 0.98, 0.012, guide],
  ['04', 2, 1.31, 0.012, guide],
  ['05', 2, 1.63, 0.012, guide],
  ['06', 2, 1.96, 0.012, guide],
  ['08', 2, 2.61, 0.012, guide],
  ['01', 3, 0.4, 0.05, nominal],
  ['015', 3, 0.6, 0.05, nominal],
  ['02', 3, 0.8, 0.05, nominal],
  ['03', 3, 1.2, 0.05, nominal],
  ['04', 3, 1.6, 0.05, nominal],
  ['05', 3, 2, 0.05, nominal],
  ['06', 3, 2.4, 0.05, nominal],
  ['08', 3, 3.2, 0.05, nominal],
];

describe('sprayer arithmetic', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test.each(flows)('an %s nozzle at %d bar gives %d L/min within %d (%s)', (size, bar, expected, tolerance) => {
    expectWithin(nozzleFlow(size, bar), expected, tolerance);
  });

  const speedKmh = between(1, 30);
  const widthM = between(0.2, 48);

  test('flow and rate go there and back, and four times the pressure doubles the flow', () => {
    fc.assert(
      fc.property(between(1, 1000), speedKmh, widthM, (rate, speed, width) => {
        const strip = { speedKmh: speed, widthM: width };
        expect(rateOfFlow(flowForRate(rate, strip), strip) / rate).toBeCloseTo(1, 9);
        expect(nozzleFlow('04', 4)).toBeCloseTo(2 * nozzleFlow('04', 1), 9);
      }),
    );
  });

  test('the loads carry the whole volume, and one fewer would not', () => {
    const tank = fc.integer({ min: 100, max: 8000 });
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 400 }), fc.integer({ min: 1, max: 5000 }), tank, (rate, tenths, tankL) => {
        const volume = (rate * tenths) / 10;
        const loads = tankLoads(rate, tenths / 10, tankL);
        expect(loads * tankL).toBeGreaterThanOrEqual(volume);
        expect((loads - 1) * tankL).toBeLessThan(volume);
      }),
    );
  });

  test.each([
    () => flowForRate(200, { speedKmh: 0, widthM: 0.5 }),
    () => rateOfFlow(-1, { speedKmh: 10, widthM: 0.5 }),
    () => speedOver100m(0),
    () => tankLoads(200, 20, 0),
    () => productPerTank(Number.NaN, 200, 2),
    () => nozzleFlow('03', 30),
    () => pressureForFlow(1, 0, 3),
  ])('what cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
