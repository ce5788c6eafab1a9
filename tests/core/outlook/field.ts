import { parseFacts } from '../../../src/core/facts/parse/index.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { OutlookInput } from '../../../src/core/outlook/index.ts';
import type { EpochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fitField } from '../../generators/fit-field.ts';
import { buildForecast, type ForecastPlan } from '../../generators/forecast.ts';
import { utc } from '../facts/moments.ts';

/** A Friday in the season, 09:00 at the field (invented). */
export const morning = utc('2026-11-06T09:00Z');

/** Hours ahead of a stamp, for columns. */
export function hoursFrom(start: EpochSeconds, time: EpochSeconds): number {
  return (time - start) / 3600;
}

/** An invented field on which nothing blocks, with some facts replaced; null leaves one out. */
export function seen(at: EpochSeconds, replaced: Readonly<Record<string, unknown>> = {}): FactObservation[] {
  const facts = { ...fitField, 'soil.temperatureTrendCPerDay': -0.2, ...replaced };
  return parseFacts(facts, at, shipped.pack.zone, shipped.pack.facts);
}

/** An outlook's input on the invented field under invented weather, calm and dry unless said otherwise. */
export function input(options: {
  readonly at?: EpochSeconds;
  readonly facts?: Readonly<Record<string, unknown>>;
  readonly weather?: Partial<ForecastPlan> | null;
}): OutlookInput {
  const { at = morning, facts = {}, weather = {} } = options;
  const columns = { windSpeed10mKmh: 10, windGusts10mKmh: 14, ...weather?.columns };
  const forecast = weather && buildForecast({ from: at, hours: 240, ...weather, columns });
  return { pack: shipped.pack, observations: seen(at, facts), forecast, at };
}
