import { codedError, type LoamwardError } from '../../core/errors/coded-error.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { hourSeconds } from '../../core/weather/series.ts';
import { leastHorizonHours } from './check-reply.ts';
import type { Ensemble, EnsembleAnswer } from './ensemble.ts';
import { withNote } from './with-note.ts';

/** With fewer runs a chance would be too coarse to hold against a limit. */
const fewestMembers = 10;

/** A forecast with the rain of each run on its own hours; where there is none it stands as it is, and its note says why. */
export function withEnsemble(forecast: Forecast, ensemble: EnsembleAnswer): Forecast {
  const joined = 'error' in ensemble ? ensemble : joinMembers(forecast, ensemble);
  if (!('error' in joined)) return { ...forecast, precipitationMembersMm: joined.members };
  return withNote(forecast, noEnsembleNote(joined.error));
}

/** What a person is told where no ensemble came, with the code of what went wrong. */
function noEnsembleNote(error: Pick<LoamwardError, 'code'>): string {
  return `No ensemble (${error.code}): rain ahead is judged by one run and a wider band.`;
}

/** Runs that know every hour up to 48 h after fetching, laid on the forecast's hours by stamp; null where they do not reach. */
function joinMembers(
  forecast: Forecast,
  ensemble: Ensemble,
): { readonly members: (number | null)[][] } | { readonly error: LoamwardError } {
  if (ensemble.invented !== (forecast.invented === true)) {
    const came = ensemble.invented ? 'invented weather' : 'weather beside an invented forecast';
    return { error: codedError('FORECAST_REJECTED', { expected: 'an ensemble of the same kind', came }) };
  }
  const indexOf = new Map(ensemble.times.map((time, index) => [time, index]));
  const members = ensemble.members.map((member) =>
    forecast.times.map((time) => member[indexOf.get(time) ?? -1] ?? null),
  );
  const near = forecast.times.flatMap((time, index) => {
    const ahead = time - forecast.fetchedAt;
    return ahead > 0 && ahead <= leastHorizonHours * hourSeconds ? [index] : [];
  });
  const whole = members.filter((member) => near.every((index) => member[index] !== null));
  if (whole.length >= fewestMembers) return { members: whole };
  const expected = `at least ${fewestMembers} members that know the next ${leastHorizonHours} h`;
  return { error: codedError('FORECAST_INCOMPLETE', { expected, came: String(whole.length) }) };
}
