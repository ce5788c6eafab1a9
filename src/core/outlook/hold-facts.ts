import type { AgeingInput } from '../facts/ageing.ts';
import { derivations } from '../facts/derive/index.ts';
import { forecastFacts } from '../facts/forecast-facts.ts';
import { type Observed, observedOf } from '../facts/observed.ts';
import { type FactId, factDefinition } from '../facts/registry/index.ts';
import type { FactObservation } from '../facts/resolved.ts';
import type { Known, Unknown } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';

/** What was observed of a fact as it stands in a coming hour. */
export interface HeldObservation {
  /** With what was observed held as an assumption where it will have aged. */
  readonly observed: Observed;
  /** What it surely is by then, where the held value will have aged; null where it will not. */
  readonly aged: Known | Unknown | null;
}

const seenOrTold = ['goodForSeenNowHours', 'goodForToldForecastHours'];

/**
 * True for a fact whose observation is held as an assumption when it will have aged: not for what was seen of the weather just
 * now where the forecast or the place and time tell it for a later hour.
 */
export function isHeld(id: FactId): boolean {
  const { goodFor } = factDefinition(id);
  if (goodFor.kind === 'moment') return false;
  const passes = goodFor.kind === 'hours' && seenOrTold.includes(goodFor.parameter);
  return !passes || (derivations[id] === undefined && forecastFacts[id] === undefined);
}

/**
 * What was observed of one fact up to `now` (oldest first), for rising later moments: the value that stands now is held, and
 * `aged` says what is left of it. The same moment span gives the same objects.
 */
export function holdObservations(
  id: FactId,
  observations: readonly FactObservation[],
  now: EpochSeconds,
  ageing: AgeingInput,
): (at: EpochSeconds) => HeldObservation {
  const atNow = observedOf(id, observations, now, ageing);
  if (observations.length === 0) return () => ({ observed: atNow, aged: null });
  const { given } = atNow;
  const holds = given !== null && isHeld(id);
  let last: { readonly key: string; readonly held: HeldObservation } | null = null;
  return (at) => {
    if (holds && (given.goodUntil === null || given.goodUntil > at)) return { observed: atNow, aged: null };
    const then = observedOf(id, observations, at, ageing);
    const key = keyOf(then);
    if (last?.key === key) return last.held;
    const left = then.given ?? then.unknown ?? { known: false, reason: 'too-old' as const };
    const held: HeldObservation = holds ? { observed: atNow, aged: left } : { observed: then, aged: null };
    last = { key, held };
    return held;
  };
}

function keyOf({ given, told, unknown }: Observed): string {
  return `${originOf(given)} ${originOf(told)} ${unknown?.reason}`;
}

function originOf(known: Known | null): string {
  return known === null ? '' : `${known.at} ${known.goodUntil}`;
}
