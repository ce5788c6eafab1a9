import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { type Banded, bandAround } from './banded.ts';
import type { Forecast } from './forecast.ts';
import { type MemberRain, rainMembers } from './rain-members.ts';
import { sumAhead } from './sums.ts';

/** Rain over hours to come: its sum, mm, and its heaviest hour, mm/h. */
export interface RainAhead {
  readonly totalMm: Banded;
  readonly maxMmPerH: Banded;
}

/**
 * The same judged by the courses of an ensemble: its band reaches to the amount that a share of `rainChanceLeast` of them stay at
 * or below, and never below the forecast's own; what `growth` adds to the own band is added. Null without courses.
 */
export function rainAheadOfMembers(
  forecast: Forecast,
  { at, hours, growth }: { readonly at: EpochSeconds; readonly hours: number; readonly growth: number },
  parameters: Parameters,
): (RainAhead & { readonly members: readonly MemberRain[] }) | null {
  const members = rainMembers(forecast, at, hours);
  const own = rainAhead(forecast, at, hours, growth - 1, parameters);
  if (own === null || members.length === 0) return null;
  const least = numberParameter(parameters, 'rainChanceLeast');
  const reach = ({ value, low, high }: Banded, amounts: readonly number[]): Banded => {
    const enough = amounts.toSorted((a, b) => a - b)[Math.ceil(least * amounts.length - 1e-9) - 1] ?? 0;
    return { value, low, high: Math.max(high, enough + high - value) };
  };
  return {
    totalMm: reach(
      own.totalMm,
      members.map(({ totalMm }) => totalMm),
    ),
    maxMmPerH: reach(
      own.maxMmPerH,
      members.map(({ maxMmPerH }) => maxMmPerH),
    ),
    members,
  };
}

/**
 * Rain over the `hours` hourly sums after a moment, with the forecast's band (`forecastRainBandShare` times `growth`).
 * Null where any hour is missing or beyond the end: a gap is never dry.
 */
export function rainAhead(
  forecast: Forecast,
  at: EpochSeconds,
  hours: number,
  growth: number,
  parameters: Parameters,
): RainAhead | null {
  const sum = sumAhead(forecast, 'precipitationMm', at, hours);
  if (!sum.complete || sum.maxPerHour === null) return null;
  const share = numberParameter(parameters, 'forecastRainBandShare') * growth;
  const band = (amount: number) => bandAround(amount, amount * share, [0, Number.POSITIVE_INFINITY]);
  return { totalMm: band(sum.total), maxMmPerH: band(sum.maxPerHour) };
}
