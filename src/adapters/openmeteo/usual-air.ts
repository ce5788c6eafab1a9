import { codedError, type LoamwardError } from '../../core/errors/coded-error.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { type ArchiveAnswer, archiveKeptS, createArchiveAsker } from './archive.ts';
import type { TransportMeans } from './one-try.ts';
import { placeStore } from './place-store.ts';
import type { Point } from './question.ts';
import type { ForecastSettings } from './settings.ts';
import { withNote } from './with-note.ts';

/** A forecast waits at most this long for the usual air, both asked for at once, seconds: it moves only what lies beyond it. */
export const archiveWaitS = 2;

/** The usual air of places, asked for beside the forecast. */
export interface UsualAir {
  /**
   * Begins to ask where nothing fresh is kept and nobody asks already; `arrived` is called once it is kept. Ends when it has
   * come or failed, at the latest after `archiveWaitS`. Never throws.
   */
  readonly ask: (point: Point, key: string, arrived: () => void) => Promise<void>;
  /** The forecast with what is kept for its place; where it failed, or only one of the two is invented, a note says so. */
  readonly join: (forecast: Forecast, key: string) => Forecast;
}

/**
 * Keeps the usual air of each place for half a year. A verdict hardly waits for it: it only moves what is said of the weeks
 * beyond the forecast, so a forecast that comes first takes the latitude's, and the next one that of the place.
 */
export function createUsualAir(settings: ForecastSettings, means: TransportMeans): UsualAir {
  const kept = placeStore<{ readonly answer: Exclude<ArchiveAnswer, { error: unknown }>; readonly at: number }>();
  const failures = placeStore<LoamwardError>();
  const asking = new Set<string>();
  const askArchive = createArchiveAsker(settings, means);
  return {
    ask: async (point, key, arrived) => {
      const there = kept.get(key);
      const isFresh = there !== undefined && means.clock() - there.at < archiveKeptS;
      if (!settings.archive || isFresh || asking.has(key)) return;
      asking.add(key);
      const answered = askArchive(point).then((answer) => {
        asking.delete(key);
        if ('error' in answer) {
          failures.set(key, answer.error);
          return;
        }
        kept.set(key, { answer, at: means.clock() });
        arrived();
      });
      const timer = new AbortController();
      await Promise.race([answered, means.sleep(archiveWaitS * 1000, timer.signal)]);
      timer.abort();
    },
    join: (forecast, key) => {
      const answer = kept.get(key)?.answer;
      if (answer && answer.invented === (forecast.invented === true)) {
        return { ...forecast, climatology: answer.climatology };
      }
      const error = answer ? mixed(answer.invented) : failures.get(key);
      return error ? withNote(forecast, noArchiveNote(error)) : forecast;
    },
  };
}

/** What a person is told where the usual air of the place could not be had, with the code of what went wrong. */
export function noArchiveNote(error: Pick<LoamwardError, 'code'>): string {
  return `No archive of past years (${error.code}): beyond the forecast the usual air of the latitude stands in.`;
}

function mixed(invented: boolean): LoamwardError {
  const came = invented ? 'invented past years' : 'past years beside an invented forecast';
  return codedError('FORECAST_REJECTED', { expected: 'an archive of the same kind', came });
}
