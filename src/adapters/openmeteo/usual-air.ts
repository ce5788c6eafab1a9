import type { Forecast } from '../../core/weather/forecast.ts';
import { type ArchiveAnswer, archiveKeptS, createArchiveAsker } from './archive.ts';
import type { TransportMeans } from './one-try.ts';
import { placeStore } from './place-store.ts';
import type { Point } from './question.ts';
import type { ForecastSettings } from './settings.ts';

/** The usual air of places, asked for beside the forecast and never waited for. */
export interface UsualAir {
  /** Begins to ask where nothing fresh is kept and nobody asks already; `arrived` is called once it is kept. Never throws. */
  readonly ask: (point: Point, key: string, arrived: () => void) => void;
  /** The forecast with what is kept for its place; as it is where nothing is, or where only one of the two is invented. */
  readonly join: (forecast: Forecast, key: string) => Forecast;
}

/**
 * Keeps the usual air of each place for half a year. A verdict does not wait for it: it only moves what is said of the weeks
 * beyond the forecast, so a forecast that comes first takes the latitude's, and the next one that of the place.
 */
export function createUsualAir(settings: ForecastSettings, means: TransportMeans): UsualAir {
  const kept = placeStore<{ readonly answer: Exclude<ArchiveAnswer, { error: unknown }>; readonly at: number }>();
  const asking = new Set<string>();
  const askArchive = createArchiveAsker(settings, means);
  return {
    ask: (point, key, arrived) => {
      const there = kept.get(key);
      if (asking.has(key) || (there && means.clock() - there.at < archiveKeptS)) return;
      asking.add(key);
      void askArchive(point).then((answer) => {
        asking.delete(key);
        if ('error' in answer) return;
        kept.set(key, { answer, at: means.clock() });
        arrived();
      });
    },
    join: (forecast, key) => {
      const answer = kept.get(key)?.answer;
      if (!answer || answer.invented !== (forecast.invented === true)) return forecast;
      return { ...forecast, climatology: answer.climatology };
    },
  };
}
