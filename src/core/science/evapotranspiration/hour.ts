import type { MetresPerSecond } from '../../units/brands.ts';
import { pressureAtElevation, psychrometricConstant } from '../air/pressure.ts';
import { saturationVapourPressure, vapourPressureSlope } from '../air/vapour-pressure.ts';
import { extraterrestrialRadiationOfHour, type SkyHour, tellsCloud } from './hour-sky.ts';
import { referenceEvapotranspirationHourly } from './penman-monteith.ts';
import { clearSkyRadiation, netLongwaveOf, netShortwave } from './radiation.ts';

/** Stefan-Boltzmann constant, MJ/K4/m2/h (FAO-56 eq. 39 as for hourly steps). */
const stefanBoltzmannHourly = 2.043e-10;

/** Share of clear-sky radiation taken for a night of which no day before is known: 0.4 to 0.6 where air is humid (FAO-56 ch. 4). */
export const unknownSkyShare = 0.5;

/** An hour's weather. */
export interface WeatherHour extends SkyHour {
  readonly elevationM: number;
  readonly temperatureC: number;
  /** Actual vapour pressure, kPa; above saturation counts as saturated. */
  readonly vapourPressureKPa: number;
  readonly windAt2m: MetresPerSecond;
  /** Solar radiation of the hour, MJ/m2/h. */
  readonly solarRadiation: number;
}

/** Reference evapotranspiration of an hour, and the sky it leaves for the night. */
export interface EvapotranspirationOfHour {
  /** mm; slightly below 0 where dew forms. */
  readonly mm: number;
  /** Solar as a share of clear-sky radiation, 0 to 1: this hour's where the sun tells it, else the share handed in. */
  readonly skyShare: number;
}

/**
 * Reference evapotranspiration of an hour (FAO-56 eq. 53), radiation by eq. 28 to 33, 37 to 40, soil heat by eq. 45 (day) and 46
 * (night). `skyShare` is the last share of clear-sky radiation that the sun told, as the paper has it for nights.
 */
export function referenceEvapotranspirationOfHour(hour: WeatherHour, skyShare: number): EvapotranspirationOfHour {
  const { temperatureC, elevationM } = hour;
  const extraterrestrial = extraterrestrialRadiationOfHour(hour);
  const clearSky = clearSkyRadiation(elevationM, extraterrestrial);
  const told = tellsCloud(hour) ? Math.min(1, hour.solarRadiation / clearSky) : skyShare;
  const saturationKPa = saturationVapourPressure(temperatureC);
  const actualKPa = Math.min(saturationKPa, hour.vapourPressureKPa);
  const emitted = stefanBoltzmannHourly * (temperatureC + 273.16) ** 4;
  const netRadiation = netShortwave(hour.solarRadiation) - netLongwaveOf(emitted, actualKPa, told);
  const mm = referenceEvapotranspirationHourly({
    netRadiation,
    soilHeat: netRadiation * (extraterrestrial > 0 ? 0.1 : 0.5),
    temperatureC,
    windAt2m: hour.windAt2m,
    saturationKPa,
    actualKPa,
    slope: vapourPressureSlope(temperatureC),
    psychrometric: psychrometricConstant(pressureAtElevation(elevationM)),
  });
  return { mm, skyShare: told };
}
