import { inRange } from '../../units/in-range.ts';
import { seaLevelPressureKPa } from './pressure.ts';
import { saturationVapourPressure, tetens, vapourPressureOfAir } from './vapour-pressure.ts';

/** Coefficient of a ventilated psychrometer, 1/C (FAO-56 eq. 16). */
export const ventilatedPsychrometer = 0.000662;

/** Air and the two thermometers hung in it. */
export interface WetAndDry {
  /** Dry bulb, -60 to 60 C. */
  readonly dryC: number;
  /** Wet bulb, not above the dry one. */
  readonly wetC: number;
  /** Air pressure, 30 to 110 kPa; sea level where absent. */
  readonly pressureKPa?: number;
  /** Coefficient of the instrument, 0.0005 to 0.0015 per C; ventilated (FAO-56 eq. 16) where absent. */
  readonly coefficientPerC?: number;
}

/** Actual vapour pressure in kPa from dry and wet bulb (FAO-56 eq. 15 and 16). Throws SCIENCE_OUT_OF_RANGE for a pair that cannot be. */
export function vapourPressureOfBulbs(bulbs: WetAndDry): number {
  const { dryC, wetC, pressureKPa = seaLevelPressureKPa, coefficientPerC = ventilatedPsychrometer } = bulbs;
  inRange('an air pressure', pressureKPa, 30, 110, 'kPa');
  inRange('a psychrometer coefficient', coefficientPerC, 0.0005, 0.0015, '1/C');
  const saturation = saturationVapourPressure(dryC);
  inRange('a wet bulb not above the dry one', wetC, -60, dryC, 'C');
  const pressure = saturationVapourPressure(wetC) - coefficientPerC * pressureKPa * (dryC - wetC);
  return inRange('a wet bulb that leaves a vapour pressure', pressure, 0, saturation, 'kPa');
}

/** Relative humidity in percent from dry and wet bulb (FAO-56 eq. 10 with eq. 15). */
export function humidityOfBulbs(bulbs: WetAndDry): number {
  return (100 * vapourPressureOfBulbs(bulbs)) / saturationVapourPressure(bulbs.dryC);
}

/** Air whose wet bulb is sought. */
export interface MoistAir {
  /** Dry bulb, -60 to 60 C. */
  readonly temperatureC: number;
  /** Relative humidity over water, 0 to 100 %. */
  readonly humidityPercent: number;
  /** Air pressure, 30 to 110 kPa; sea level where absent. */
  readonly pressureKPa?: number;
}

/**
 * Wet-bulb temperature in C of a ventilated psychrometer: the temperature at which FAO-56 eq. 15 gives the actual vapour
 * pressure, found by Newton's steps to far below 0.001 C; they come down on it from the dry bulb and never pass it, as the curve
 * rises and bends upwards. Over water, below freezing too.
 */
export function wetBulb({ temperatureC, humidityPercent, pressureKPa = seaLevelPressureKPa }: MoistAir): number {
  const actual = vapourPressureOfAir(temperatureC, humidityPercent);
  const gamma = ventilatedPsychrometer * inRange('an air pressure', pressureKPa, 30, 110, 'kPa');
  let wetC = temperatureC;
  for (let round = 0; round < 30; round++) {
    const saturation = tetens(wetC);
    const excess = saturation - gamma * (temperatureC - wetC) - actual;
    const step = excess / ((4098 * saturation) / (wetC + 237.3) ** 2 + gamma);
    wetC -= step;
    if (Math.abs(step) < 1e-9) break;
  }
  return Math.min(wetC, temperatureC);
}
