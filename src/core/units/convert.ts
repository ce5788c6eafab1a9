import Big from 'big.js';
import { codedError } from '../errors/coded-error.ts';
import { inRange } from './in-range.ts';
import { slopeFromPercent, slopeToPercent } from './slope.ts';
import { type UnitDefinition, type UnitId, unitTable } from './table.ts';

const Decimal = Big();
Decimal.DP = 60;

/**
 * A value of one unit in another, rounded only once to the nearest number. Throws UNIT_INCOMPATIBLE where the two do not
 * measure the same thing (g/L and g/kg neither: that takes the density), SCIENCE_OUT_OF_RANGE where the value cannot be
 * converted (a level slope as 1 in N, a temperature below absolute zero).
 */
export function convert(value: number, from: UnitId, to: UnitId): number {
  const source: UnitDefinition = unitTable[from];
  const target: UnitDefinition = unitTable[to];
  if (source.kind !== target.kind) {
    throw codedError('UNIT_INCOMPATIBLE', { expected: `a unit of ${target.kind}, such as ${to}`, came: from });
  }
  inRange(`a value in ${from}`, value, -Number.MAX_VALUE, Number.MAX_VALUE, from);
  if (source.kind === 'slope') return slopeFromPercent(slopeToPercent(value, from), to);
  if (source.kind === 'temperature') return convertTemperature(value, from, to);
  const [up, down] = source.factor!;
  const [toUp, toDown] = target.factor!;
  return new Decimal(value).times(up).times(toDown).div(new Decimal(down).times(toUp)).toNumber();
}

/** True where a value of one unit can be given in the other. */
export function areCompatible(from: UnitId, to: UnitId): boolean {
  return unitTable[from].kind === unitTable[to].kind;
}

/** `F = 1.8 C + 32` (NIST Special Publication 811, Appendix B.8); not below absolute zero, -273.15 C. */
function convertTemperature(value: number, from: UnitId, to: UnitId): number {
  const celsius = from === 'F' ? new Decimal(value).minus(32).div('1.8') : new Decimal(value);
  inRange('a temperature', celsius.toNumber(), -273.15, Number.MAX_VALUE, 'C');
  return to === from ? value : (to === 'F' ? celsius.times('1.8').plus(32) : celsius).toNumber();
}
