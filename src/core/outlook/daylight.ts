import { sunTimes } from '../science/sun/times.ts';
import { epochSeconds } from '../units/brands.ts';
import type { Span } from './types.ts';
import type { WindowPlan } from './windows.ts';

const daySeconds = 86_400;
/** Sunrise and sunset are told to so many seconds, inwards: a level horizon flatters most fields. */
const stepSeconds = 300;

/** When the sun is up between two moments at a place, a span a day in order; parts shorter than 5 minutes are left out. */
export function daylightWithin({ from, until }: Span, place: NonNullable<WindowPlan['place']>): Span[] {
  const spans: Span[] = [];
  for (let { noon } = sunTimes(place, from); noon - daySeconds < until; noon = epochSeconds(noon + daySeconds)) {
    const { sunrise, sunset, upAtNoon } = sunTimes(place, noon);
    if (sunrise === null && sunset === null && !upAtNoon) continue;
    const up = Math.ceil((sunrise ?? noon - daySeconds / 2) / stepSeconds) * stepSeconds;
    const down = Math.floor((sunset ?? noon + daySeconds / 2) / stepSeconds) * stepSeconds;
    const span = { from: epochSeconds(Math.max(from, up)), until: epochSeconds(Math.min(until, down)) };
    if (span.until - span.from >= stepSeconds) spans.push(span);
  }
  return spans;
}
