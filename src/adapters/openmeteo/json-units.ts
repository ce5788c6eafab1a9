import { codedError } from '../../core/errors/coded-error.ts';
import type { WeatherVariable } from '../../core/weather/forecast.ts';
import { variableMeanings } from '../../core/weather/variables.ts';

type Convert = (value: number) => number;

const same: Convert = (value) => value;

/**
 * From a unit symbol of the service's JSON to our unit. Factors are exact by definition: 1 mile = 1.609344 km,
 * 1 knot = 1.852 km/h, 1 inch = 25.4 mm (NIST SP 811, appendix B).
 */
const conversions: Readonly<Record<string, Readonly<Record<string, Convert>>>> = {
  C: { '°C': same, '°F': (value) => ((value - 32) * 5) / 9 },
  '%': { '%': same },
  'km/h': {
    'km/h': same,
    'mp/h': (value) => value * 1.609344,
    mph: (value) => value * 1.609344,
    'm/s': (value) => value * 3.6,
    kn: (value) => value * 1.852,
  },
  mm: { mm: same, inch: (value) => value * 25.4 },
  deg: { '°': same },
  'W/m2': { 'W/m²': same },
  'm3/m3': { 'm³/m³': same },
};

/**
 * How to turn the values of a column into our unit; null where the service says "undefined", its word for a variable that the
 * model lacks. Throws FORECAST_WRONG_UNIT for a unit that is absent or unknown.
 */
export function conversionTo(column: WeatherVariable, unit: string | undefined, name: string): Convert | null {
  if (unit === 'undefined') return null;
  const known = conversions[variableMeanings[column].unit] ?? {};
  const convert = unit !== undefined && Object.hasOwn(known, unit) ? known[unit] : undefined;
  if (convert) return convert;
  throw codedError('FORECAST_WRONG_UNIT', {
    expected: `${name} in one of ${Object.keys(known).join(', ')}`,
    came: unit ?? 'no unit',
    pointer: `/hourly_units/${name}`,
  });
}
