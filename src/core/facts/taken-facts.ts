import { deltaT } from '../science/air/delta-t.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { type Banded, bandAround } from '../weather/banded.ts';
import { hoursFrom, nightHours, takeOver } from '../weather/over-hours.ts';
import { hourSeconds } from '../weather/series.ts';
import { growthAhead } from '../weather/trust.ts';
import {
  airTemperatureNow,
  boomGustNow,
  boomWindNow,
  humidityNow,
  rainNow,
  type WeatherNow,
} from '../weather/weather-now.ts';
import type { FactContext, TrustedForecast } from './context.ts';
import { pressureOf } from './derive/delta-t.ts';
import { sunPlaceOf } from './derive/place.ts';
import type { ForecastTaking, ForecastVariable } from './types.ts';

type HourOf = (context: FactContext, trusted: TrustedForecast, at: EpochSeconds, growth: number) => Banded | null;

const byWeather =
  (now: WeatherNow): HourOf =>
  ({ parameters }, { forecast }, at, growth) =>
    now(forecast, at, growth, parameters);

const deltaTOf: HourOf = (context, trusted, at, growth) => {
  const { parameters } = context;
  const air = airTemperatureNow(trusted.forecast, at, growth, parameters);
  const humidity = humidityNow(trusted.forecast, at, growth, parameters);
  if (air === null || humidity === null) return null;
  const pressureKPa = pressureOf(context);
  const of = (temperatureC: number, humidityPercent: number) => deltaT({ temperatureC, humidityPercent, pressureKPa });
  const corners = [air.low, air.high].flatMap((t) => [humidity.low, humidity.high].map((h) => of(t, h)));
  return { value: of(air.value, humidity.value), low: Math.min(...corners), high: Math.max(...corners) };
};

const hourly: Readonly<Record<ForecastVariable, HourOf>> = {
  'air-temperature': byWeather(airTemperatureNow),
  'relative-humidity': byWeather(humidityNow),
  rain: byWeather(rainNow),
  'wind-at-boom': byWeather(boomWindNow),
  'gusts-at-boom': byWeather(boomGustNow),
  'delta-t': deltaTOf,
};

/** What a pack's own fact takes from the forecast at the moment of the context, with its band; null where an hour of it is missing. */
export function takenFrom(taking: ForecastTaking, context: FactContext, trusted: TrustedForecast): Banded | null {
  const { at, parameters } = context;
  const moments = momentsOf(taking, context);
  if (moments === null) return null;
  const hours = moments.map((moment) => {
    const growth = growthAhead(trusted.growth, at, moment, parameters);
    return hourly[taking.variable](context, trusted, moment, growth);
  });
  const known = hours.filter((hour) => hour !== null);
  if (known.length < hours.length) return null;
  if (taking.variable === 'rain' && taking.over !== 'now') return rainBand(taking, known, trusted, parameters);
  return takeOver[taking.take](known);
}

/** Rain of several hours by the share of its band alone: the least band of a single hour would add up to rain that nobody foretells. */
function rainBand(
  { take }: ForecastTaking,
  hours: readonly Banded[],
  { growth }: TrustedForecast,
  parameters: Parameters,
): Banded {
  const exact = hours.map(({ value }) => ({ value, low: value, high: value }));
  const { value } = takeOver[take](exact);
  const half = value * numberParameter(parameters, 'forecastRainBandShare') * growth;
  return bandAround(value, half, [0, Number.POSITIVE_INFINITY]);
}

function momentsOf({ over, variable }: ForecastTaking, context: FactContext): readonly EpochSeconds[] | null {
  const { at, parameters } = context;
  if (over === 'now') return [at];
  if (over === 'next-night') {
    const place = sunPlaceOf(context);
    return place && nightHours(place, at);
  }
  const isOfHour = variable === 'rain' || variable === 'gusts-at-boom';
  const further = isOfHour && at % hourSeconds === 0 ? 0 : 1;
  return hoursFrom(at, numberParameter(parameters, over.hoursAhead) + further);
}
