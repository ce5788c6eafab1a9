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

  test('units that do not measure the same thing are refused with their code', () => {
    for (const [from, to] of pairs.filter(([from, to]) => !areCompatible(from, to))) {
      expect(() => convert(1, from, to)).toThrow(expect.objectContaining({ code: 'UNIT_INCOMPATIBLE' }));
    }
    expect(areCompatible('g/L', 'g/kg')).toBe(false);
    expect(areCompatible('% w/w', '% slope')).toBe(false);
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
