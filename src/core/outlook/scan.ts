import { rainAheadHours } from '../facts/forecast-facts.ts';
import { localDate } from '../facts/local-day.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { Unknown } from '../facts/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Parameters } from '../units/parameter.ts';
import { rainAhead } from '../weather/rain-ahead.ts';
import { hourSeconds } from '../weather/series.ts';
import { compiledByDay } from './compiled-by-day.ts';
import { factsAhead, type HourFacts } from './hour-facts.ts';
import type { OutlookInput } from './input.ts';
import { judgeHour } from './judge-hour.ts';
import { type JudgedRule, rulesJudge } from './judge-rules.ts';
import { chanceMet, type WholeBands } from './sureness.ts';
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
    return judgeHour(stamp, judged, facts, surenessOf(judged, facts, wholeRain(facts, at, compiled.parameters)));
  });
  return { hours, untold: null, liftedAt };
}

function surenessOf(judged: readonly JudgedRule[], facts: HourFacts, bands: WholeBands): number | null {
  const chances = judged
    .filter(({ compiled: { rule } }) => rule.effect !== 'advise' && rule.lifts === 'hours')
    .map(({ compiled }) => chanceMet(compiled, facts.held, bands))
    .filter((chance) => chance !== null);
  if (chances.length === 0) return null;
  return Math.round(chances.reduce((product, chance) => product * (1 - chance), 1) * 1000) / 1000;
}

/** Bands of the rain facts, which stand at their cautious end, where the forecast gave them. */
function wholeRain({ held, trusted }: HourFacts, at: EpochSeconds, parameters: Parameters): WholeBands {
  const total = resolvedFact(held, 'rain.next48hMm');
  const most = resolvedFact(held, 'rain.next48hMaxMmPerH');
  const isForecast = [total, most].some((fact) => fact.known && fact.source === 'forecast');
  const rain = isForecast ? rainAhead(trusted.forecast, at, rainAheadHours, trusted.growth, parameters) : null;
  if (rain === null) return {};
  return {
    ...(total.known && total.source === 'forecast' ? { 'rain.next48hMm': rain.totalMm } : {}),
    ...(most.known && most.source === 'forecast' ? { 'rain.next48hMaxMmPerH': rain.maxMmPerH } : {}),
  };
}
