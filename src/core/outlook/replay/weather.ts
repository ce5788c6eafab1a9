import { derivedNumber } from '../../facts/derive/derived.ts';
import { cautiousEnd, cautiousNote } from '../../facts/observed-known.ts';
import { type CoreFactId, coreFacts, type FactId } from '../../facts/registry/index.ts';
import type { Known, Resolved } from '../../facts/types.ts';
import { windAtBoom } from '../../science/wind/at-boom.ts';
import { type EpochSeconds, kilometresPerHour } from '../../units/brands.ts';
import { numberParameter, type Parameters } from '../../units/parameter.ts';
import type { Banded } from '../../weather/banded.ts';
import type { WeatherDay } from './types.ts';

/** What a record tells of the weather on a day. */
export interface RecordedWeather {
  readonly at: EpochSeconds;
  /** The day itself, then the day after it where the record has one. */
  readonly days: readonly [WeatherDay, WeatherDay | undefined];
  readonly parameters: Parameters;
}

type Told = (weather: RecordedWeather) => Resolved | null;

/**
 * Facts of the weather from a record of days; null where it is silent, so that what is assumed stands in. The air at noon lies
 * between the day's mean and its highest.
 */
export const recordedWeather: Readonly<Partial<Record<FactId, Told>>> = {
  'air.temperatureC': ({ at, days: [{ airMeanC, airMaxC }] }) => {
    if (airMeanC === null) return null;
    const high = Math.max(airMeanC, airMaxC ?? airMeanC);
    return recorded('air.temperatureC', { value: (airMeanC + high) / 2, low: airMeanC, high }, at);
  },
  'wind.boomKmh': (weather) => atBoom('wind.boomKmh', weather.days[0].windKmh, weather),
  'wind.gustKmh': (weather) => atBoom('wind.gustKmh', weather.days[0].gustKmh, weather),
  'rain.next48hMm': ({ at, days }) => {
    const [today, next] = [days[0].rainMm, days[1]?.rainMm ?? null];
    if (today === null || next === null) return gap;
    const value = today + next;
    return recorded('rain.next48hMm', { value, low: value, high: value }, at);
  },
  'rain.next48hMaxMmPerH': ({ at, days: [today, next] }) => {
    const both = [today, next].map((day) => (day === undefined ? null : heaviestHour(day)));
    const known = both.filter((one) => one !== null);
    if (known.length < both.length) return gap;
    const low = Math.max(...known.map((one) => one.low));
    const high = Math.max(...known.map((one) => one.high));
    if (low === high) return recorded('rain.next48hMaxMmPerH', { value: high, low, high }, at);
    const fact = recorded('rain.next48hMaxMmPerH', cautiousEnd(high), at);
    return { ...fact, note: cautiousNote(low, high) };
  },
};

const gap: Resolved = { known: false, reason: 'forecast-gap', note: 'the record has a gap there' };

/** The heaviest hour of a day, mm/h: as recorded, else between rain spread over the day and all of it in one hour. */
function heaviestHour({ rainMm, heaviestMmPerH }: WeatherDay): { readonly low: number; readonly high: number } | null {
  if (heaviestMmPerH != null) return { low: heaviestMmPerH, high: heaviestMmPerH };
  return rainMm === null ? null : { low: rainMm / 24, high: rainMm };
}

function atBoom(id: CoreFactId, at10mKmh: number | null, { at, parameters }: RecordedWeather): Resolved | null {
  if (at10mKmh === null) return null;
  const canopyHeightM = numberParameter(parameters, 'cropHeightM');
  const boomHeightM = canopyHeightM + numberParameter(parameters, 'boomHeightAboveCropM');
  const value = windAtBoom(kilometresPerHour(at10mKmh), { boomHeightM, canopyHeightM });
  return recorded(id, { value, low: value, high: value }, at);
}

function recorded(id: CoreFactId, banded: Banded, at: EpochSeconds): Known {
  return derivedNumber(id, banded, at, null, `from the record, ${coreFacts[id].label}`);
}
