import {
  isPossibleAir,
  type SoilAirDay,
  type SoilReading,
  type SoilTemperatureInput,
} from '../../science/soil/temperature/index.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import type { Forecast, WeatherVariable } from '../../weather/forecast.ts';
import { hourSeconds, lastStamp } from '../../weather/series.ts';
import type { FactContext, TrustedForecast } from '../context.ts';
import { localDate, nextMidnight, noonOf } from '../local-day.ts';
import { checkRange } from '../plausible.ts';
import { type CoreFactId, coreFacts } from '../registry/index.ts';
import { asNumber } from './derived.ts';

const temperature: CoreFactId = 'soil.temperature30cmC';
/** Least hours of a local day from which its mean is taken; with fewer the day counts as a gap. */
const leastHours = 18;
/** Readings older than this say nothing any more that the band does not already hold, days. */
const oldestReadingDays = 60;
/** Standard errors to either side that a person's own band is taken to hold: 95 %. */
const bandReach = 1.96;

/** Days of the field with air and the forecast's own soil at 30 cm (a third of the way from 18 to 54 cm), from `from` to the end of the forecast and `moreDays` after it. */
export function soilDaysOf(forecast: Forecast, zone: string, from: EpochSeconds, moreDays: number): SoilAirDay[] {
  const means = meansOf(forecast, zone);
  const until = (lastStamp(forecast) ?? from) + moreDays * 24 * hourSeconds;
  const days: SoilAirDay[] = [];
  for (let midnight = from; midnight <= until; midnight = nextMidnight(midnight, zone)) {
    const iso = localDate(midnight, zone);
    days.push({ at: noonOf(iso, zone), iso, ...(means.get(iso) ?? { airC: null, layerC: null }) });
  }
  return days;
}

/**
 * What the soil's temperature is modelled from: the person's readings of the last two months and the forecast's days in the
 * pack's zone, with `moreDays` after it. Null without a reading.
 */
export function soilInputOf(
  context: FactContext,
  trusted: TrustedForecast,
  moreDays: number,
): SoilTemperatureInput | null {
  const { at, zone } = context;
  const { forecast, growth } = trusted;
  const readings = soilReadings(context);
  const first = forecast.times[0];
  if (readings.length === 0 || first === undefined) return null;
  const from = epochSeconds(Math.min(first, ...readings.map((one) => one.at)));
  const latitude = asNumber(context.fact('field.latitude'));
  return {
    days: soilDaysOf(forecast, zone, from, moreDays),
    readings,
    at,
    airKnownUntil: epochSeconds(Math.min(at, forecast.fetchedAt)),
    latitudeDeg: latitude?.value ?? forecast.place.latitude,
    airErrorFactor: growth,
    ...(forecast.climatology && { climatology: forecast.climatology }),
  };
}

/** The person's readings at 30 cm that the model may use, oldest first. */
export function soilReadings({ at, observations, parameters }: FactContext): SoilReading[] {
  const band = numberParameter(parameters, 'soilTemperatureReadingBandC');
  return observations(temperature).flatMap(({ reading, at: seenAt }) => {
    if (reading.type !== 'number' || seenAt < at - oldestReadingDays * 24 * hourSeconds) return [];
    if (checkRange(temperature, coreFacts[temperature], reading)) return [];
    const { value, low = value, high = value } = reading;
    return [{ at: seenAt, valueC: value, sdC: Math.max(band, value - low, high - value) / bandReach }];
  });
}

interface DayMeans {
  readonly airC: number | null;
  readonly layerC: number | null;
}

const kept = new WeakMap<Forecast, { readonly zone: string; readonly means: ReadonlyMap<string, DayMeans> }>();

function meansOf(forecast: Forecast, zone: string): ReadonlyMap<string, DayMeans> {
  const last = kept.get(forecast);
  if (last?.zone === zone) return last.means;
  const hoursOf = new Map<string, number[]>();
  forecast.times.forEach((time, index) => {
    const iso = localDate(time, zone);
    const hours = hoursOf.get(iso);
    if (hours) hours.push(index);
    else hoursOf.set(iso, [index]);
  });
  const means = new Map([...hoursOf].map(([iso, hours]) => [iso, dayMeans(forecast, hours)]));
  kept.set(forecast, { zone, means });
  return means;
}

function dayMeans(forecast: Forecast, hours: readonly number[]): DayMeans {
  const mean = (variable: WeatherVariable) => {
    const values = hours.flatMap((index) => forecast.values[variable]?.[index] ?? []);
    return values.length < leastHours ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  const [upper, lower] = [mean('soilTemperature18cmC'), mean('soilTemperature54cmC')];
  const air = mean('temperature2mC');
  return {
    airC: air !== null && isPossibleAir(air) ? air : null,
    layerC: upper === null || lower === null ? null : upper + (lower - upper) / 3,
  };
}
