import { codedError } from '../../../errors/coded-error.ts';
import { type AirOfDay, airOfDays, dayOfYear, hangingTogether, placeShift } from './air.ts';
import { usualAirOf } from './climatology.ts';
import { feltByGround, type Memories, remembered } from './memories.ts';
import type { SoilModelConstants } from './model-constants.ts';
import { takeReadings } from './readings.ts';
import { loadings, place, type SoilState, startState, withOwnShares } from './state.ts';
import { passDay, type Tracked, takeReading, track } from './tracked.ts';
import type { SoilTemperatureInput } from './types.ts';

/** Most days that are taken. */
const mostDays = 800;

/** All that is known of each day before the readings, and the soil on the day of asking after them. */
export interface Filtered {
  readonly air: readonly AirOfDay[];
  readonly memories: readonly Memories[];
  readonly tracked: Tracked;
  /** Index of the day that the state belongs to. */
  readonly today: number;
}

/** Readings from which on a site's own response counts in the error of the air. */
const readingsThatShow = 10;

/** What a day ahead reads of the state: the model's shares, and the site's own where its readings have shown them. */
export function ownLoadings(
  { tracked: { state, readingCount } }: Filtered,
  of: SoilModelConstants,
  quickC: number,
  slowC: number,
): readonly number[] {
  const through = loadings(of, quickC, slowC);
  return readingCount < readingsThatShow ? through : withOwnShares(through, state);
}

/** Runs the model through the past days and takes in the readings up to the moment of asking. Throws SCIENCE_OUT_OF_RANGE. */
export function filterReadings(input: SoilTemperatureInput, of: SoilModelConstants): Filtered {
  const today = checkDays(input);
  const shift = placeShift(input);
  const air = airOfDays(input, shift);
  const { airC, weatherSdC } = usualAirOf(input);
  const before = (step: number) => {
    const lag = Math.round(1 / step);
    const ofYear = dayOfYear(input.days[0]!.iso) - lag;
    return feltByGround(airC(ofYear < 1 ? ofYear + 365 : ofYear) + shift.shiftC, of);
  };
  const memories = remembered(of, { quickC: before(of.quickStep), slowC: before(of.slowStep) }, air);
  const passing = (step: number) => (weatherSdC ** 2 * hangingTogether * step) / (2 - step);
  const start = startState(of, {
    quickVariance: Math.min(weatherSdC ** 2, passing(of.quickStep)) + shift.variance,
    slowVariance: Math.min(weatherSdC ** 2, passing(of.slowStep)) + shift.variance,
    shared: shift.variance,
  });
  const tracked = track(start);
  const readings = takeReadings(input);
  for (let index = 0, next = 0; index <= today; index += 1) {
    passDay(tracked, of, air[index]!, memories[index]!.slowC);
    for (; next < readings.length && readings[next]!.index <= index; next += 1) {
      takeReading(tracked, of, memories[index]!, readings[next]!);
    }
  }
  keepSharesPositive(tracked.state, of, memories[today]!);
  return { air, memories, tracked, today };
}

/** Warmer air never makes colder soil: a correction that would turn a share round goes into the site's offset instead. */
function keepSharesPositive({ mean }: SoilState, of: SoilModelConstants, { quickC, slowC }: Memories): void {
  const through = loadings(of, quickC, slowC);
  const keep = (row: number, share: number) => {
    const beyond = Math.min(0, mean[row]! + share);
    mean[row]! -= beyond;
    mean[place.site]! += beyond * through[row]!;
  };
  keep(place.quickShare, of.quickShare);
  keep(place.slowShare, of.slowShare);
}

/** True for a day's mean air temperature that can be, C: -60 to 60. What cannot be is to be given as missing. */
export function isPossibleAir(meanC: number): boolean {
  return Math.abs(meanC) <= 60;
}

/** Checks that days follow each other and the air is possible; gives the index of the day of asking. */
function checkDays({ days, at }: SoilTemperatureInput): number {
  if (days.length < 1 || days.length > mostDays) refuse(`1 to ${mostDays} days`, String(days.length));
  days.forEach((day, index) => {
    const step = index === 0 ? 86_400 : day.at - days[index - 1]!.at;
    if (Math.abs(step - 86_400) > 7200)
      refuse('days that follow each other', `${day.iso} after ${days[index - 1]!.iso}`);
    if (day.airC !== null && !isPossibleAir(day.airC)) refuse('a mean air temperature of -60 to 60 C', `${day.airC}`);
  });
  const today = days.findLastIndex((day) => day.at <= at + 43_200 + 7200);
  if (today < 0) refuse('days that begin no later than the moment of asking', days[0]!.iso);
  return today;
}

function refuse(expected: string, came: string): never {
  throw codedError('SCIENCE_OUT_OF_RANGE', { expected, came });
}
