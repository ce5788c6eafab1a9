import { describe, expect, test } from 'vitest';
import {
  fallThroughOf,
  type SoilReading,
  soilTemperaturePath,
} from '../../../../../src/core/science/soil/temperature/index.ts';
import { asked, dayAt, daysWith, reading } from './field-days.ts';

const first = (readings: readonly SoilReading[]) => soilTemperaturePath(asked({ readings }), 10)[0]!;

describe('readings that cannot be trusted', () => {
  const good = [reading(10, 11), reading(15, 11), reading(20, 10.5)];

  test('in the wrong order they say the same', () => {
    expect(first([...good].reverse())).toEqual(first(good));
  });

  test.each([[85], [-30], [Number.NaN]])('%d C is left out', (valueC) => {
    expect(first([...good, reading(20, valueC)])).toEqual(first(good));
  });

  test('one that lies ahead of the moment is not read', () => {
    expect(first([...good, reading(22, 4)])).toEqual(first(good));
  });

  test('one up to a minute after the moment is read, for clocks that differ, and no later one', () => {
    const later = (seconds: number) => reading(20 + seconds / 86_400, 9);
    expect(first([...good, later(60)])).not.toEqual(first(good));
    expect(first([...good, later(61)])).toEqual(first(good));
  });

  test.each([
    [-20, -20.1],
    [45, 45.1],
  ])('%d C can be, %d C cannot', (possible, impossible) => {
    expect(first([...good, reading(20, possible)])).not.toEqual(first(good));
    expect(first([...good, reading(20, impossible)])).toEqual(first(good));
  });

  test('one belongs to the first day from thirteen hours before its noon, for clocks that change', () => {
    const early = (hours: number) => first([reading(-hours / 24, 15), ...good]);
    expect(early(11.5)).not.toEqual(first(good));
    expect(early(13)).not.toEqual(first(good));
    expect(early(13.01)).toEqual(first(good));
  });

  test('one from before the days given is not read', () => {
    expect(first([reading(-5, 20), ...good])).toEqual(first(good));
  });

  test('two a minute apart that disagree widen the band about their mean', () => {
    const minute = 1 / 1440;
    const both = first([reading(20 - minute, 8), reading(20, 12)]);
    const same = first([reading(20 - minute, 10), reading(20, 10)]);
    expect(both.sdC).toBeGreaterThan(2 * same.sdC);
    expect(both.valueC).toBeGreaterThan(8);
    expect(both.valueC).toBeLessThan(12);
  });

  test('a sensor that stands still for days counts once', () => {
    const stuck = Array.from({ length: 9 }, (_, day) => reading(12 + day, 10.5));
    expect(first(stuck)).toEqual(first([reading(12, 10.5)]));
  });

  test('two equal readings are no stuck sensor', () => {
    expect(first([reading(18, 10.5), reading(20, 10.5)]).sdC).toBeLessThan(first([reading(18, 10.5)]).sdC);
  });
});

describe('gaps', () => {
  const holed = (from: number, to: number) =>
    daysWith(Array.from({ length: 40 }, (_, day) => (day >= from && day < to ? null : 9)));

  test.each([
    ['before the reading', 5, 15],
    ['between the reading and the day', 16, 20],
    ['ahead', 24, 27],
  ])('in the air %s never narrow the band', (_, from, to) => {
    const asTheAirTells = soilTemperaturePath(asked({ readings: [], at: dayAt(15) }), 10)[0]!.valueC;
    const readings = [reading(15, asTheAirTells)];
    const whole = soilTemperaturePath(asked({ readings }), 10);
    const gap = soilTemperaturePath(asked({ readings, days: holed(from, to) }), 10);
    expect(gap.every(({ sdC }, index) => sdC >= whole[index]!.sdC - 0.02)).toBe(true);
    expect(gap[8]!.sdC).toBeGreaterThan(whole[8]!.sdC - 0.02);
  });

  test('no air at all still gives a band about the reading', () => {
    const path = soilTemperaturePath(asked({ days: holed(0, 40) }), 10);
    expect(path[0]!.valueC).toBeCloseTo(10.5, 0);
    expect(path.every((day) => day.beyondForecast && Number.isFinite(day.sdC))).toBe(true);
  });
});

