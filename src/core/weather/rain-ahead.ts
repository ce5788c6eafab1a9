import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { type Banded, bandAround } from './banded.ts';
import type { Forecast } from './forecast.ts';
import { sumAhead } from './sums.ts';

/** Rain over hours to come: its sum, mm, and its heaviest hour, mm/h. */
export interface RainAhead {
  readonly totalMm: Banded;
  readonly maxMmPerH: Banded;
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
