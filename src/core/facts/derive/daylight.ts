import { isDaylight, sunTimes } from '../../science/sun/times.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactSource } from '../context.ts';
import { derivedChoice, earliest } from './derived.ts';
import { type SunPlace, sunPlaceOf } from './place.ts';

const daySeconds = 24 * hourSeconds;

/** Daylight from sunrise to sunset at the field; good until the sun next rises or sets, or `goodForSeenNowHours`. */
export const deriveDaylight: FactSource = (context) => {
  const place = sunPlaceOf(context);
  if (place === null) return null;
  const { at, parameters } = context;
  const seenNow = epochSeconds(at + numberParameter(parameters, 'goodForSeenNowHours') * hourSeconds);
  const goodUntil = earliest(seenNow, nextSunChange(place, at), place.goodUntil);
  const isLight = isDaylight(place.latitude, place.longitude, at);
  return derivedChoice(context, [isLight ? 'yes' : 'no'], goodUntil, 'from the place and the time');
};

function nextSunChange(place: SunPlace, at: EpochSeconds): EpochSeconds | null {
  const days = [sunTimes(place, at), sunTimes(place, epochSeconds(at + daySeconds))];
  const ahead = days.flatMap(({ sunrise, sunset }) => [sunrise, sunset]).filter((time) => time !== null && time > at);
  return earliest(...ahead);
}
