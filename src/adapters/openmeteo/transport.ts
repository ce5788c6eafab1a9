import { isLoamwardError, type LoamwardError } from '../../core/errors/coded-error.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { attribution, inventedAttribution, inventedHeader } from './attribution.ts';
import { checkPlace, checkReach, placeOf } from './check-reply.ts';
import { decodePlace } from './decode.ts';
import { onlyFrame } from './frames.ts';
import { oneTry, type TransportMeans } from './one-try.ts';
import { addressOf, type Question } from './question.ts';
import type { ForecastSettings } from './settings.ts';
import { askedVariables } from './variables.ts';

/** Tries of one question, the first included. */
const mostTries = 3;
/** The wait before try n is uniform between 0 and this times 2^(n - 1), at most `longestWaitS`; seconds. */
const firstWaitS = 0.5;
const longestWaitS = 8;

/** A forecast, or why there is none; `waitS` is how long the service asked to be left alone, seconds. */
export type Fetched =
  | { readonly forecast: Forecast }
  | { readonly error: LoamwardError; readonly waitS: number | null };

/**
 * Asks the service: at most three tries with full jitter between, each under its time limit, all within the budget, a
 * Retry-After honoured. A try is repeated only where that may help: no connection, silence, status 429 or 5xx, a garbled body.
 */
export async function fetchForecast(
  question: Question,
  settings: ForecastSettings,
  means: TransportMeans,
): Promise<Fetched> {
  const deadline = means.clock() + settings.budgetS;
  const request = {
    address: addressOf(question, settings),
    headers: { accept: 'application/octet-stream', 'user-agent': settings.userAgent },
    inventedHeader,
  };
  for (let attempt = 1; ; attempt += 1) {
    const limitS = Math.min(settings.timeoutS, deadline - means.clock());
    const result = await oneTry(means, request, limitS);
    const read = 'bytes' in result ? readReply(result.bytes, result.invented, question, means.clock()) : result;
    if ('forecast' in read) return read;
    const jitterS = means.random() * Math.min(longestWaitS, firstWaitS * 2 ** (attempt - 1));
    const pauseS = Math.max(jitterS, read.waitS ?? 0);
    const room = means.clock() + pauseS < deadline;
    if (!read.again || attempt === mostTries || !room) return { error: read.error, waitS: read.waitS };
    await means.sleep(pauseS * 1000);
  }
}

/** Bytes of a success to a forecast that answers the question, checked from the frames up. `now` in epoch seconds. */
export function readReply(
  bytes: Uint8Array,
  invented: boolean,
  question: Question,
  now: number,
): { readonly forecast: Forecast } | { readonly error: LoamwardError; readonly again: boolean; readonly waitS: null } {
  try {
    const decoded = decodePlace(onlyFrame(bytes), askedVariables);
    const forecast: Forecast = {
      place: placeOf(question, decoded),
      fetchedAt: epochSeconds(Math.floor(now)),
      attribution: invented ? inventedAttribution : attribution,
      ...(invented ? { invented: true } : {}),
      times: decoded.times,
      values: decoded.values,
    };
    checkPlace(forecast.place);
    checkReach(forecast, forecast.fetchedAt);
    return { forecast };
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    return { error, again: error.code === 'FORECAST_GARBLED', waitS: null };
  }
}
