import { type ErrorScale, fade, learn, unknownScale } from './error-scale.ts';
import type { Memories } from './memories.ts';
import type { SoilModelConstants } from './model-constants.ts';
import { advance, copyState, loadings, type MovingAir, observe, type SoilState, seen } from './state.ts';

/** Days that a forecast of the past is kept before the next reading scores it. */
const scoredAfterDays = 7;

/** A soil followed from day to day: its state, and how large its errors are against the model's. */
export interface Tracked {
  readonly state: SoilState;
  readonly scale: ErrorScale;
  /** Readings taken in. */
  readingCount: number;
  /** Days since the last reading. */
  sinceReading: number;
  /** A state of some days ago carried on without readings, to be scored by one. */
  ahead: { readonly state: SoilState; days: number } | null;
}

/** A soil of which nothing has been read. */
export function track(state: SoilState): Tracked {
  return { state, scale: unknownScale(), readingCount: 0, sinceReading: 0, ahead: null };
}

/** Carries a followed soil to the next day with that slow memory of the air, C, in place. */
export function passDay(tracked: Tracked, of: SoilModelConstants, air: MovingAir, slowC: number): void {
  advance(tracked.state, of, air, slowC);
  fade(tracked.scale);
  tracked.sinceReading += 1;
  if (tracked.ahead === null) return;
  advance(tracked.ahead.state, of, air, slowC);
  tracked.ahead.days += 1;
}

/** Takes in one reading of the day, C, with its error variance, C2, in place: the error it shows first, then its value. */
export function takeReading(
  tracked: Tracked,
  of: SoilModelConstants,
  { quickC, slowC, middleC }: Memories,
  reading: { readonly valueC: number; readonly variance: number },
): void {
  const through = loadings(of, quickC, slowC);
  const departure = reading.valueC - middleC;
  const readingVariance = reading.variance + of.spotSdC ** 2;
  const score = (state: SoilState, leadDays: number, worth = 1) => {
    const { mean, variance } = seen(state, through);
    learn(tracked.scale, { errorC: departure - mean, soilVariance: variance, readingVariance, leadDays, worth });
  };
  if (tracked.readingCount === 0) score(tracked.state, firstLead, of.firstWorth);
  else if (tracked.sinceReading > 0) score(tracked.state, tracked.sinceReading);
  const { ahead } = tracked;
  if (ahead !== null && ahead.days >= scoredAfterDays) score(ahead.state, ahead.days);
  observe(tracked.state, through, departure, readingVariance);
  tracked.readingCount += 1;
  tracked.sinceReading = 0;
  if (ahead === null || ahead.days >= scoredAfterDays) tracked.ahead = { state: copyState(tracked.state), days: 0 };
}

/** The first reading of a site tells of near and far alike: days ahead at which both count half. */
const firstLead = 4;
