import type { FactId } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { usefulFacts } from '../verdict/useful.ts';
import type { HourFacts } from './hour-facts.ts';
import type { JudgedRule } from './judge-rules.ts';
import type { HourBlock, HourOutlook, HourState } from './types.ts';

/**
 * What an hour comes to. A stop or hold met on facts that are sure by then blocks, and so does one for the season whose
 * observation has aged. One met only by what will have aged becomes a condition; one that the forecast no longer reaches makes
 * the hour beyond it; any other that is open is to be looked at then.
 */
export function judgeHour(
  at: EpochSeconds,
  judged: readonly JudgedRule[],
  facts: HourFacts,
  sureness: number | null,
): HourOutlook {
  const blocking = judged.filter(({ strict }) => strict.effect !== 'advise');
  const met = blocking.filter(isBlocking).map(({ held }) => blockOf(held));
  const open = blocking.filter((rule) => rule.strict.outcome === 'unknown' && !isBlocking(rule));
  const stillOpen = open.filter(({ held }) => held.outcome === 'unknown');
  const beyond = stillOpen.some(({ held }) => held.lifts === 'hours' && liesBeyond(held, facts));
  const state: HourState =
    met.length > 0 ? 'blocked' : beyond ? 'beyond-forecast' : open.length > 0 ? 'clear-if' : 'clear';
  const unsettled = new Set(open.flatMap(({ strict }) => [...usefulFacts([strict])]));
  const aged = facts.aged.filter((id) => unsettled.has(id));
  return {
    at,
    state,
    hourBlocks: met.filter(({ lifts }) => lifts === 'hours'),
    dayBlocks: met.filter(({ lifts }) => lifts !== 'hours'),
    lookAgain: aged,
    ifLifted: open.filter(({ held }) => held.outcome === 'met').map(({ held }) => blockOf(held)),
    unknown: [...new Set(stillOpen.flatMap(({ held }) => [...usefulFacts([held])]))],
    advice: judged
      .filter(({ held }) => held.effect === 'advise' && held.outcome === 'met')
      .map(({ held }) => held.rule),
    sureness: state === 'beyond-forecast' ? null : sureness,
  };
}

function isBlocking({ strict, held }: JudgedRule): boolean {
  return strict.outcome === 'met' || (held.outcome === 'met' && held.lifts === 'season');
}

function liesBeyond(trace: RuleTrace, { held }: HourFacts): boolean {
  return [...usefulFacts([trace])].some((id: FactId) => {
    const fact = resolvedFact(held, id);
    return !fact.known && fact.reason === 'forecast-gap';
  });
}

function blockOf({ rule, effect, authority, lifts }: RuleTrace): HourBlock {
  return { rule, effect: effect === 'stop' ? 'stop' : 'hold', authority, lifts: lifts ?? 'days' };
}
