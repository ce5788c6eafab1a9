import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import { secondsOf } from '../words/times.ts';
import type { VerdictGivenEvent } from './events.ts';
import { type Standing, standingOf } from './standing.ts';
import type { State } from './state.ts';

/** The newest verdict and whether it still stands. */
export interface StandingVerdict {
  readonly given: VerdictGivenEvent;
  /** `old`: a spray-today past its time; `stale`: what was said since may change it. */
  readonly is: 'standing' | 'old' | 'stale';
}

/** The newest verdict at a moment of the conversation; null before the first. A spray-today is withdrawn when it grows old. */
export function standingVerdict(state: State, pack: Pack, now: EpochSeconds): StandingVerdict | null {
  const standing = standingOf(state, pack);
  const last = state.verdicts.findLast(({ tag }) => tag === standing?.tag) ?? state.verdicts.at(-1);
  if (standing === null || !last) return null;
  const { verdict, validUntil } = last.decision;
  if (!stillHolds(last, standing)) return { given: last, is: 'stale' };
  const isOld = verdict === 'spray-today' && validUntil !== null && secondsOf(validUntil) <= now;
  return { given: last, is: isOld ? 'old' : 'standing' };
}

/**
 * True while the verdict is that of the present facts: for a spray-today, as long as no stop or hold has come out otherwise;
 * for another, as long as all that stood in the way surely stands there and the word is the same.
 */
function stillHolds({ tag, decision }: VerdictGivenEvent, standing: Standing): boolean {
  if (standing.doubtful !== null) return false;
  if (tag === standing.tag) return true;
  const now = new Map(standing.trace.map(({ rule, outcome }) => [rule, outcome]));
  const blocking = decision.trace.filter(({ effect }) => effect !== 'advise');
  if (decision.verdict === 'spray-today') return blocking.every(({ rule, outcome }) => now.get(rule) === outcome);
  const inTheWay = blocking.filter(({ outcome }) => outcome === 'met');
  const isSame = verdictWord(standing.trace) === decision.verdict;
  return isSame && inTheWay.length > 0 && inTheWay.every(({ rule }) => now.get(rule) === 'met');
}
