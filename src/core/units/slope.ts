import { aboveZero, inRange } from './in-range.ts';
import type { UnitId } from './table.ts';

const radians = Math.PI / 180;

/** A slope as percent rise over run: from degrees (0 to below 90) 100 tan, from "1 in N" (N above 0) 100 / N. */
export function slopeToPercent(value: number, from: UnitId): number {
  if (from === 'deg slope') return 100 * Math.tan(inRange('a slope', value, 0, 89.99, 'degrees') * radians);
  if (from === '1 in') return 100 / aboveZero('the N of a slope of 1 in N', value, '');
  return inRange('a slope', value, 0, Number.MAX_VALUE, '%');
}

/** A slope of so many percent (0 or more) in degrees or as the N of "1 in N"; level ground has no N. */
export function slopeFromPercent(percent: number, to: UnitId): number {
  if (to === 'deg slope') return Math.atan(percent / 100) / radians;
  if (to === '1 in') return 100 / aboveZero('a slope that is not level', percent, '%');
  return percent;
}
