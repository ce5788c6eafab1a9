import { Aggregation } from '@openmeteo/sdk/aggregation.js';
import { Unit } from '@openmeteo/sdk/unit.js';
import { Variable } from '@openmeteo/sdk/variable.js';
import type { VariablesWithTime } from '@openmeteo/sdk/variables-with-time.js';
import { codedError, isLoamwardError, type LoamwardError } from '../../core/errors/coded-error.ts';
import { climatologyFrom, type SiteClimatology } from '../../core/science/soil/temperature/index.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import { isoMinute } from '../../core/weather/show-time.ts';
import { inventedHeader } from './attribution.ts';
import { checkPlace, placeOf } from './check-reply.ts';
import { cleanColumn } from './clean.ts';
import { dailyBlock, decodeWith } from './decode.ts';
import { onlyFrame } from './frames.ts';
import { oneTry, type TransportMeans } from './one-try.ts';
import { archiveAddressOf, type Point } from './question.ts';
import type { ForecastSettings } from './settings.ts';

/** Whole years asked for: a mean of fewer leans on single winters, and more belong to a colder climate. Our choice. */
const archiveYears = 10;
/** The usual air of a place is asked for again after this long, seconds: a new year hardly moves a mean of ten. */
export const archiveKeptS = 180 * 24 * 3600;
/** After a failed try the archive is left alone this long, seconds, or as long as it asks. */
const archiveQuietS = 3600;

/** The usual air of a place, or why there is none. */
export type ArchiveAnswer =
  | { readonly climatology: SiteClimatology; readonly invented: boolean }
  | { readonly error: LoamwardError };

/** Asks for the usual air of a place: one try, never thrown out of, and none while the archive is to be left alone. */
export function createArchiveAsker(
  settings: ForecastSettings,
  means: TransportMeans,
): (point: Point) => Promise<ArchiveAnswer> {
  let quietUntil = 0;
  return async (point) => {
    if (!settings.archive) return { error: codedError('FORECAST_OFF', { expected: 'the archive on', came: 'off' }) };
    const now = epochSeconds(means.clock());
    if (now < quietUntil) {
      return { error: codedError('FORECAST_BUSY', { expected: 'a free archive', came: 'asked to wait' }) };
    }
    const last = Number(isoMinute(now).slice(0, 4)) - 1;
    const years = { first: last - archiveYears + 1, last };
    const request = {
      address: archiveAddressOf(point, years, settings),
      headers: { accept: 'application/octet-stream', 'user-agent': settings.userAgent },
      inventedHeader,
    };
    const result = await oneTry(means, request, settings.timeoutS);
    const answer = 'bytes' in result ? readArchive(result.bytes, result.invented, point) : { error: result.error };
    if ('error' in answer) {
      const waitS = 'waitS' in result ? result.waitS : null;
      quietUntil = means.clock() + Math.max(archiveQuietS, waitS ?? 0);
    }
    return answer;
  };
}

/** Bytes of a success to the usual air of the point asked for; what cannot be read or covers too little is the coded error. */
export function readArchive(bytes: Uint8Array, invented: boolean, asked: Point): ArchiveAnswer {
  try {
    const decoded = decodeWith(onlyFrame(bytes), (daily, days) => ({ airC: meanAirOf(daily, days) }), dailyBlock);
    checkPlace(placeOf(asked, decoded));
    const days = decoded.times.map((at, index) => ({
      iso: isoMinute(at).slice(0, 10),
      airC: decoded.airC[index] ?? null,
    }));
    const climatology = climatologyFrom(days, invented ? 'invented archive' : 'archive of the forecast service');
    if (climatology) return { climatology, invented };
    throw codedError('FORECAST_INCOMPLETE', { expected: 'every part of the year', came: `${days.length} days` });
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    return { error };
  }
}

function meanAirOf(daily: VariablesWithTime, days: number): (number | null)[] {
  const sent = daily.variablesLength() === 1 ? daily.variables(0) : null;
  const raw = sent?.valuesArray();
  const isMean = sent?.variable() === Variable.temperature && sent.aggregation() === Aggregation.mean;
  if (!sent || !raw || !isMean || sent.altitude() !== 2 || raw.length !== days) {
    throw codedError('FORECAST_GARBLED', { expected: `${days} mean air temperatures at 2 m`, came: 'something else' });
  }
  if (sent.unit() === Unit.celsius) return cleanColumn(raw, 'temperature2mC', 'temperature_2m_mean');
  const came = Unit[sent.unit()] ?? `unit number ${sent.unit()}`;
  throw codedError('FORECAST_WRONG_UNIT', { expected: `mean air temperature in ${Unit[Unit.celsius]}`, came });
}