describe('what cannot be is refused with its code, and in these words', () => {
  const days = asked().days;
  const depth = 'a standard error of 0 C or more and a depth of 0.05 to 1 m';
  test.each([
    ['no days', { days: [] }, '1 to 800 days', '0'],
    ['too many days', { days: daysWith(Array.from({ length: 801 }, () => 9)) }, '1 to 800 days', '801'],
    [
      'a hole between days',
      { days: [...days.slice(0, 10), ...days.slice(12)] },
      'days that follow each other',
      '2026-10-13 after 2026-10-10',
    ],
    [
      'days in the wrong order',
      { days: [...days].reverse() },
      'days that follow each other',
      '2026-11-08 after 2026-11-09',
    ],
    ['air of 80 C', { days: daysWith([80]), at: dayAt(0) }, 'a mean air temperature of -60 to 60 C', '80'],
    ['air of -61 C', { days: daysWith([9, -61]), at: dayAt(0) }, 'a mean air temperature of -60 to 60 C', '-61'],
    ['only days ahead', { at: dayAt(-3) }, 'days that begin no later than the moment of asking', '2026-10-01'],
    ['latitude 95', { latitudeDeg: 95 }, 'a latitude of -90 to 90 degrees', '95'],
    ['a depth of 3 m', { readings: [{ ...reading(20, 10), depthM: 3 }] }, depth, '0.1 C at 3 m'],
    ['an error below 0', { readings: [reading(20, 10, -1)] }, depth, '-1 C at 0.3 m'],
  ])('%s', (_, given, expected, came) => {
    const refusal = expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE', details: { expected, came } });
    expect(() => soilTemperaturePath(asked(given), 10)).toThrow(refusal);
    if (came !== '801') expect(() => fallThroughOf(asked(given), 10)).toThrow(refusal);
  });

  test('the most that is taken: 800 days, air of 60 C either way, and noons two hours out', () => {
    const many = daysWith(Array.from({ length: 800 }, (_, day) => (day === 5 ? 60 : day === 6 ? -60 : 9)));
    expect(soilTemperaturePath(asked({ days: many, at: dayAt(799), readings: [] }), 10)).toHaveLength(1);
    const apart = (hours: number) => {
      const [first, second] = daysWith([9, 9]);
      return asked({ days: [first!, { ...second!, at: dayAt(1 + hours / 24) }], at: dayAt(0), readings: [] });
    };
    for (const hours of [-2, 2]) expect(soilTemperaturePath(apart(hours), 10)).toHaveLength(2);
    for (const hours of [-2.01, 2.01]) {
      expect(() => soilTemperaturePath(apart(hours), 10)).toThrow(
        expect.objectContaining({
          details: { expected: 'days that follow each other', came: '2026-10-02 after 2026-10-01' },
        }),
      );
    }
  });

  test('a clock change and a leap day are no hole', () => {
    const leap = ['2028-02-28', '2028-02-29', '2028-03-01'].map((iso, index) => {
      const at = dayAt(index) as number;
      return { at: (at + (index === 2 ? -3600 : 0)) as (typeof days)[number]['at'], iso, airC: 6 };
    });
    expect(soilTemperaturePath(asked({ days: leap, at: dayAt(0), readings: [reading(0, 6)] }), 10)).toHaveLength(3);
  });
});

describe('the day of asking', () => {
  const half = 0.5 + 7200 / 86_400;

  test.each([
    ['the first day of all, asked at its noon', 0],
    ['as early as a day may begin by the clock: half a day and two hours before its noon', -half],
  ])('%s, is taken', (_, day) => {
    expect(() => soilTemperaturePath(asked({ readings: [], at: dayAt(day) }), 1)).not.toThrow();
  });

  test('a second before the first day begins is refused', () => {
    const early = asked({ readings: [], at: dayAt(-half - 1 / 86_400) });
    expect(() => soilTemperaturePath(early, 1)).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }));
  });
});
