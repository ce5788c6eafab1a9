import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { airErrorsAlone } from '../../../../../src/core/science/soil/temperature/air-errors.ts';
import { soilConstants30cm } from '../../../../../src/core/science/soil/temperature/constants.ts';
import { advance, loadings, seen, size } from '../../../../../src/core/science/soil/temperature/state.ts';

test('air of 0 C that is known without error leaves none', () => {
  const alone = airErrorsAlone();
  alone.advance(soilConstants30cm, { airC: 0, dayOfYear: 20, error: { kept: 0, variance: 0 } });
  expect(alone.variance(loadings(soilConstants30cm, 8, 8))).toBe(0);
});

test('what errors of the air do alone is what they do in the whole state of a soil that is otherwise known', () => {
  const of = { ...soilConstants30cm, siteNoiseC: 0, passingNoiseC: 0, quickShareNoise: 0, slowShareNoise: 0 };
  const day = fc.record({
    airC: fc.double({ min: -15, max: 20, noNaN: true }),
    dayOfYear: fc.integer({ min: 1, max: 366 }),
    error: fc.record({
      kept: fc.double({ min: 0, max: 1, noNaN: true }),
      variance: fc.double({ min: 0, max: 9, noNaN: true }),
    }),
  });
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 16 }), (days) => {
      const state = { mean: new Float64Array(size), covariance: new Float64Array(size * size) };
      const alone = airErrorsAlone();
      const through = loadings(of, 8, 8);
      for (const one of days) {
        advance(state, of, one, 8);
        alone.advance(of, one);
        expect(alone.variance(through)).toBeCloseTo(seen(state, through).variance, 9);
      }
    }),
  );
});
