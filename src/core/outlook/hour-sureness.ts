import { rainAheadHours } from '../facts/forecast-facts.ts';
import type { FactId } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { rainAhead } from '../weather/rain-ahead.ts';
import { rainMembers } from '../weather/rain-members.ts';
import type { HourFacts } from './hour-facts.ts';
import type { JudgedRule } from './judge-rules.ts';
import { chanceMet, type WholeBands } from './sureness.ts';

const rainFacts = ['rain.next48hMm', 'rain.next48hMaxMmPerH'] as const satisfies FactId[];

/** How sure an hour is, 0 to 1. */
export interface HourSureness {
  /** Chance that no hour-lifted rule is met; null where the forecast gives none. */
  readonly all: number | null;
  /** Share of the ensemble's members in which no rule about rain ahead is met; null without an ensemble. */
  readonly rainMembers: number | null;
}

/**
 * Chance that no rule that hours lift is met in an hour `leadDays` ahead. Rain ahead counts by the members of an ensemble where
 * the forecast has them; else by its band, and by the heavy rain that a forecast misses (`heavyRainMissedSharePerDay`).
 */
export function hourSureness(
  judged: readonly JudgedRule[],
  facts: HourFacts,
  at: EpochSeconds,
  leadDays: number,
  parameters: Parameters,
): HourSureness {
  const reach = numberParameter(parameters, 'forecastBandStandardErrors');
  const hourly = judged.filter(({ compiled: { rule } }) => rule.effect !== 'advise' && rule.lifts === 'hours');
  const isForecast = rainFacts.some((id) => isFromForecast(facts, id));
  const ofRain = ({ compiled }: JudgedRule) => isForecast && rainFacts.some((id) => compiled.facts.includes(id));
  const chanceNone = (rules: readonly JudgedRule[], bands: WholeBands): number | null => {
    const chances = rules
      .map(({ compiled }) => chanceMet(compiled, facts.held, bands, reach))
      .filter((one) => one !== null);
    return chances.length === 0 ? null : chances.reduce((product, one) => product * (1 - one), 1);
  };
  const rain = hourly.filter(ofRain);
  const members = rain.length === 0 ? [] : rainMembers(facts.trusted.forecast, at, rainAheadHours);
  const byMember = members.map(
    ({ totalMm, maxMmPerH }) => chanceNone(rain, bandsOf(facts, exactly(totalMm), exactly(maxMmPerH))) ?? 1,
  );
  const share = byMember.length === 0 ? null : byMember.reduce((sum, one) => sum + one, 0) / byMember.length;
  const byBand = share === null && rain.length > 0 ? chanceNone(rain, wholeRain(facts, at, parameters)) : null;
  const missed = () => (1 - numberParameter(parameters, 'heavyRainMissedSharePerDay')) ** leadDays;
  const dry = share ?? (byBand === null ? null : byBand * missed());
  const others = chanceNone(
    hourly.filter((one) => !ofRain(one)),
    {},
  );
  const all = dry === null && others === null ? null : (dry ?? 1) * (others ?? 1);
  return { all: all === null ? null : Math.round(all * 1000) / 1000, rainMembers: share };
}

function exactly(value: number) {
  return { value, low: value, high: value };
}

function isFromForecast({ held }: HourFacts, id: FactId): boolean {
  const fact = resolvedFact(held, id);
  return fact.known && fact.source === 'forecast';
}

type Band = ReturnType<typeof exactly>;

function bandsOf(facts: HourFacts, total: Band, most: Band): WholeBands {
  return {
    ...(isFromForecast(facts, 'rain.next48hMm') ? { 'rain.next48hMm': total } : {}),
    ...(isFromForecast(facts, 'rain.next48hMaxMmPerH') ? { 'rain.next48hMaxMmPerH': most } : {}),
  };
}

/** Bands of the rain facts, which stand at their cautious end, where the forecast gave them. */
function wholeRain(facts: HourFacts, at: EpochSeconds, parameters: Parameters): WholeBands {
  const { forecast, growth } = facts.trusted;
  const { totalMm, maxMmPerH } = rainAhead(forecast, at, rainAheadHours, growth, parameters)!;
  return bandsOf(facts, totalMm, maxMmPerH);
}
