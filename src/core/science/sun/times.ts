import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { remember } from '../../units/remember.ts';
import { type Place, sunPosition } from './position.ts';

/** True height of the middle of the sun at sunrise and sunset, degrees: 34' of refraction and 16' of radius (Meeus 1998, ch. 15). */
export const horizonDeg = -0.833;
/** True height of the middle of the sun at which civil twilight begins and ends, degrees. */
export const civilTwilightDeg = -6;

/** The sun's times of one solar day, from midnight to midnight by the sun; null where it does not pass that height that day. */
export interface SunTimes {
  readonly dawn: EpochSeconds | null;
  readonly sunrise: EpochSeconds | null;
  readonly noon: EpochSeconds;
  readonly sunset: EpochSeconds | null;
  readonly dusk: EpochSeconds | null;
  /** True where the sun is up at its highest. With no sunrise: a day without night if true, else a night without day. */
  readonly upAtNoon: boolean;
}

const halfDay = 43_200;

/**
 * Civil dawn, sunrise, noon, sunset and civil dusk of the solar day in which the moment lies, to about a minute below 65
 * degrees of latitude; over a level horizon.
 */
export function sunTimes({ latitude, longitude }: Place, at: EpochSeconds): SunTimes {
  if (last?.at === at && last.latitude === latitude && last.longitude === longitude) return last.times;
  const times = timesAbout(latitude, longitude, Math.round(solarNoon({ latitude, longitude }, at)));
  last = { latitude, longitude, at, times };
  return times;
}

/** What was last asked for: of one moment several things are worked out. */
let last: (Place & { readonly at: EpochSeconds; readonly times: SunTimes }) | null = null;

const timesAbout = remember((latitude: number, longitude: number, noonSecond: number): SunTimes => {
  const place = { latitude, longitude };
  const noon = epochSeconds(noonSecond);
  return {
    dawn: passing(place, noon, -halfDay, civilTwilightDeg),
    ...horizonAbout(latitude, longitude, noonSecond),
    noon,
    dusk: passing(place, noon, halfDay, civilTwilightDeg),
  };
});

/** Sunrise, sunset and whether the sun is up at noon of the solar day in which the moment lies, as `sunTimes` has them: half the work. */
export function sunriseAndSunset(place: Place, at: EpochSeconds): Pick<SunTimes, 'sunrise' | 'sunset' | 'upAtNoon'> {
  return horizonAbout(place.latitude, place.longitude, Math.round(solarNoon(place, at)));
}

const horizonAbout = remember((latitude: number, longitude: number, noonSecond: number) => {
  const place = { latitude, longitude };
  const noon = epochSeconds(noonSecond);
  return {
    sunrise: passing(place, noon, -halfDay, horizonDeg),
    sunset: passing(place, noon, halfDay, horizonDeg),
    upAtNoon: sunPosition(place, noon).elevationDeg >= horizonDeg,
  };
});

/** Hours from sunrise to sunset of the solar day in which the moment lies, 0 to 24. */
export function dayLength(place: Place, at: EpochSeconds): number {
  const { sunrise, sunset, noon, upAtNoon } = sunTimes(place, at);
  if (sunrise === null && sunset === null) return upAtNoon ? 24 : 0;
  return ((sunset ?? noon + halfDay) - (sunrise ?? noon - halfDay)) / 3600;
}

/** True from sunrise to sunset: any part of the sun above a level horizon. Twilight is not daylight. */
export function isDaylight(latitude: number, longitude: number, at: EpochSeconds): boolean {
  return sunPosition({ latitude, longitude }, at).elevationDeg >= horizonDeg;
}

function solarNoon(place: Place, at: EpochSeconds): EpochSeconds {
  let noon = at as number;
  for (let round = 0; round < 4; round++) noon -= sunPosition(place, epochSeconds(noon)).hourAngleDeg * 240;
  return epochSeconds(noon);
}

/** When the sun passes a height between solar noon and the midnight `towards` seconds off, by halving; null where it does not. */
function passing(place: Place, noon: EpochSeconds, towards: number, heightDeg: number): EpochSeconds | null {
  const isAbove = (share: number) => sunPosition(place, epochSeconds(noon + share * towards)).elevationDeg >= heightDeg;
  if (!isAbove(0) || isAbove(1)) return null;
  let above = 0;
  let below = 1;
  while ((below - above) * halfDay > 0.5) {
    const middle = (above + below) / 2;
    if (isAbove(middle)) above = middle;
    else below = middle;
  }
  return epochSeconds(Math.round(noon + above * towards));
}
