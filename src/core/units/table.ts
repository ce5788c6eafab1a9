/** What a unit measures; only units of one kind can be converted into each other. */
export type UnitKind =
  | 'temperature'
  | 'speed'
  | 'length'
  | 'area'
  | 'volume per area'
  | 'mass per area'
  | 'mass per volume'
  | 'mass per mass'
  | 'slope'
  | 'water per depth of soil';

/** One unit: what it measures, and how many of the kind's base unit it holds (a quotient of exact decimals). */
export interface UnitDefinition {
  readonly kind: UnitKind;
  /** Base units in one of this unit, as `[numerator, denominator]`; absent where the relation is no plain factor. */
  readonly factor?: readonly [string, string];
}

const metresPerMile = '1609.344';
const squareMetresPerAcre = '4046.8564224';
const litresPerImperialGallon = '4.54609';
const litresPerUsGallon = '3.785411784';
const gramsPerPound = '453.59237';
const gramsPerOunce = '28.349523125';

/** Litres per acre as litres per hectare: one hectare holds 10,000 / 4046.8564224 acres. */
const perAcre = (amount: string): readonly [string, string] => [`${amount}e4`, squareMetresPerAcre];

/**
 * Every unit that can be converted, by its symbol. The yard (0.9144 m), pound (0.45359237 kg) and what follows from them:
 * international yard and pound agreement 1959; imperial gallon 4.54609 L: UK Units of Measurement Regulations 1995; US gallon
 * 231 cubic inches and acre of 4,840 square yards: NIST Special Publication 811, Appendix B; knot 1.852 km/h: SI Brochure, 8th edition, Table 8.
 */
export const unitTable = {
  C: { kind: 'temperature' },
  F: { kind: 'temperature' },
  'm/s': { kind: 'speed', factor: ['1', '1'] },
  'km/h': { kind: 'speed', factor: ['1', '3.6'] },
  mph: { kind: 'speed', factor: ['0.44704', '1'] },
  kn: { kind: 'speed', factor: ['1.852', '3.6'] },
  m: { kind: 'length', factor: ['1', '1'] },
  km: { kind: 'length', factor: ['1000', '1'] },
  cm: { kind: 'length', factor: ['0.01', '1'] },
  mm: { kind: 'length', factor: ['0.001', '1'] },
  in: { kind: 'length', factor: ['0.0254', '1'] },
  ft: { kind: 'length', factor: ['0.3048', '1'] },
  yd: { kind: 'length', factor: ['0.9144', '1'] },
  mile: { kind: 'length', factor: [metresPerMile, '1'] },
  m2: { kind: 'area', factor: ['1', '1'] },
  ha: { kind: 'area', factor: ['10000', '1'] },
  acre: { kind: 'area', factor: [squareMetresPerAcre, '1'] },
  'L/ha': { kind: 'volume per area', factor: ['1', '1'] },
  'imp gal/acre': { kind: 'volume per area', factor: perAcre(litresPerImperialGallon) },
  'US gal/acre': { kind: 'volume per area', factor: perAcre(litresPerUsGallon) },
  'g/ha': { kind: 'mass per area', factor: ['1', '1'] },
  'kg/ha': { kind: 'mass per area', factor: ['1000', '1'] },
  'lb/acre': { kind: 'mass per area', factor: perAcre(gramsPerPound) },
  'oz/acre': { kind: 'mass per area', factor: perAcre(gramsPerOunce) },
  'g/L': { kind: 'mass per volume', factor: ['1', '1'] },
  '% w/v': { kind: 'mass per volume', factor: ['10', '1'] },
  'g/kg': { kind: 'mass per mass', factor: ['1', '1'] },
  '% w/w': { kind: 'mass per mass', factor: ['10', '1'] },
  '% slope': { kind: 'slope' },
  'deg slope': { kind: 'slope' },
  '1 in': { kind: 'slope' },
  'mm/m': { kind: 'water per depth of soil', factor: ['1', '1'] },
  'in/ft': { kind: 'water per depth of soil', factor: ['1000', '12'] },
} as const satisfies Record<string, UnitDefinition>;

/** Symbol of a unit that can be converted. */
export type UnitId = keyof typeof unitTable;
