import Big from 'big.js';
import { aboveZero, inRange } from './in-range.ts';

/** Below so many steps a double holds a multiple of a decimal step without doubt. */
const exactSteps = 1e9;
/** A value nearer than this share of a step to where it would round the other way is left to decimal arithmetic. */
const clearShare = 1e-4;

/** The highest multiple of `step` (above 0) that is not above the value, in decimal arithmetic. */
export function floorTo(value: number, step: number): number {
  const near = nearestSteps(value, step);
  if (near !== null) {
    const { steps, perUnit, beyond } = near;
    const nearest = steps / perUnit;
    if (nearest === value) return nearest + 0;
    if (Math.abs(beyond) > clearShare) return (beyond > 0 ? steps : steps - 1) / perUnit;
  }
  return numberOf(floorBig(new Big(finite(value)), step));
}

/** The lowest multiple of `step` (above 0) that is not below the value, in decimal arithmetic. */
export function ceilTo(value: number, step: number): number {
  return 0 - floorTo(-value, step);
}

/** The multiple of `step` (above 0) nearest to the value, in decimal arithmetic; half a step goes away from zero. */
export function roundTo(value: number, step: number): number {
  const near = nearestSteps(value, step);
  if (near !== null && Math.abs(Math.abs(near.beyond) - 0.5) > clearShare) return near.steps / near.perUnit + 0;
  const half = new Big(aboveZero('a step', step, '')).div(2);
  const size = numberOf(floorBig(new Big(finite(value)).abs().plus(half), step));
  return value < 0 ? 0 - size : size;
}

/** The product of two numbers in decimal arithmetic: 8.2 times 100 is 820, not 819.9999. */
export function multiply(a: number, b: number): number {
  return new Big(finite(a)).times(finite(b)).toNumber();
}

/** The quotient of two numbers in decimal arithmetic, to 20 decimal places; the divisor is above 0. */
export function divide(a: number, b: number): number {
  return new Big(finite(a)).div(aboveZero('a divisor', b, '')).toNumber();
}

/** The whole number of steps nearest to a value, and by how many it lies beyond; null where only decimal arithmetic can tell. */
function nearestSteps(value: number, step: number) {
  const perUnit = Math.round(1 / step);
  const steps = Math.round(value * perUnit);
  if (1 / perUnit !== step || !(Math.abs(steps) < exactSteps)) return null;
  return { steps, perUnit, beyond: value * perUnit - steps };
}

function floorBig(value: Big, step: number): Big {
  const size = new Big(aboveZero('a step', step, ''));
  const rest = value.mod(size);
  const floor = value.minus(rest);
  return rest.lt(0) ? floor.minus(size) : floor;
}

function numberOf(value: Big): number {
  return value.toNumber() + 0;
}

function finite(value: number): number {
  return inRange('a number', value, -Number.MAX_VALUE, Number.MAX_VALUE, '');
}
