import { inRange } from '../../units/in-range.ts';
import { meanSaturationVapourPressure, saturationVapourPressure, vapourPressureOfAir } from './vapour-pressure.ts';

/** What is known of a day's humidity; temperatures in C, relative humidities in percent. */
export type DailyHumidity =
  | { readonly dewPointC: number }
  | { readonly highestPercent: number; readonly lowestPercent: number }
  | { readonly highestPercent: number }
  | { readonly meanPercent: number }
  | { readonly unknown: true };

/**
 * Actual vapour pressure of a day in kPa from whatever is known of its humidity, best first as FAO-56 ranks it: dew point
 * (eq. 14), highest and lowest humidity (eq. 17), highest alone (eq. 18), mean (eq. 19), else the lowest temperature taken as
 * dew point (eq. 48). Temperatures -60 to 60 C, humidities 0 to 100 %.
 */
export function dailyVapourPressure(highestC: number, lowestC: number, humidity: DailyHumidity): number {
  if ('dewPointC' in humidity) return saturationVapourPressure(humidity.dewPointC);
  if ('lowestPercent' in humidity) {
    const atNight = vapourPressureOfAir(lowestC, humidity.highestPercent);
    return (atNight + vapourPressureOfAir(highestC, humidity.lowestPercent)) / 2;
  }
  if ('highestPercent' in humidity) return vapourPressureOfAir(lowestC, humidity.highestPercent);
  if ('meanPercent' in humidity) {
    const share = inRange('a relative humidity', humidity.meanPercent, 0, 100, '%') / 100;
    return share * meanSaturationVapourPressure(highestC, lowestC);
  }
  return saturationVapourPressure(lowestC);
}
