import { deltaT } from '../../science/air/delta-t.ts';
import { pressureAtElevation, seaLevelPressureKPa } from '../../science/air/pressure.ts';
import type { FactContext, FactSource } from '../context.ts';
import { asNumber, derivedNumber, earliest } from './derived.ts';

/**
 * Delta T from air temperature and humidity. It rises with temperature and falls with humidity, so the four corners of
 * their bands hold its band.
 */
export const deriveDeltaT: FactSource = (context) => {
  const air = asNumber(context.fact('air.temperatureC'));
  const humidity = asNumber(context.fact('air.relativeHumidityPercent'));
  if (air === null || humidity === null) return null;
  const pressureKPa = pressureOf(context);
  const of = (temperatureC: number, humidityPercent: number) => deltaT({ temperatureC, humidityPercent, pressureKPa });
  const corners = [air.low, air.high].flatMap((t) => [humidity.low, humidity.high].map((h) => of(t, h)));
  const banded = { value: of(air.value, humidity.value), low: Math.min(...corners), high: Math.max(...corners) };
  const note = 'from air temperature and relative humidity';
  return derivedNumber('air.deltaTC', banded, context.at, earliest(air.goodUntil, humidity.goodUntil), note);
};

/** Air pressure at the height of the forecast's cell, kPa; that at sea level where the height is not known. */
export function pressureOf({ trusted }: FactContext): number {
  const elevationM = trusted?.forecast.place.elevationM ?? null;
  return elevationM === null || !(elevationM >= -500 && elevationM <= 9000)
    ? seaLevelPressureKPa
    : pressureAtElevation(elevationM);
}
