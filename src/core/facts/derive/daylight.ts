import { isDaylight } from '../../science/sun/times.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactSource } from '../context.ts';
import { derivedChoice, earliest } from './derived.ts';
import { nextSunMark, sunPlaceOf } from './place.ts';

/** Daylight from sunrise to sunset at the field; good until the sun next rises or sets, or `goodForSeenNowHours`. */
export const deriveDaylight: FactSource = (context) => {
  const place = sunPlaceOf(context);
  if (place === null) return null;
  const { at, parameters } = context;
  const seenNow = epochSeconds(at + numberParameter(parameters, 'goodForSeenNowHours') * hourSeconds);
  const goodUntil = earliest(seenNow, nextSunMark(place, at, 0, 0), place.goodUntil);
  const isLight = isDaylight(place.latitude, place.longitude, at);
  return derivedChoice(context, [isLight ? 'yes' : 'no'], goodUntil, 'from the place and the time');
};
