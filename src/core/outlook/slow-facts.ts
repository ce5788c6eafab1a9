import type { FactContext } from '../facts/context.ts';
import { nextMidnight } from '../facts/local-day.ts';
import type { FactId } from '../facts/registry/index.ts';
import { pickFact } from '../facts/resolve.ts';
import type { Resolved } from '../facts/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { hourSeconds } from '../weather/series.ts';
import type { HeldObservation } from './hold-facts.ts';

type MomentFor = (at: EpochSeconds, zone: string) => EpochSeconds;

const halfDay = 12 * hourSeconds;
const noonOfDay: MomentFor = (at, zone) => epochSeconds(nextMidnight(at, zone) - halfDay);
const startOfHalfDay: MomentFor = (at) => epochSeconds(Math.floor(at / halfDay) * halfDay);

/** How a fact that moves slowly and is dear to work out is looked at in a scan. */
interface Slow {
  /** The moment whose value stands for the hours about it. */
  readonly momentFor: MomentFor;
  /** True where its model carries the error of a forecast days ahead itself. */
  readonly ownError?: true;
}

/** Facts that move slowly. */
export const slowlyMoving: Readonly<Partial<Record<FactId, Slow>>> = {
  date: { momentFor: noonOfDay },
  'soil.temperature30cmC': { momentFor: noonOfDay, ownError: true },
  'soil.temperatureTrendCPerDay': { momentFor: noonOfDay, ownError: true },
  'soil.drainsExpected7d': { momentFor: startOfHalfDay },
};

/** What a slow fact is worked out from. */
export interface SlowInput {
  readonly id: FactId;
  readonly at: EpochSeconds;
  readonly held: HeldObservation;
  /** The context of another moment of the same scan, its bands grown for the days ahead or not. */
  readonly contextAt: (at: EpochSeconds, grown: boolean) => FactContext;
}

/**
 * Slow facts of a scan from `now` on. What was observed stands while it is good; then what is modelled, and only without a model
 * what was observed is held.
 */
export function slowFacts(now: EpochSeconds, zone: string): (input: SlowInput) => Resolved {
  const kept = new Map<FactId, { readonly moment: EpochSeconds; readonly fact: Resolved }>();
  return ({ id, at, held: { observed, aged }, contextAt }) => {
    if (observed.given && aged === null) return pickFact(id, observed, contextAt(at, true));
    const how = slowlyMoving[id];
    const moment = epochSeconds(Math.max(now, how?.momentFor(at, zone) ?? at));
    const last = kept.get(id);
    if (last?.moment === moment) return last.fact;
    const modelled = pickFact(id, { ...observed, given: null }, contextAt(moment, !how?.ownError));
    const fact = modelled.known ? modelled : (observed.given ?? modelled);
    kept.set(id, { moment, fact });
    return fact;
  };
}
