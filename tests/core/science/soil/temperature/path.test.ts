import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fallThroughOf,
  type SoilReading,
  soilTemperatureAt,
  soilTemperaturePath,
  soilTrendAhead,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { asked, dayAt, daysWith, reading } from './field-days.ts';

const air = fc.array(fc.double({ min: -5, max: 20, noNaN: true }), { minLength: 40, maxLength: 40 });
const value = fc.double({ min: 2, max: 18, noNaN: true });
const widths = (path: ReturnType<typeof soilTemperaturePath>) => path.map(({ sdC }) => sdC);

describe('the band', () => {
  test('grows with every day ahead', () => {
    fc.assert(
      fc.property(air, value, (airC, valueC) => {
        const sd = widths(soilTemperaturePath(asked({ days: daysWith(airC), readings: [reading(20, valueC)] }), 10));
        expect(sd.every((one, index) => index === 0 || one >= sd[index - 1]! - 1e-9)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  test.each([[0], [1], [3], [6], [9]])('is wider where the reading is a day older than %d days', (age) => {
    const sdAt = (days: number) => soilTemperaturePath(asked({ readings: [reading(20 - days, 10.5)] }), 10)[0]!.sdC;
    expect(sdAt(age + 1)).toBeGreaterThan(sdAt(age));
  });

  test('is never narrower for a reading of greater error, where the reading is what the air tells', () => {
    fc.assert(
      fc.property(
        air,
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (airC, sdC, more) => {
          const days = daysWith(airC);
          const { valueC } = soilTemperaturePath(asked({ days, readings: [] }), 10)[0]!;
          const sdFor = (sd: number) =>
            widths(soilTemperaturePath(asked({ days, readings: [reading(20, valueC, sd)] }), 10));
          const wide = sdFor(sdC + more);
          expect(sdFor(sdC).every((sd, index) => wide[index]! >= sd - 1e-9)).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('is wider after a sharp reading far from what the air tells: such soil is of another kind', () => {
    const { valueC } = soilTemperaturePath(asked({ readings: [] }), 10)[0]!;
    const sdFor = (off: number) => soilTemperaturePath(asked({ readings: [reading(20, valueC + off)] }), 10)[7]!.sdC;
    expect(sdFor(6)).toBeGreaterThan(1.1 * sdFor(0.5));
    expect(sdFor(-6)).toBeGreaterThan(1.1 * sdFor(-0.5));
  });

  test('fits itself to the site: wide where its readings jump about, narrow where they follow the air', () => {
    const sdFor = (jump: number) => {
      const readings = Array.from({ length: 21 }, (_, day) => reading(day, 10.5 + (day % 2 === 0 ? jump : -jump)));
      return soilTemperaturePath(asked({ readings }), 10)[7]!.sdC;
    };
    expect(sdFor(1)).toBeGreaterThan(1.3 * sdFor(0.1));
  });

  test('reaches further where it rests on one reading than where it rests on many', () => {
    const reach = (readings: SoilReading[]) => {
      const day = soilTemperaturePath(asked({ readings, airErrorFactor: 0 }), 10)[3]!;
      return (day.high95C - day.valueC) / day.sdC;
    };
    const many = Array.from({ length: 21 }, (_, day) => reading(day, 10.5 + 0.05 * (day % 3)));
    expect(reach([reading(20, 10.5)])).toBeGreaterThan(reach(many));
  });

  test('holds less of an error of the air in hard frost: frost hardly goes down', () => {
    const widening = (airC: number) => {
      const days = daysWith(Array.from({ length: 40 }, () => airC));
      const sd = (airErrorFactor: number) => soilTemperaturePath(asked({ days, airErrorFactor }), 10)[7]!.sdC;
      return sd(1) ** 2 - sd(0) ** 2;
    };
    expect(widening(-15)).toBeLessThan(0.3 * widening(9));
  });

  test('is wider for a reading of another depth, the more the further', () => {
    const sdAt = (depthM: number) =>
      soilTemperaturePath(asked({ readings: [{ ...reading(20, 10), depthM }] }), 10)[0]!.sdC;
    const sd = [0.3, 0.2, 0.1, 0.05].map(sdAt);
    expect(sd.toSorted((a, b) => a - b)).toEqual(sd);
    expect(sd[1]).toBeGreaterThan(sd[0]!);
  });

  test('is wide without any reading, and the 95 % band holds the 80 % band', () => {
    const [bare] = soilTemperaturePath(asked({ readings: [] }), 10);
    const [read] = soilTemperaturePath(asked(), 10);
    expect(bare!.sdC).toBeGreaterThan(3 * read!.sdC);
    expect(bare!.low95C).toBeLessThan(bare!.low80C);
    expect(bare!.high95C).toBeGreaterThan(bare!.high80C);
  });

  test('is wider past the end of the forecast, which is said', () => {
    const short = daysWith(Array.from({ length: 40 }, (_, day) => (day < 25 ? 9 : null)));
    const cut = soilTemperaturePath(asked({ days: short }), 10);
    const whole = soilTemperaturePath(asked(), 10);
    expect(cut.map((day) => day.beyondForecast)).toEqual(cut.map((_, ahead) => ahead >= 5));
    expect(cut[10]!.sdC).toBeGreaterThan(whole[10]!.sdC);
    expect(cut[4]!.sdC).toBeCloseTo(whole[4]!.sdC, 3);
  });

  test('is wider for an aged forecast, and narrower where the air to come is known', () => {
    const sdFor = (airErrorFactor: number) => soilTemperaturePath(asked({ airErrorFactor }), 10)[7]!.sdC;
    expect(sdFor(2)).toBeGreaterThan(sdFor(1));
    expect(sdFor(1)).toBeGreaterThan(sdFor(0));
  });
});

describe('the middle', () => {
  test('rises nowhere when the air is colder', () => {
    fc.assert(
      fc.property(
        air,
        fc.integer({ min: 21, max: 39 }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (airC, day, colder) => {
          const less = airC.map((one, index) => (index === day ? one - colder : one));
          const warm = soilTemperaturePath(asked({ days: daysWith(airC) }), 10);
          const cold = soilTemperaturePath(asked({ days: daysWith(less) }), 10);
          expect(cold.every(({ valueC }, index) => valueC <= warm[index]!.valueC + 1e-9)).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
  });

  test('starts at a sharp reading of the same day', () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 12, noNaN: true }), (valueC) => {
        const [today] = soilTemperaturePath(asked({ readings: [reading(20, valueC, 0.05)] }), 10);
        expect(Math.abs(today!.valueC - valueC)).toBeLessThan(0.2);
      }),
    );
  });

  test('is between its neighbours at any hour between two noons', () => {
    const path = soilTemperaturePath(asked(), 10);
    const between = soilTemperatureAt(asked(), dayAt(22.5), 10);
    const ends = [path[2]!.valueC, path[3]!.valueC];
    expect(between!.valueC).toBeGreaterThanOrEqual(Math.min(...ends));
    expect(between!.valueC).toBeLessThanOrEqual(Math.max(...ends));
    expect(soilTemperatureAt(asked(), dayAt(60), 10)).toBeNull();
  });

  test('moves towards the course of the forecast soil layers, and the band widens where they part', () => {
    const air9 = Array.from({ length: 40 }, () => 9);
    const falling = air9.map((_, day) => 14 - 0.3 * day);
    const own = soilTemperaturePath(asked(), 10)[5]!;
    const led = soilTemperaturePath(asked({ days: daysWith(air9, falling) }), 10)[5]!;
    const shifted = soilTemperaturePath(
      asked({
        days: daysWith(
          air9,
          falling.map((one) => one + 5),
        ),
      }),
      10,
    )[5]!;
    expect(led.valueC).toBeLessThan(own.valueC);
    expect(led.sdC).toBeGreaterThan(own.sdC);
    expect(shifted.valueC).toBeCloseTo(led.valueC, 9);
  });

  test('has learnt the offset of a site from its readings', () => {
    const readings = Array.from({ length: 20 }, (_, day) => reading(day, 13 + 0.1 * (day % 2)));
    const learnt = soilTemperaturePath(asked({ readings }), 10)[10]!;
    expect(learnt.valueC).toBeGreaterThan(soilTemperaturePath(asked(), 10)[10]!.valueC + 0.5);
  });
});

describe('falling through the limit for good', () => {
  const course = (air: (day: number) => number, valueC: number) =>
    fallThroughOf(
      asked({ days: daysWith(Array.from({ length: 50 }, (_, day) => air(day))), readings: [reading(20, valueC)] }),
      10,
    );

  test('comes in order of its chances, and is the same when asked again', () => {
    const found = course((day) => 14 - 0.3 * day, 12);
    const days = [found.day10, found.day50, found.day90].filter((day) => day !== null);
    expect(days.length).toBeGreaterThan(0);
    expect(days.toSorted()).toEqual(days);
    expect(course((day) => 14 - 0.3 * day, 12)).toEqual(found);
  });

  test('is long past in deep cold, and not in sight in summer heat', () => {
    expect(course(() => 0, 3)).toMatchObject({ day10: '2026-10-21', day50: '2026-10-21' });
    expect(course(() => 19, 18)).toMatchObject({ day10: null, day50: null, day90: null, chanceOfWarmingBack: 0 });
  });

  test.each([
    [334, null],
    [335, '2026-10-21'],
  ])('looks at three weeks past the last day, 9 November: usual heat from day %d on puts it at %s', (from, day) => {
    const meanAirCByDayOfYear = Array.from({ length: 366 }, (_, index) => (index + 1 < from ? 2 : 60));
    const climatology = { meanAirCByDayOfYear, spreadC: 1, years: 30, source: 'invented' };
    const days = daysWith(Array.from({ length: 40 }, () => 2));
    expect(fallThroughOf(asked({ days, readings: [reading(20, 4.5)], climatology }), 7)).toMatchObject({
      ...{ day10: day, day50: day, day90: day },
    });
  });

  test('is told for air that is known to be just 0 C on days ahead', () => {
    const days = daysWith(Array.from({ length: 40 }, () => 0));
    const found = fallThroughOf(asked({ days, readings: [reading(20, 3)], airKnownUntil: dayAt(39) }), 10);
    expect(found).toMatchObject({ day10: '2026-10-21', day90: '2026-10-21', chanceOfWarmingBack: 0 });
  });

  test('is surer to warm back where warm days follow cold ones', () => {
    const back = course((day) => (day < 26 ? 3 : 15), 10.2).chanceOfWarmingBack;
    expect(back).toBeGreaterThan(course((day) => (day < 26 ? 8 : 2), 10.2).chanceOfWarmingBack);
  });
});

test('the trend follows the air to come, within a band', () => {
  const trendFor = (to: number) =>
    soilTrendAhead(asked({ days: daysWith(Array.from({ length: 40 }, (_, day) => (day <= 20 ? 9 : to))) }), 3)!;
  expect(trendFor(2).value).toBeLessThan(-0.2);
  expect(trendFor(16).value).toBeGreaterThan(0.2);
  expect(trendFor(9).low).toBeLessThan(trendFor(9).value);
  expect(soilTrendAhead(asked(), 25)).toBeNull();
});
