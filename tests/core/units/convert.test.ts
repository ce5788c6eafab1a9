import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LoamwardError } from '../../../src/core/errors/coded-error.ts';
import { areCompatible, convert } from '../../../src/core/units/convert.ts';
import { type UnitId, unitTable } from '../../../src/core/units/table.ts';

const nist = 'NIST Special Publication 811, Appendix B';
const exact = 'follows from the exact definitions of the international yard, pound, gallon and nautical mile';

/** [value, from, to, expected, relative tolerance, source] */
const rows: readonly [number, UnitId, UnitId, number, number, string][] = [
  [0, 'C', 'F', 32, 0, nist],
  [100, 'C', 'F', 212, 0, nist],
  [-40, 'F', 'C', -40, 0, nist],
  [50, 'F', 'C', 10, 0, nist],
  [9.8, 'C', 'C', 9.8, 0, nist],
  [36, 'km/h', 'm/s', 10, 0, exact],
  [1, 'mph', 'km/h', 1.609344, 0, nist],
  [1, 'kn', 'km/h', 1.852, 0, 'SI Brochure, 8th edition, Table 8'],
  [1, 'kn', 'm/s', 0.514444, 1e-6, nist],
  [1, 'mph', 'm/s', 0.44704, 0, nist],
  [12, 'in', 'ft', 1, 0, exact],
  [3, 'ft', 'yd', 1, 0, exact],
  [1760, 'yd', 'mile', 1, 0, exact],
  [1, 'mile', 'km', 1.609344, 0, nist],
  [1, 'in', 'mm', 25.4, 0, nist],
  [12, 'in', 'cm', 30.48, 0, nist],
  [8.2, 'km', 'm', 8200, 0, exact],
  [1, 'acre', 'ha', 0.40468564224, 0, exact],
  [1, 'ha', 'acre', 2.471054, 1e-6, exact],
  [1, 'ha', 'm2', 10000, 0, nist],
  [20, 'imp gal/acre', 'L/ha', 224.67, 1e-4, exact],
  [20, 'US gal/acre', 'L/ha', 187.08, 1e-4, exact],
  [1, 'lb/acre', 'kg/ha', 1.120851, 1e-6, exact],
  [16, 'oz/acre', 'lb/acre', 1, 0, exact],
  [840, 'g/ha', 'kg/ha', 0.84, 0, exact],
  [40, '% w/v', 'g/L', 400, 0, 'percent by volume is grams in 100 mL'],
  [80, '% w/w', 'g/kg', 800, 0, 'percent by mass is grams in 100 g'],
  [45, 'deg slope', '% slope', 100, 1e-12, 'tangent of 45 degrees'],
  [20, '1 in', '% slope', 5, 0, 'rise over run'],
  [2, '% slope', '1 in', 50, 0, 'rise over run'],
  [5, '% slope', 'deg slope', 2.8624, 1e-5, 'arc tangent of 0.05'],
  [1, 'in/ft', 'mm/m', 83.33, 1e-4, 'computed: 25.4 mm in 0.3048 m'],
];

