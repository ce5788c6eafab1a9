import type { FactContext } from '../../facts/context.ts';
import { derivedNumber } from '../../facts/derive/derived.ts';
import { deriveSoilTemperatureTrend } from '../../facts/derive/soil-temperature-trend.ts';
import type { FactObservation } from '../../facts/resolved.ts';
import type { Resolved } from '../../facts/types.ts';
import {
  isPossibleAir,
  type SoilAirDay,
  type SoilReading,
  soilTodayAndAhead,
} from '../../science/soil/temperature/index.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import type { RecordPlace, WeatherDay } from './types.ts';

/** Days of air before a day from which its soil is modelled; readings older than that are not used either. */
const pastDays = 60;
/** Standard errors to either side that a reading's own band is taken to hold: 95 %. */
const bandReach = 1.96;
const daySeconds = 86_400;

/** The soil at 30 cm through a record, readings being taken now and then. */
export interface SoilFollower {
  /** Takes the recorded temperature of a day as a reading of that day; nothing where there is none. */
  readonly read: (index: number) => void;
  /** Readings so far, oldest first, as observations. */
  readonly readings: () => readonly FactObservation[];
  /** Temperature and trend on a day: read or modelled. */
  readonly temperature: (index: number, context: FactContext) => Resolved;
  readonly trend: (index: number, context: FactContext) => Resolved;
}

/** The model's run of one day: temperature, and the change over the days ahead. */
type Modelled = ReturnType<typeof soilTodayAndAhead> & { readonly aheadDays: number };

/**
 * Follows the soil through a record: on the day of a reading it stands as read, afterwards the model carries it through the
 * air that was, and without any reading it follows from the air alone, with that wide band. The trend ahead counts the
 * usual error of an air forecast.
 */
export function soilFollower(record: readonly WeatherDay[], place: RecordPlace): SoilFollower {
  const days = record.map(({ iso, airMeanC }): SoilAirDay => {
    const airC = airMeanC !== null && isPossibleAir(airMeanC) ? airMeanC : null;
    return { at: noonAt(iso, place), iso, airC };
  });
  let readings: FactObservation[] = [];
  const inputOf = (index: number, aheadDays: number, { parameters }: FactContext) => {
    const { at } = days[index]!;
    const sdC = numberParameter(parameters, 'soilTemperatureReadingBandC') / bandReach;
    return {
      days: days.slice(Math.max(0, index - pastDays), index + aheadDays + 1),
      readings: readings.flatMap(({ reading, at: readAt }): SoilReading[] =>
        reading.type === 'number' ? [{ at: readAt, valueC: reading.value, sdC }] : [],
      ),
      at,
      latitudeDeg: place.latitude,
    };
  };
  let kept: { readonly index: number; readonly of: Modelled } | null = null;
  const modelled = (index: number, context: FactContext): Modelled => {
    if (kept?.index === index) return kept.of;
    const trendDays = context.parameters.get('trendAheadDays')?.value;
    const aheadDays = typeof trendDays === 'number' ? trendDays : 0;
    const of = { ...soilTodayAndAhead(inputOf(index, aheadDays, context), aheadDays), aheadDays };
    kept = { index, of };
    return of;
  };
  return {
    read: (index) => {
      kept = null;
      const { at } = days[index]!;
      const value = record[index]?.soil30cmC ?? null;
      readings = readings.filter((one) => one.at >= at - pastDays * daySeconds);
      if (value === null) return;
      readings.push({ fact: 'soil.temperature30cmC', reading: { type: 'number', value }, at, source: 'measured' });
    },
    readings: () => readings,
    temperature: (index, context) => {
      const last = readings.at(-1);
      const { at } = days[index]!;
      if (last?.at === at && last.reading.type === 'number') {
        const { value } = last.reading;
        return { known: true, type: 'number', value, low: value, high: value, source: 'measured', at, goodUntil: null };
      }
      const { today: here } = modelled(index, context);
      const note = last === undefined ? 'modelled from the air alone' : 'carried forward from the last reading';
      const banded = { value: here.valueC, low: here.low95C, high: here.high95C };
      return derivedNumber('soil.temperature30cmC', banded, at, null, note);
    },
    trend: (index, context) => {
      const seen = deriveSoilTemperatureTrend(context);
      if (seen !== null) return seen;
      const { ahead, aheadDays } = modelled(index, context);
      if (ahead === null) return { known: false, reason: 'forecast-gap' };
      const note = `modelled over ${aheadDays} days`;
      return derivedNumber('soil.temperatureTrendCPerDay', ahead, days[index]!.at, null, note);
    },
  };
}

/** Noon by the sun at a place on a day. */
export function noonAt(iso: string, { longitude }: Pick<RecordPlace, 'longitude'>): EpochSeconds {
  const [year, month, day] = [iso.slice(0, 4), iso.slice(5, 7), iso.slice(8, 10)];
  return epochSeconds(Date.UTC(Number(year), Number(month) - 1, Number(day), 12) / 1000 - longitude * 240);
}
