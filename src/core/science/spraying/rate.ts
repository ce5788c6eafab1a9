import { aboveZero, inRange } from '../../units/in-range.ts';
import { ceilTo, divide, multiply } from '../../units/round.ts';

/** How fast a strip is sprayed: speed in km/h and width in metres, of one nozzle or of the whole boom, both above 0. */
export interface Strip {
  readonly speedKmh: number;
  readonly widthM: number;
}

/** Flow in L/min that gives so many L/ha on a strip: `L/ha x km/h x m / 600` (common practice; 600 follows from the units). */
export function flowForRate(litresPerHa: number, strip: Strip): number {
  return (inRange('a volume rate', litresPerHa, 0, 10_000, 'L/ha') * hectaresPerHour(strip)) / 60;
}

/** Volume in L/ha that a flow in L/min gives on a strip: `600 x L/min / (km/h x m)` (common practice). */
export function rateOfFlow(litresPerMinute: number, strip: Strip): number {
  return (inRange('a flow', litresPerMinute, 0, 10_000, 'L/min') * 60) / hectaresPerHour(strip);
}

/** Forward speed in km/h from the seconds (above 0) taken for 100 m: `360 / s` (common practice). */
export function speedOver100m(seconds: number): number {
  return 360 / aboveZero('a time for 100 m', seconds, 's');
}

/** Fills of a tank that an area takes, the last one counted whole: volume rate (L/ha), area (ha), tank (L, above 0). */
export function tankLoads(litresPerHa: number, areaHa: number, tankL: number): number {
  inRange('an area', areaHa, 0, 100_000, 'ha');
  return ceilTo(divide(multiply(inRange('a volume rate', litresPerHa, 0, 10_000, 'L/ha'), areaHa), tankL), 1);
}

/** Litres of product in a full tank: tank (L) over volume rate (L/ha, above 0) times product (L/ha). */
export function productPerTank(tankL: number, litresPerHa: number, productLPerHa: number): number {
  inRange('a tank', tankL, 0, 100_000, 'L');
  return divide(multiply(tankL, inRange('a product rate', productLPerHa, 0, 1000, 'L/ha')), litresPerHa);
}

function hectaresPerHour({ speedKmh, widthM }: Strip): number {
  return (aboveZero('a speed', speedKmh, 'km/h') * aboveZero('a width', widthM, 'm')) / 10;
}
