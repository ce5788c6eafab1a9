import { windAtBoom } from '../science/wind/at-boom.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { kilometresPerHour } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { type Banded, bandAround } from './banded.ts';
import type { Forecast, WeatherVariable } from './forecast.ts';
import { valueAt } from './series.ts';
import { variableMeanings } from './variables.ts';

const noLimits = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
const notNegative = [0, Number.POSITIVE_INFINITY] as const;
const share = [0, 100] as const;

/**
 * A forecast value about a moment with its band, in the fact's unit; null where the hour is missing. `growth` widens the
 * band for the forecast's age.
 */
export type WeatherNow = (
  forecast: Forecast,
  at: EpochSeconds,
  growth: number,
  parameters: Parameters,
) => Banded | null;

/** Air temperature at 2 m, C, plus and minus `forecastTemperatureBandC`. */
export const airTemperatureNow: WeatherNow = (forecast, at, growth, parameters) => {
  const half = numberParameter(parameters, 'forecastTemperatureBandC') * growth;
  return around(believable(forecast, 'temperature2mC', at), half, noLimits);
};

/** Relative humidity at 2 m, %, plus and minus `forecastHumidityBandPercent`. */
export const humidityNow: WeatherNow = (forecast, at, growth, parameters) => {
  const half = numberParameter(parameters, 'forecastHumidityBandPercent') * growth;
  return around(believable(forecast, 'relativeHumidity2mPercent', at), half, share);
};

/** Rain of the hour that holds the moment, mm/h, with the wider of `forecastRainBandShare` and `forecastRainNowBandMmPerH`. */
export const rainNow: WeatherNow = (forecast, at, growth, parameters) => {
  const rain = believable(forecast, 'precipitationMm', at);
  const byShare = (rain ?? 0) * numberParameter(parameters, 'forecastRainBandShare');
  const half = Math.max(byShare, numberParameter(parameters, 'forecastRainNowBandMmPerH')) * growth;
  return around(rain, half, notNegative);
};

/** Share of the sky covered by cloud, %, without a band; null where missing. */
export function cloudNow(forecast: Forecast, at: EpochSeconds): number | null {
  return believable(forecast, 'cloudCoverPercent', at);
}

/** Wind at boom height, km/h: the 10 m wind brought down by the log profile, then its band. */
export const boomWindNow: WeatherNow = (forecast, at, growth, parameters) =>
  atBoom(forecast, 'windSpeed10mKmh', at, growth, parameters);

/** Gust of the hour at boom height, km/h: brought down in the same ratio as the wind, which no profile for gusts betters. */
export const boomGustNow: WeatherNow = (forecast, at, growth, parameters) =>
  atBoom(forecast, 'windGusts10mKmh', at, growth, parameters);

function atBoom(
  forecast: Forecast,
  variable: WeatherVariable,
  at: EpochSeconds,
  growth: number,
  parameters: Parameters,
): Banded | null {
  const at10m = believable(forecast, variable, at);
  if (at10m === null) return null;
  const canopyHeightM = numberParameter(parameters, 'cropHeightM');
  const boomHeightM = canopyHeightM + numberParameter(parameters, 'boomHeightAboveCropM');
  const atBoomHeight = windAtBoom(kilometresPerHour(at10m), { boomHeightM, canopyHeightM });
  const byShare = atBoomHeight * numberParameter(parameters, 'forecastWindBandShare');
  const half = Math.max(byShare, numberParameter(parameters, 'forecastWindBandKmh')) * growth;
  return bandAround(atBoomHeight, half, notNegative);
}

function around(value: number | null, half: number, range: readonly [number, number]): Banded | null {
  return value === null ? null : bandAround(value, half, range);
}

/** The value at a moment, null where it is missing or cannot be. */
function believable(forecast: Forecast, variable: WeatherVariable, at: EpochSeconds): number | null {
  const value = valueAt(forecast, variable, at);
  const [lowest, highest] = variableMeanings[variable].range;
  return value !== null && value >= lowest && value <= highest ? value : null;
}
