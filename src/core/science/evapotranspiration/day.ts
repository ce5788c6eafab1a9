import { type MetresPerSecond, metresPerSecond } from '../../units/brands.ts';
import { type DailyHumidity, dailyVapourPressure } from '../air/daily-vapour-pressure.ts';
import { pressureAtElevation, psychrometricConstant } from '../air/pressure.ts';
import { meanSaturationVapourPressure, vapourPressureSlope } from '../air/vapour-pressure.ts';
import { windAt2m } from '../wind/over-grass.ts';
import { referenceEvapotranspirationDaily } from './penman-monteith.ts';
import {
  clearSkyRadiation,
  netLongwave,
  netShortwave,
  radiationFromSunshine,
  radiationFromTemperature,
} from './radiation.ts';
import { daylightHours, extraterrestrialRadiation } from './sky.ts';

/** A day's weather at a station. */
export interface StationDay {
  /** Degrees; within 65 of the equator, where the day has some sun. */
  readonly latitude: number;
  readonly elevationM: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
  readonly highestC: number;
  readonly lowestC: number;
  readonly humidity: DailyHumidity;
  /** Mean wind, null where not known, and the height at which it is measured. */
  readonly wind: MetresPerSecond | null;
  readonly windHeightM: number;
  /** Solar radiation in MJ/m2/day, or hours of sunshine, or where neither is known whether the place is inland or by the coast. */
  readonly sun: { readonly solarRadiation: number } | { readonly sunshineH: number } | { readonly unknown: Setting };
}

/** Whether a large water body governs the air of a place. */
export type Setting = 'inland' | 'coast';

/** Coefficient of radiation from the temperature range (FAO-56 eq. 50). */
const rangeCoefficients: Readonly<Record<Setting, number>> = { inland: 0.16, coast: 0.19 };

/** Wind at 2 m taken where none is known: the mean of over 2,000 stations (FAO-56 ch. 3, missing wind data). */
export const unknownWindAt2m = metresPerSecond(2);

/**
 * Reference evapotranspiration of a day in mm/day from plain weather, by all steps of FAO-56 (Box 11), soil heat taken as 0. What
 * is missing is filled as the paper says: humidity by eq. 48, radiation by eq. 50, wind by 2 m/s.
 */
export function referenceEvapotranspirationOfDay(day: StationDay): number {
  const { highestC, lowestC } = day;
  const actualKPa = dailyVapourPressure(highestC, lowestC, day.humidity);
  const temperatureC = (highestC + lowestC) / 2;
  return referenceEvapotranspirationDaily({
    netRadiation: netRadiationOfDay(day, actualKPa),
    soilHeat: 0,
    temperatureC,
    windAt2m: day.wind === null ? unknownWindAt2m : metresPerSecond(windAt2m(day.wind, day.windHeightM)),
    saturationKPa: meanSaturationVapourPressure(highestC, lowestC),
    actualKPa,
    slope: vapourPressureSlope(temperatureC),
    psychrometric: psychrometricConstant(pressureAtElevation(day.elevationM)),
  });
}

/** Net radiation of a day in MJ/m2/day (FAO-56 eq. 40), from an actual vapour pressure in kPa. */
export function netRadiationOfDay(day: StationDay, actualKPa: number): number {
  const extraterrestrial = extraterrestrialRadiation(day.latitude, day.dayOfYear);
  const solar = solarRadiationOf(day, extraterrestrial);
  const clearSky = clearSkyRadiation(day.elevationM, extraterrestrial);
  const { highestC, lowestC } = day;
  return netShortwave(solar) - netLongwave({ highestC, lowestC, vapourPressureKPa: actualKPa, solar, clearSky });
}

function solarRadiationOf(day: StationDay, extraterrestrial: number): number {
  const { sun, latitude, dayOfYear } = day;
  if ('solarRadiation' in sun) return sun.solarRadiation;
  if ('sunshineH' in sun)
    return radiationFromSunshine(sun.sunshineH, daylightHours(latitude, dayOfYear), extraterrestrial);
  return radiationFromTemperature(day.highestC, day.lowestC, extraterrestrial, rangeCoefficients[sun.unknown]);
}
