import { codedError, isLoamwardError, type LoamwardError } from '../../core/errors/coded-error.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import { inventedHeader } from './attribution.ts';
import { checkPlace, placeOf } from './check-reply.ts';
import { decodeWith } from './decode.ts';
import { onlyFrame } from './frames.ts';
import { memberColumnsOf } from './member-columns.ts';
import { oneTry, type TransportMeans } from './one-try.ts';
import { ensembleAddressOf, type Point, type Question } from './question.ts';
import type { ForecastSettings } from './settings.ts';

/** The ensemble only sharpens what a forecast says, so it never holds one up longer than this, seconds. */
const ensembleLimitS = 5;

/** After a failed try that names no time the ensemble is left alone this long, seconds: a broken one slows no more forecasts. */
const ensembleQuietS = 60;
const longestQuietS = 24 * 3600;

/** Rain of each run, mm of the hour before the stamp, as long as `times`. */
export interface Ensemble {
  readonly times: readonly EpochSeconds[];
  readonly members: readonly (readonly (number | null)[])[];
  readonly invented: boolean;
}

/** An ensemble, or why there is none. */
export type EnsembleAnswer = Ensemble | { readonly error: LoamwardError };

/** Asks for the ensemble of a place: one try, never thrown out of, and none while it is to be left alone. */
export function createEnsembleAsker(
  settings: ForecastSettings,
  means: TransportMeans,
): (question: Question) => Promise<EnsembleAnswer> {
  let quietUntil = 0;
  return async (question) => {
    if (!settings.ensemble) {
      return { error: codedError('FORECAST_OFF', { expected: 'the ensemble on', came: 'off' }) };
    }
    if (means.clock() < quietUntil) {
      return { error: codedError('FORECAST_BUSY', { expected: 'a free ensemble service', came: 'asked to wait' }) };
    }
    const request = {
      address: ensembleAddressOf(question, settings),
      headers: { accept: 'application/octet-stream', 'user-agent': settings.userAgent },
      inventedHeader,
    };
    const result = await oneTry(means, request, Math.min(ensembleLimitS, settings.timeoutS));
    if ('bytes' in result) return readEnsemble(result.bytes, result.invented, question);
    quietUntil = means.clock() + Math.min(longestQuietS, result.waitS ?? ensembleQuietS);
    return { error: result.error };
  };
}

/** Bytes of a success to the runs of an ensemble for the point asked for; what cannot be read is the coded error. */
function readEnsemble(bytes: Uint8Array, invented: boolean, asked: Point): EnsembleAnswer {
  try {
    const decoded = decodeWith(onlyFrame(bytes), (hourly, hours) => ({ members: memberColumnsOf(hourly, hours) }));
    checkPlace(placeOf(asked, decoded));
    return { times: decoded.times, members: decoded.members, invented };
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    return { error };
  }
}