describe('units', () => {
  test.each(rows)('%d %s in %s is %d (relative tolerance %d; %s)', (value, from, to, expected, tolerance) => {
    const converted = convert(value, from, to);
    expect(Math.abs(converted - expected)).toBeLessThanOrEqual(tolerance * Math.abs(expected));
  });

  test('an imperial gallon is 1.2 US gallons and never taken for one', () => {
    expect(convert(1, 'imp gal/acre', 'US gal/acre')).toBeCloseTo(1.20095, 5);
  });

  const ids = Object.keys(unitTable) as UnitId[];
  const pairs = ids.flatMap((from) => ids.map((to) => [from, to] as const));

  test('there and back gives the value again, for every pair of one kind', () => {
    const value = fc.double({ min: 0.001, max: 80, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...pairs.filter(([from, to]) => areCompatible(from, to))), value, ([from, to], n) => {
        expect(convert(convert(n, from, to), to, from) / n).toBeCloseTo(1, 9);
      }),
    );
  });

  test('more of one unit is more of the other, but for the N of a slope of 1 in N', () => {
    const rising = pairs.filter(([from, to]) => areCompatible(from, to) && (from === '1 in') === (to === '1 in'));
    const value = fc.double({ min: 0.001, max: 80, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...rising), value, value, ([from, to], a, b) => {
        fc.pre(b - a > 1e-6);
        expect(convert(a, from, to)).toBeLessThan(convert(b, from, to));
      }),
    );
    expect(convert(20, '1 in', '% slope')).toBeLessThan(convert(10, '1 in', '% slope'));
  });

  test('a temperature in its own unit stays as it is, to the last digit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('C' as const, 'F' as const),
        fc.double({ min: -200, max: 200, noNaN: true }),
        (unit, n) => {
          expect(convert(n, unit, unit)).toBe(n);
        },
      ),
    );
  });

  test('units that do not measure the same thing are refused with their code', () => {
    for (const [from, to] of pairs.filter(([from, to]) => !areCompatible(from, to))) {
      expect(() => convert(1, from, to)).toThrow(expect.objectContaining({ code: 'UNIT_INCOMPATIBLE' }));
    }
    expect(areCompatible('g/L', 'g/kg')).toBe(false);
    expect(areCompatible('% w/w', '% slope')).toBe(false);
  });

  test.each([
    ['UNIT_INCOMPATIBLE', 'a unit of mass per mass, such as g/kg', 'g/L', () => convert(1, 'g/L', 'g/kg')],
    ['SCIENCE_OUT_OF_RANGE', 'a temperature of -273.15 or more C', '-273.16', () => convert(-273.16, 'C', 'F')],
    ['SCIENCE_OUT_OF_RANGE', 'a slope of 0 to 89.99 degrees', '90', () => convert(90, 'deg slope', '1 in')],
    ['SCIENCE_OUT_OF_RANGE', 'a slope of 0 or more %', '-1', () => convert(-1, '% slope', 'deg slope')],
    ['SCIENCE_OUT_OF_RANGE', 'the N of a slope of 1 in N above 0', '0', () => convert(0, '1 in', '% slope')],
    ['SCIENCE_OUT_OF_RANGE', 'a slope that is not level above 0 %', '0', () => convert(0, '% slope', '1 in')],
    ['SCIENCE_OUT_OF_RANGE', /^a value in mph of .* mph$/, 'NaN', () => convert(Number.NaN, 'mph', 'km/h')],
  ] as const)('%s says %s', (code, says, came, call) => {
    const expected = typeof says === 'string' ? says : expect.stringMatching(says);
    expect(call).toThrow(expect.objectContaining({ code, details: { expected, came } }));
  });

  test('absolute zero and the steepest slope are taken, and level ground stays level', () => {
    expect(convert(-273.15, 'C', 'F')).toBe(-459.67);
    expect(convert(89.99, 'deg slope', '% slope')).toBeGreaterThan(500_000);
    expect([convert(0, 'deg slope', '% slope'), convert(0, '% slope', 'deg slope')]).toEqual([0, 0]);
    expect(convert(7.3, '% slope', '% slope')).toBe(7.3);
    expect(convert(98.6, 'F', 'F')).toBe(98.6);
  });

  test.each([
    [-300, 'C', 'F'],
    [-500, 'F', 'F'],
    [Number.NaN, 'mph', 'km/h'],
    [Number.POSITIVE_INFINITY, 'm', 'ft'],
    [0, '% slope', '1 in'],
    [0, '1 in', '% slope'],
    [90, 'deg slope', '% slope'],
    [-1, '% slope', 'deg slope'],
  ] as const)('%d %s cannot be given in %s and is refused with its code', (value, from, to) => {
    expect(() => convert(value, from, to)).toThrow(LoamwardError);
    expect(() => convert(value, from, to)).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }));
  });
});
