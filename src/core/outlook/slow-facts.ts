import type { FactContext } from '../facts/context.ts';
import { nextMidnight } from '../facts/local-day.ts';
import type { FactId } from '../facts/registry/index.ts';
import { pickFact } from '../facts/resolve.ts';
import type { Resolved } from '../facts/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { hourSeconds } from '../weather/series.ts';
import type { HeldObservation } from './hold-facts.ts';

type MomentFor = (at: EpochSeconds, zone: string) => EpochSeconds;

const sixHours = 6 * hourSeconds;
const noonOfDay: MomentFor = (at, zone) => epochSeconds(nextMidnight(at, zone) - 12 * hourSeconds);
const startOfSixHours: MomentFor = (at) => epochSeconds(Math.floor(at / sixHours) * sixHours);

/** Facts that move slowly and are dear to work out: the moment whose value stands for the hours about it. */
export const slowMoments: Readonly<Partial<Record<FactId, MomentFor>>> = {
  date: noonOfDay,
  'soil.temperature30cmC': noonOfDay,
  'soil.temperatureTrendCPerDay': noonOfDay,
  'soil.drainsExpected7d': startOfSixHours,
};

/** What a slow fact is worked out from. */
export interface SlowInput {
  readonly id: FactId;
  readonly at: EpochSeconds;
  readonly held: HeldObservation;
  /** The context of another moment of the same scan. */
  readonly contextAt: (at: EpochSeconds) => FactContext;
}

/**
 * Slow facts of a scan from `now` on. What was observed stands while it is good; then what is modelled, and only without a model
 * what was observed is held.
 */
export function slowFacts(now: EpochSeconds, zone: string): (input: SlowInput) => Resolved {
  const kept = new Map<FactId, { readonly moment: EpochSeconds; readonly fact: Resolved }>();
  return ({ id, at, held: { observed, aged }, contextAt }) => {
    if (observed.given && aged === null) return observed.given;
    const moment = epochSeconds(Math.max(now, slowMoments[id]?.(at, zone) ?? at));
    const last = kept.get(id);
    if (last?.moment === moment) return last.fact;
    const modelled = pickFact(id, { ...observed, given: null }, contextAt(moment));
    const fact = modelled.known ? modelled : (observed.given ?? modelled);
    kept.set(id, { moment, fact });
    return fact;
  };
}
