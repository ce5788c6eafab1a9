import { localDate } from '../facts/local-day.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { Unknown } from '../facts/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { hourSeconds } from '../weather/series.ts';
import { compiledByDay } from './compiled-by-day.ts';
import { factsAhead, type HourFacts } from './hour-facts.ts';
import { hourSureness } from './hour-sureness.ts';
import type { OutlookInput } from './input.ts';
import { judgeHour } from './judge-hour.ts';
import { type JudgedRule, rulesJudge } from './judge-rules.ts';
import type { HourOutlook } from './types.ts';

/** Hours looked at: 16 days, as far as forecasts go. */
const mostHours = 16 * 24;

/** A scan: its hours in order, or why none can be told. */
export interface Scan {
  readonly hours: readonly HourOutlook[];
  readonly untold: Unknown | null;
  /** By rule, the first hour in which it is surely not met. */
  readonly liftedAt: ReadonlyMap<string, EpochSeconds>;
}

/** What looks at each hour as it is judged: for comparing with another way of judging. */
export type HourWatcher = (at: EpochSeconds, judged: readonly JudgedRule[], facts: HourFacts) => void;

/**
 * Judges every rule in every hour from the one that holds the moment asked about to the end of the forecast, 16 days at most.
 * That hour is judged at the moment itself, every other at the stamp at which it begins.
 */
export function scanHours(input: OutlookInput, watch?: HourWatcher): Scan {
  const { forecast, at: now, pack } = input;
  const compiledOn = compiledByDay(pack);
  const first = compiledOn(localDate(now, pack.zone));
  const wanted = [...new Set(first.rules.flatMap(({ facts }) => facts))];
  const ahead = factsAhead(input, first, wanted);
  const liftedAt = new Map<string, EpochSeconds>();
  if (!ahead.known || forecast === null) {
    return { hours: [], untold: ahead.known ? null : ahead.untold, liftedAt };
  }
  const stamps = forecast.times.filter((stamp) => stamp + hourSeconds > now).slice(0, mostHours);
  const judge = rulesJudge();
  const hours = stamps.map((stamp): HourOutlook => {
    const at = epochSeconds(Math.max(stamp, now));
    const compiled = compiledOn(localDate(at, pack.zone));
    const facts = ahead.at(at, compiled);
    const judged = judge(compiled.rules, facts);
    for (const { compiled: rule, strict } of judged) {
      if (strict.outcome === 'not-met' && !liftedAt.has(rule.rule.id)) liftedAt.set(rule.rule.id, stamp);
    }
    watch?.(stamp, judged, facts);
    const { parameters } = compiled;
    const sureness = hourSureness(judged, facts, at, (at - now) / (24 * hourSeconds), parameters);
    const hour = judgeHour(stamp, judged, facts, sureness.all);
    return withRainChance(hour, sureness.rainMembers, parameters);
  });
  return { hours, untold: null, liftedAt };
}

/** An hour that would be open, but in too few members of the ensemble stays without heavy rain, is so only if rain keeps away. */
function withRainChance(hour: HourOutlook, dryShare: number | null, parameters: Parameters): HourOutlook {
  if (dryShare === null || dryShare >= numberParameter(parameters, 'rainChanceLeast')) return hour;
  if (hour.state !== 'clear' && hour.state !== 'clear-if') return hour;
  return { ...hour, state: 'clear-if', unknown: [...new Set<FactId>([...hour.unknown, 'rain.next48hMm'])] };
}
