import { goodUntilOf } from '../facts/ageing.ts';
import { derivations } from '../facts/derive/index.ts';
import { forecastSourceOf } from '../facts/forecast-facts.ts';
import { type Observed, type ObservedInput, observedOf } from '../facts/observed.ts';
import { definitionIn, type FactId, type FactRegistry } from '../facts/registry/index.ts';
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
export function isHeld(id: FactId, registry: FactRegistry): boolean {
  const { goodFor, forecast } = definitionIn(registry, id);
  if (goodFor.kind === 'moment') return false;
  if (forecast !== undefined) return goodFor.kind === 'season';
  const passes = goodFor.kind === 'hours' && seenOrTold.includes(goodFor.parameter);
  return !passes || (derivations[id] === undefined && forecastSourceOf(id, registry) === undefined);
}

/**
 * What was observed of one fact up to `now` (oldest first), for moments from then on: the value that stands now is held, and
 * `aged` says what is left of it. Moments between which nothing ages share one object.
 */
export function holdObservations(
  id: FactId,
  observations: readonly FactObservation[],
  now: EpochSeconds,
  ageing: ObservedInput,
): (at: EpochSeconds) => HeldObservation {
  const atNow = observedOf(id, observations, now, ageing);
  const { goodFor } = definitionIn(ageing.registry, id);
  const ends = observations.map((one) => goodUntilOf(goodFor, one.at, ageing)).filter((end) => end > now);
  const moments = [now, ...new Set(ends)].sort((a, b) => a - b);
  const spans = moments.map((from) => ({
    from,
    held: heldAt(isHeld(id, ageing.registry), observedOf(id, observations, from, ageing), atNow, from),
  }));
  const [first] = spans;
  if (first && spans.length === 1) return () => first.held;
  return (at) => (spans.findLast(({ from }) => from <= at) ?? spans[0]!).held;
}

function heldAt(mayBeHeld: boolean, then: Observed, atNow: Observed, at: EpochSeconds): HeldObservation {
  const { given } = atNow;
  if (given === null || !mayBeHeld) return { observed: then, aged: null };
  if (given.goodUntil === null || given.goodUntil > at) return { observed: atNow, aged: null };
  return { observed: atNow, aged: then.given ?? then.unknown ?? { known: false, reason: 'too-old' } };
}
