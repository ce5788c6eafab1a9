import { codedError, type ErrorReport, type LoamwardError } from '../../core/errors/coded-error.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { ageHours } from '../../core/weather/series.ts';
import { isoMinute } from '../../core/weather/show-time.ts';
import { gapWarning, placeOf } from './check-reply.ts';
import { createEnsembleAsker } from './ensemble.ts';
import { inTurn } from './in-turn.ts';
import type { TransportMeans } from './one-try.ts';
import { placeStore } from './place-store.ts';
import type { Point } from './question.ts';
import type { ForecastSettings } from './settings.ts';
import { fetchForecast } from './transport.ts';
import { createUsualAir } from './usual-air.ts';
import { withEnsemble } from './with-ensemble.ts';

/** A forecast younger than this is served again without asking, seconds. */
const cacheSeconds = 30 * 60;
/** The last good forecast is served in place of a failed one up to this age, hours. */
export const lastGoodHours = 48;
/** After a 429 without Retry-After the service is left alone this long, seconds. */
export const quietSeconds = 60;
/** A Retry-After is honoured up to this, seconds. */
const longestQuietSeconds = 24 * 3600;
/** Points are rounded to this many decimals of a degree (about 1.1 km) for asking and for the cache. */
export const placeDecimals = 2;

/**
 * What the service answers. With `warning`: the forecast has a gap within 48 h, or is the last good one because fetching
 * failed. With `error`: nothing to decide on; `lastGood` is then a forecast past 48 h, fit to show and not to decide on.
 */
export type ForecastAnswer =
  | { readonly forecast: Forecast; readonly warning?: ErrorReport }
  | { readonly error: ErrorReport; readonly lastGood?: Forecast };

/** Fetches forecasts for points; never throws. */
export interface ForecastService {
  readonly forecastFor: (point: Point) => Promise<ForecastAnswer>;
}

/** One service for the whole program: a cache of 30 min, one question in flight for a place and one at a time in all. */
export function createForecastService(
  options: { readonly settings: ForecastSettings } & TransportMeans,
): ForecastService {
  const { settings, clock } = options;
  const kept = placeStore<Forecast>();
  const flying = new Map<string, Promise<ForecastAnswer>>();
  const takeTurn = inTurn();
  const askEnsemble = createEnsembleAsker(settings, options);
  const usualAir = createUsualAir(settings, options);
  let quietUntil = 0;

  const failed = (error: LoamwardError, lastGood: Forecast | undefined): ForecastAnswer => {
    const report = error.toJSON();
    if (!lastGood) return { error: report };
    const age = ageHours(lastGood, epochSeconds(clock()));
    if (age > lastGoodHours) return { error: report, lastGood };
    const came = `${report.came}; the last good forecast, fetched at ${isoMinute(lastGood.fetchedAt)}, is ${Math.floor(age)} h old and serves instead`;
    return { forecast: lastGood, warning: { ...report, came } };
  };

  const ask = async (point: Point, key: string): Promise<ForecastAnswer> => {
    if (clock() < quietUntil)
      return failed(busy(`asked to wait until ${isoMinute(epochSeconds(quietUntil))}`), kept.get(key));
    const question = { ...point, pastDays: settings.pastDays, forecastDays: settings.forecastDays };
    const usualAirThere = usualAir.ask(point, key, () => {
      const late = kept.get(key);
      if (late) kept.set(key, usualAir.join(late, key));
    });
    const [fetched, ensemble] = await Promise.all([
      fetchForecast(question, settings, options),
      askEnsemble(question),
      usualAirThere,
    ]);
    if ('forecast' in fetched) {
      const forecast = usualAir.join(withEnsemble(fetched.forecast, ensemble), key);
      kept.set(key, forecast);
      return fresh(forecast, clock());
    }
    quietUntil = clock() + quietAfter(fetched.error, fetched.waitS);
    return failed(fetched.error, kept.get(key));
  };

  const forecastFor = async (point: Point): Promise<ForecastAnswer> => {
    if (settings.off)
      return { error: codedError('FORECAST_OFF', { expected: 'the forecast on', came: 'off' }).toJSON() };
    if (!isPoint(point)) return { error: noPoint(point).toJSON() };
    const rounded = roundPoint(point);
    const key = `${rounded.latitude},${rounded.longitude}`;
    const lastGood = kept.get(key);
    if (lastGood && clock() - lastGood.fetchedAt < cacheSeconds) return placed(fresh(lastGood, clock()), point);
    let flight = flying.get(key);
    if (!flight) {
      flight = takeTurn(
        () => ask(rounded, key),
        () => failed(busy('too many questions at once'), kept.get(key)),
      );
      flying.set(key, flight);
      const landed = () => flying.delete(key);
      flight.then(landed, landed);
    }
    return placed(await flight, point);
  };

  return { forecastFor };
}

/** How long to leave the service alone after a failure, seconds. */
function quietAfter(error: LoamwardError, waitS: number | null): number {
  return Math.min(longestQuietSeconds, waitS ?? (error.code === 'FORECAST_BUSY' ? quietSeconds : 0));
}

function fresh(forecast: Forecast, now: number): ForecastAnswer {
  const warning = gapWarning(forecast, epochSeconds(Math.floor(now)));
  return warning ? { forecast, warning } : { forecast };
}

/** The answer with the very point that was asked for, and the distance from it. */
function placed(answer: ForecastAnswer, point: Point): ForecastAnswer {
  if (!('forecast' in answer)) return answer;
  return { ...answer, forecast: { ...answer.forecast, place: placeOf(point, answer.forecast.place) } };
}

function roundPoint({ latitude, longitude }: Point): Point {
  const round = (degrees: number) => Math.round(degrees * 10 ** placeDecimals) / 10 ** placeDecimals + 0;
  return { latitude: round(latitude), longitude: round(longitude) };
}

function isPoint({ latitude, longitude }: Point): boolean {
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
}

function noPoint({ latitude, longitude }: Point): LoamwardError {
  return codedError('FORECAST_WRONG_PLACE', {
    expected: 'a latitude from -90 to 90 and a longitude from -180 to 180',
    came: `${latitude}, ${longitude}`,
  });
}

function busy(came: string): LoamwardError {
  return codedError('FORECAST_BUSY', { expected: 'a free forecast service', came });
}
