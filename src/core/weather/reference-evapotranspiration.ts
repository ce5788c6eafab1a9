import { isLoamwardError } from '../errors/coded-error.ts';
import { saturationVapourPressure, vapourPressureOfAir } from '../science/air/vapour-pressure.ts';
import { unknownWindAt2m } from '../science/evapotranspiration/day.ts';
import { referenceEvapotranspirationOfHour, unknownSkyShare } from '../science/evapotranspiration/hour.ts';
import { windAt2m } from '../science/wind/over-grass.ts';
import { metresPerSecond } from '../units/brands.ts';
import type { Forecast } from './forecast.ts';
import { valueAtIndex } from './series.ts';
import { elevationOf, type SolarDay, skyHourOf, solarDays, spreadDay } from './solar-day.ts';

/** Reference evapotranspiration of the hour before a stamp, mm, and how it was come by. */
export interface ReferenceHour {
  readonly mm: number;
  /** The service's own, or by FAO-56 hour by hour (eq. 53), or the day's (eq. 6) spread over its sun where radiation is missing. */
  readonly from: 'service' | 'hourly' | 'daily';
}

/** Metres above the ground at which a forecast gives wind. */
const windHeightM = 10;
const known = new WeakMap<Forecast, readonly (ReferenceHour | null)[]>();

/**
 * Reference evapotranspiration of every stamp of a forecast: the service's own where it gives one, else worked out from its
 * weather with the fallbacks of FAO-56 for what is missing (dew point from the lowest temperature, eq. 48; radiation from the
 * temperature range, eq. 50; wind 2 m/s). Null where even the temperature is missing or the place lies beyond the equations.
 */
export function referenceEvapotranspirationHours(forecast: Forecast): readonly (ReferenceHour | null)[] {
  const before = known.get(forecast);
  if (before) return before;
  const serviceMm = forecast.values.et0Mm ?? [];
  let computed: readonly (ReferenceHour | null)[] | null = null;
  const fresh = forecast.times.map((_, index): ReferenceHour | null => {
    const mm = serviceMm[index] ?? null;
    if (mm !== null) return { mm, from: 'service' };
    computed ??= computeEvapotranspiration(forecast);
    return computed[index] ?? null;
  });
  known.set(forecast, fresh);
  return fresh;
}

/** The same without the service's own value: for filling its gaps and for comparing the two. */
export function computeEvapotranspiration(forecast: Forecast): readonly (ReferenceHour | null)[] {
  const days = solarDays(forecast);
  let skyShare = unknownSkyShare;
  return forecast.times.map((_, index) =>
    orNull(() => {
      const day = days.get(index);
      const solar = valueAtIndex(forecast, 'shortwaveRadiationWPerM2', index);
      if (solar === null) return spread(forecast, day, index);
      const temperatureC = meanOfHour(forecast, 'temperature2mC', index);
      const vapourPressureKPa = vapourPressureOf(forecast, day, index, temperatureC);
      if (temperatureC === null || vapourPressureKPa === null) return null;
      const kmh = meanOfHour(forecast, 'windSpeed10mKmh', index);
      const hour = referenceEvapotranspirationOfHour(
        {
          ...skyHourOf(forecast, index),
          elevationM: elevationOf(forecast),
          temperatureC,
          vapourPressureKPa,
          windAt2m: kmh === null ? unknownWindAt2m : metresPerSecond(windAt2m(kmh / 3.6, windHeightM)),
          solarRadiation: solar * 0.0036,
        },
        skyShare,
      );
      skyShare = hour.skyShare;
      return { mm: hour.mm, from: 'hourly' };
    }),
  );
}

function spread(forecast: Forecast, day: SolarDay | undefined, index: number): ReferenceHour | null {
  const mm = day === undefined ? null : spreadDay(forecast, day, index);
  return mm === null ? null : { mm, from: 'daily' };
}

function vapourPressureOf(
  forecast: Forecast,
  day: SolarDay | undefined,
  index: number,
  temperatureC: number | null,
): number | null {
  const dewPointC = meanOfHour(forecast, 'dewPoint2mC', index);
  if (dewPointC !== null) return saturationVapourPressure(dewPointC);
  const percent = meanOfHour(forecast, 'relativeHumidity2mPercent', index);
  if (percent !== null && temperatureC !== null) return vapourPressureOfAir(temperatureC, percent);
  return day?.airC ? saturationVapourPressure(day.airC.lowestC) : null;
}

type Instant = 'temperature2mC' | 'dewPoint2mC' | 'relativeHumidity2mPercent' | 'windSpeed10mKmh';

/** Mean of the hour before a stamp from the values at its two ends; the one known where the other is missing. */
function meanOfHour(forecast: Forecast, variable: Instant, index: number): number | null {
  const end = valueAtIndex(forecast, variable, index);
  const begin = valueAtIndex(forecast, variable, index - 1);
  if (end === null || begin === null) return end ?? begin;
  return (begin + end) / 2;
}

/** Null instead of a refusal of weather or a place beyond the equations: not told, never guessed. */
function orNull(tell: () => ReferenceHour | null): ReferenceHour | null {
  try {
    return tell();
  } catch (error) {
    if (isLoamwardError(error) && error.code === 'SCIENCE_OUT_OF_RANGE') return null;
    throw error;
  }
}
