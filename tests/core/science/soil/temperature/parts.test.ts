import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airForecastSdC } from '../../../../../src/core/science/soil/temperature/air.ts';
import { usualAirOf } from '../../../../../src/core/science/soil/temperature/climatology.ts';
import { soilConstants30cm } from '../../../../../src/core/science/soil/temperature/constants.ts';
import { drawsFrom, rootOf } from '../../../../../src/core/science/soil/temperature/draws.ts';
import { fade, learn, scaleAt, unknownScale } from '../../../../../src/core/science/soil/temperature/error-scale.ts';
import { withLayers } from '../../../../../src/core/science/soil/temperature/layers.ts';
import { chanceUnder } from '../../../../../src/core/science/soil/temperature/normal.ts';
import { expectWithin } from '../../published.ts';
import { asked, daysWith } from './field-days.ts';

describe('the chance of a normal number below a limit', () => {
  // Abramowitz & Stegun 1964, table 26.1 (from memory of the printed table).
  test.each([
    [0, 0.5],
    [0.5, 0.69146246],
    [1, 0.84134475],
    [1.96, 0.9750021],
    [2.5, 0.99379033],
    [-0.5, 0.30853754],
    [-1, 0.15865525],
    [-3, 0.0013499],
  ])('below %d it is %d', (z, chance) => {
    expectWithin(chanceUnder(z), chance, 1e-7);
  });
});

describe('the error of a forecast of the air', () => {
  test.each([
    [-2, 0],
    [0, 0],
    [0.5, 0.75],
    [1, 0.9],
    [7, 2.7],
    [11, 3.9],
    [12, 4],
    [30, 4],
  ])('%d days ahead is %d C', (daysAhead, sdC) => {
    expect(airForecastSdC(daysAhead)).toBeCloseTo(sdC, 9);
  });
});

describe('the usual air of a latitude', () => {
  const air = (latitudeDeg: number | null) => usualAirOf({ latitudeDeg });

  test.each([
    [53, 15, 27 - 0.34 * 53 - 0.16 * 53],
    [53, 197.625, 27 - 0.34 * 53 + 0.16 * 53],
    [-53, 197, 27 - 0.34 * 53 - 0.16 * 53],
    [0, 15, 27],
    [89, 15, 27 - 0.34 * 89 - 14],
    [null, 15, 27 - 0.34 * 52 - 0.16 * 52],
  ])('at %s degrees on day %d is %d C (from memory of climate tables)', (latitude, day, expected) => {
    expect(air(latitude).airC(day)).toBeCloseTo(expected, 6);
  });

  test('is less sure where no latitude is known', () => {
    expect([air(53).placeSdC, air(null).placeSdC]).toEqual([3.5, 5.25]);
    expect(air(53).weatherSdC).toBe(4);
  });

  test('an archive may tell of 60 C, a spread of 20 C and one year', () => {
    const meanAirCByDayOfYear = Array.from({ length: 366 }, (_, day) => (day === 5 ? 60 : -60));
    const usual = usualAirOf({
      latitudeDeg: 53,
      climatology: { meanAirCByDayOfYear, spreadC: 20, years: 1, source: 'invented' },
    });
    expect([usual.airC(6), usual.airC(7), usual.weatherSdC]).toEqual([60, -60, 20]);
    expect(usual.placeSdC).toBeCloseTo(Math.hypot(0.7, 10), 9);
  });

  test.each([
    [{ meanAirCByDayOfYear: [9] }, '1 means, 3 C, 10 years'],
    [{ spreadC: 0 }, '366 means, 0 C, 10 years'],
    [{ spreadC: 20.1 }, '366 means, 20.1 C, 10 years'],
    [{ years: 0 }, '366 means, 3 C, 0 years'],
    [
      { meanAirCByDayOfYear: Array.from({ length: 366 }, (_, day) => (day === 5 ? 60.1 : 9)) },
      '366 means, 3 C, 10 years',
    ],
  ])('an archive of which a part cannot be is refused (%#): %s', (part, came) => {
    const whole = {
      meanAirCByDayOfYear: Array.from({ length: 366 }, () => 9),
      spreadC: 3,
      years: 10,
      source: 'invented',
    };
    const expected = '366 means of -60 to 60 C, a spread above 0 C and at least one year';
    expect(() => usualAirOf({ latitudeDeg: 53, climatology: { ...whole, ...part } })).toThrow(
      expect.objectContaining({ details: { expected, came } }),
    );
  });
});

