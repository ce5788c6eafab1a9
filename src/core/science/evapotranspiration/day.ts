import { type MetresPerSecond, metresPerSecond } from '../../units/brands.ts';
import { type DailyHumidity, dailyVapourPressure } from '../air/daily-vapour-pressure.ts';
import { pressureAtElevation, psychrometricConstant } from '../air/pressure.ts';
import { meanSaturationVapourPressure, vapourPressureSlope } from '../air/vapour-pressure.ts';
import { windAt2m } from '../wind/over-grass.ts';
import { referenceEvapotranspirationDaily } from './penman-monteith.ts';
import { clearSkyRadiation, netLongwave, netShortwave, radiationFromSunshine } from './radiation.ts';
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
  /** Mean wind, and the height at which it is measured. */
  readonly wind: MetresPerSecond;
  readonly windHeightM: number;
  /** Solar radiation in MJ/m2/day, or hours of sunshine. */
  readonly sun: { readonly solarRadiation: number } | { readonly sunshineH: number };
}

/** Reference evapotranspiration of a day in mm/day from plain weather, by all steps of FAO-56 (Box 11), soil heat taken as 0. */
export function referenceEvapotranspirationOfDay(day: StationDay): number {
  const { highestC, lowestC } = day;
  const actualKPa = dailyVapourPressure(highestC, lowestC, day.humidity);
  const temperatureC = (highestC + lowestC) / 2;
  return referenceEvapotranspirationDaily({
    netRadiation: netRadiationOfDay(day, actualKPa),
    soilHeat: 0,
    temperatureC,
    windAt2m: metresPerSecond(windAt2m(day.wind, day.windHeightM)),
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

function solarRadiationOf({ sun, latitude, dayOfYear }: StationDay, extraterrestrial: number): number {
  if ('solarRadiation' in sun) return sun.solarRadiation;
  return radiationFromSunshine(sun.sunshineH, daylightHours(latitude, dayOfYear), extraterrestrial);
}
