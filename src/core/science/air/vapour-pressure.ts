import { inRange } from '../../units/in-range.ts';

/**
 * Saturation vapour pressure over water in kPa at an air temperature of -60 to 60 C (FAO-56 eq. 11). Never take it at a mean
 * temperature for a day: the curve bends, see `meanSaturationVapourPressure`.
 */
export function saturationVapourPressure(temperatureC: number): number {
  return tetens(inRange('an air temperature', temperatureC, -60, 60, 'C'));
}

/** `0.6108 exp(17.27 T / (T + 237.3))`, kPa (FAO-56 eq. 11), without a check of range. */
export function tetens(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3));
}

/** Slope of the saturation vapour pressure curve in kPa/C at -60 to 60 C (FAO-56 eq. 13). */
export function vapourPressureSlope(temperatureC: number): number {
  return (4098 * saturationVapourPressure(temperatureC)) / (temperatureC + 237.3) ** 2;
}

/** Mean saturation vapour pressure of a day in kPa from its highest and lowest temperature, C (FAO-56 eq. 12). */
export function meanSaturationVapourPressure(highestC: number, lowestC: number): number {
  return (saturationVapourPressure(highestC) + saturationVapourPressure(lowestC)) / 2;
}

/** Actual vapour pressure in kPa from air temperature (C) and relative humidity (0 to 100 %) of the same moment (FAO-56 eq. 54). */
export function vapourPressureOfAir(temperatureC: number, humidityPercent: number): number {
  return (saturationVapourPressure(temperatureC) * inRange('a relative humidity', humidityPercent, 0, 100, '%')) / 100;
}

/** Dew point in C for an actual vapour pressure of 0.01 to 20 kPa: the inverse of eq. 11 (FAO-56 Annex 3). */
export function dewPoint(vapourPressureKPa: number): number {
  const log = Math.log(inRange('a vapour pressure', vapourPressureKPa, 0.01, 20, 'kPa'));
  return (116.91 + 237.3 * log) / (16.78 - log);
}
