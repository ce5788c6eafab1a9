import type { FactId } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { EpochSeconds } from '../units/brands.ts';
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
  const met: HourBlock[] = [];
  const ifLifted: HourBlock[] = [];
  const advice: string[] = [];
  const unsettled = new Set<FactId>();
  const unknown = new Set<FactId>();
  let isOpen = false;
  let isBeyond = false;
  for (const one of judged) {
    const { strict, held } = one;
    const { id, effect, lifts } = one.compiled.rule;
    if (effect === 'advise') {
      if (held.outcome === 'met') advice.push(id);
    } else if (strict.outcome === 'met' || (held.outcome === 'met' && lifts === 'season')) met.push(blockOf(one));
    else if (strict.outcome === 'unknown') {
      isOpen = true;
      for (const fact of strict.open) unsettled.add(fact);
      for (const fact of held.open) unknown.add(fact);
      if (held.outcome === 'met') ifLifted.push(blockOf(one));
      isBeyond ||= lifts === 'hours' && held.open.some((fact) => liesBeyond(fact, facts));
    }
  }
  const state = stateOf(met.length > 0, isBeyond, isOpen);
  return {
    at,
    state,
    hourBlocks: met.filter(({ lifts }) => lifts === 'hours'),
    dayBlocks: met.filter(({ lifts }) => lifts !== 'hours'),
    lookAgain: facts.aged.filter((id) => unsettled.has(id)),
    ifLifted,
    unknown: [...unknown],
    advice,
    sureness: state === 'beyond-forecast' ? null : sureness,
  };
}

function stateOf(isBlocked: boolean, isBeyond: boolean, isOpen: boolean): HourState {
  if (isBlocked) return 'blocked';
  if (isBeyond) return 'beyond-forecast';
  return isOpen ? 'clear-if' : 'clear';
}

function liesBeyond(id: FactId, { held }: HourFacts): boolean {
  const fact = resolvedFact(held, id);
  return !fact.known && fact.reason === 'forecast-gap';
}

function blockOf({ compiled }: JudgedRule): HourBlock {
  const { id, effect, authority, lifts } = compiled.rule;
  return { rule: id, effect: effect === 'stop' ? 'stop' : 'hold', authority, lifts: lifts ?? 'days' };
}
