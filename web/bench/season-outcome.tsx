import { useMemo } from 'preact/hooks';
import type { SeasonCompared, Side } from '../../src/core/compare/index.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { showDay } from '../../src/core/words/times.ts';
import { Fold } from '../parts/fold.tsx';
import { Invented } from '../parts/invented.tsx';
import { daysByVerdict, lastSeason, type SeasonWeather } from './season.ts';
import { useSpeech, worldOf } from './speech.ts';

interface SeasonOutcomeProps {
  readonly before: Side;
  readonly after: Side;
  readonly weather: SeasonWeather;
  readonly today: string;
}

/** Last season, day by day, before and after the change. */
export function SeasonOutcome({ before, after, weather, today }: SeasonOutcomeProps) {
  const { bench } = useSpeech();
  const season = useMemo(() => seasonOrFault(before, after, weather, today), [before, after, weather, today]);
  return (
    <div class="bench-outcome">
      <h3>
        {bench.season.heading} {weather.invented && <Invented />}
      </h3>
      <p class="quiet">{weather.invented ? bench.season.invented : bench.season.recorded(weather.name)}</p>
      {season === null && <p>{bench.season.empty}</p>}
      {season === 'failed' && <p>{bench.season.failed}</p>}
      {season !== null && season !== 'failed' && <SeasonTable season={season} after={after} />}
    </div>
  );
}

function seasonOrFault(...of: Parameters<typeof lastSeason>): SeasonCompared | null | 'failed' {
  try {
    return lastSeason(...of);
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    return 'failed';
  }
}

function SeasonTable({ season, after }: { readonly season: SeasonCompared; readonly after: Side }) {
  const { words, bench } = useSpeech();
  const { names } = words.verdict;
  const { titleOf } = worldOf(after.pack, words);
  const { changed } = season;
  return (
    <>
      <table class="bench-table">
        <thead>
          <tr>
            <th scope="col">{bench.season.verdict}</th>
            <th scope="col">{bench.season.before}</th>
            <th scope="col">{bench.season.after}</th>
          </tr>
        </thead>
        <tbody>
          {daysByVerdict(season).map(({ verdict, a, b }) => (
            <tr key={verdict}>
              <th scope="row">{names[verdict]}</th>
              <td>{a}</td>
              <td>{b}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {changed.length === 0 ? (
        <p>{bench.season.none}</p>
      ) : (
        <Fold title={bench.season.days(changed.length)}>
          <ul>
            {changed.map(({ iso, a, b, by }) => (
              <li key={iso}>{bench.season.day(showDay(iso, words), names[a], names[b], by.map(titleOf).join(', '))}</li>
            ))}
          </ul>
        </Fold>
      )}
    </>
  );
}