describe('how large the errors of a site are', () => {
  const { scaleWorth } = soilConstants30cm;
  /** What is believed after one error of so many standard errors, seen so many days ahead. */
  function seenAfter(errors: number, leadDays: number, at: number, worth = 10) {
    const scale = unknownScale();
    learn(scale, { errorC: errors, soilVariance: 0.75, readingVariance: 0.25, leadDays, worth });
    return scaleAt(scale, soilConstants30cm, at);
  }

  test('is the model’s own where nothing was seen', () => {
    expect(scaleAt(unknownScale(), soilConstants30cm, 3)).toEqual({ factor: 1, freedom: scaleWorth });
  });

  test('counts an error by the part that is the soil’s, and none beyond three standard errors', () => {
    const weight = 7.5;
    const all = (squares: number) => (scaleWorth + weight * squares) / (scaleWorth + weight);
    const near = (squares: number) => (scaleWorth * all(squares) + weight * squares) / (scaleWorth + weight);
    expect(seenAfter(2, 1, 1).factor).toBeCloseTo(near(4), 9);
    expect(seenAfter(-2, 1, 1).factor).toBeCloseTo(near(4), 9);
    expect(seenAfter(3, 1, 1).factor).toBeCloseTo(near(9), 9);
    expect(seenAfter(5, 1, 1).factor).toBeCloseTo(near(9), 9);
    expect(seenAfter(2, 1, 1).freedom).toBeCloseTo(scaleWorth + weight, 9);
  });

  test('an error of the coming day tells most of the coming day, one of the coming week most of the week', () => {
    for (const [lead, same, other] of [
      [0, 1, 7],
      [1, 0, 9],
      [7, 7, 1],
      [20, 8, 1],
    ] as const) {
      expect(seenAfter(2, lead, same).factor).toBeGreaterThan(seenAfter(2, lead, other).factor + 0.1);
      expect(seenAfter(2, lead, same).freedom).toBeCloseTo(scaleWorth + 7.5, 9);
      expect(seenAfter(2, lead, other).freedom).toBeCloseTo(scaleWorth, 9);
    }
    expect(seenAfter(2, 4, 4).freedom).toBeCloseTo(scaleWorth + 3.75, 9);
    expect(seenAfter(2, 4, 1).factor).toBeCloseTo(seenAfter(2, 4, 7).factor, 9);
  });

  test('is half forgotten after half a year', () => {
    const scale = unknownScale();
    learn(scale, { errorC: 2, soilVariance: 1, readingVariance: 0, leadDays: 4, worth: 8 });
    for (let day = 0; day < 180; day += 1) fade(scale);
    expect(scaleAt(scale, soilConstants30cm, 1).freedom).toBeCloseTo(scaleWorth + 2, 9);
    expect(scaleAt(scale, soilConstants30cm, 7).freedom).toBeCloseTo(scaleWorth + 2, 9);
    expect(scale.near.squares).toBeCloseTo(8, 9);
  });
});

describe('drawn numbers', () => {
  test('are normal, and the same for the same seed', () => {
    const draw = drawsFrom(7);
    const many = Array.from({ length: 20_000 }, draw);
    const mean = many.reduce((sum, one) => sum + one, 0) / many.length;
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expectWithin(many.reduce((sum, one) => sum + one ** 2, 0) / many.length, 1, 0.04);
    expectWithin(many.filter((one) => one < 1.2816).length / many.length, 0.9, 0.01);
    const [a, b, c, nothing] = [drawsFrom(7), drawsFrom(7), drawsFrom(8), drawsFrom(0)].map((one) => [one(), one()]);
    expect(a).toEqual(b);
    expect(a).not.toEqual(c);
    expect(nothing?.every(Number.isFinite)).toBe(true);
  });

  // Marsaglia 2003 begins from 2463534242 and goes on with 723471715 and 2497366906 (from memory of the paper).
  test('are made of the published row of whole numbers, of two each', () => {
    const [one, two] = [723_471_715, 2_497_366_906].map((whole) => (whole + 0.5) / 2 ** 32) as [number, number];
    const published = Math.sqrt(-2 * Math.log(one)) * Math.cos(2 * Math.PI * two);
    expect(drawsFrom(2_463_534_242)()).toBeCloseTo(published, 12);
  });

  test('the root of a covariance times its own transpose is that covariance, and 0 where nothing spreads', () => {
    const entry = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.array(entry, { minLength: 9, maxLength: 9 }), fc.constantFrom(0, 1, 2, null), (m, flat) => {
        if (flat !== null) m.splice(3 * flat, 3, 0, 0, 0);
        const product = (rows: ArrayLike<number>) =>
          Array.from({ length: 9 }, (_, at) =>
            [0, 1, 2].reduce((sum, k) => sum + rows[3 * Math.floor(at / 3) + k]! * rows[3 * (at % 3) + k]!, 0),
          );
        const wanted = product(m).map((one, at) => (at % 4 === 0 ? one + (at / 4 === flat ? 0 : 1) : one));
        const root = rootOf(Float64Array.from(wanted), 3);
        for (const [at, one] of product(root).entries()) expect(one).toBeCloseTo(wanted[at]!, 6);
        expect([root[1], root[2], root[5]]).toEqual([0, 0, 0]);
        if (flat !== null) expect([...root.slice(3 * flat, 3 * flat + 3)]).toEqual([0, 0, 0]);
      }),
    );
  });
});

describe('the forecast’s own soil layers', () => {
  const estimates = [10, 9.5, 9].map((valueC) => ({ valueC, sdC: 0.6, freedom: 20 }));
  const moved = (layers: (number | null)[]) => withLayers(asked({ days: daysWith([9, 9, 9], layers) }), 0, estimates);

  test('move the middle by a quarter of what they depart, from the first day on, and widen the band by it', () => {
    const [first, second, third] = moved([12, 12.3, null]);
    expect(first).toEqual(estimates[0]);
    expect(second?.valueC).toBeCloseTo(9.5 + 0.25 * 0.8, 9);
    expect(second?.sdC).toBeCloseTo(Math.hypot(0.6, 0.2), 9);
    expect(third).toEqual(estimates[2]);
  });

  test('say nothing where there is none today', () => {
    expect(moved([null, 12, 12])).toEqual(estimates);
  });
});
