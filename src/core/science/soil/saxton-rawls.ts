import { aboveZero, inRange } from '../../units/in-range.ts';
import type { SandAndClay } from './texture-class.ts';

/** A soil to be estimated: sand and clay in percent, and its organic matter. */
export interface MineralSoil extends SandAndClay {
  /** Organic matter, 0 to 8 % by mass. */
  readonly organicMatterPercent: number;
}

/** Water that a soil holds, and how it lets it through. */
export interface SoilWater {
  /** Water held at 1500 kPa, m3/m3: what a plant cannot take up. */
  readonly wiltingPoint: number;
  /** Water held at 33 kPa, m3/m3: what is left once the soil has drained. */
  readonly fieldCapacity: number;
  /** Water held with every pore full, m3/m3. */
  readonly saturation: number;
  /** Conductivity of the saturated soil, mm/h. */
  readonly conductivityMmPerH: number;
  /** Dry bulk density, g/cm3. */
  readonly bulkDensity: number;
}

/**
 * Water held at wilting point, field capacity and saturation, conductivity and bulk density by Saxton & Rawls 2006 (Soil Sci.
 * Soc. Am. J. 70:1569-1578, eq. 1 to 3, 5, 6, 15, 16 and 18), at the usual density. For 0 to 60 % clay and 0 to 8 % organic
 * matter, as the authors bound it: not for peat. A soil for which the equations give nothing sound is SCIENCE_OUT_OF_RANGE.
 */
export function estimateSoilWater({ sandPercent, clayPercent, organicMatterPercent }: MineralSoil): SoilWater {
  inRange('a sand content', sandPercent, 0, 100, '%');
  inRange('a clay content', clayPercent, 0, 60, '%');
  inRange('sand and clay together', sandPercent + clayPercent, 0, 100, '%');
  inRange('an organic matter content', organicMatterPercent, 0, 8, '%');
  const [s, c, om] = [sandPercent / 100, clayPercent / 100, organicMatterPercent];
  const wiltingPoint = aboveZero('a soil with a wilting point', waterAt1500(s, c, om), 'm3/m3');
  const fieldCapacity = waterAt33(s, c, om);
  aboveZero('a soil with available water', fieldCapacity - wiltingPoint, 'm3/m3');
  const drained = aboveZero('a soil with pores that drain', waterAbove33(s, c, om) - 0.097 * s + 0.043, 'm3/m3');
  const saturation = fieldCapacity + drained;
  const slope = Math.log(fieldCapacity / wiltingPoint) / Math.log(1500 / 33);
  return {
    wiltingPoint,
    fieldCapacity,
    saturation,
    conductivityMmPerH: 1930 * drained ** (3 - slope),
    bulkDensity: (1 - saturation) * 2.65,
  };
}

function waterAt1500(s: number, c: number, om: number): number {
  const first = -0.024 * s + 0.487 * c + 0.006 * om + 0.005 * s * om - 0.013 * c * om + 0.068 * s * c + 0.031;
  return first + (0.14 * first - 0.02);
}

function waterAt33(s: number, c: number, om: number): number {
  const first = -0.251 * s + 0.195 * c + 0.011 * om + 0.006 * s * om - 0.027 * c * om + 0.452 * s * c + 0.299;
  return first + (1.283 * first ** 2 - 0.374 * first - 0.015);
}

function waterAbove33(s: number, c: number, om: number): number {
  const first = 0.278 * s + 0.034 * c + 0.022 * om - 0.018 * s * om - 0.027 * c * om - 0.584 * s * c + 0.078;
  return first + (0.636 * first - 0.107);
}
