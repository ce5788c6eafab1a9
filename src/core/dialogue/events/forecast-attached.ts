import { reportOf } from '../../errors/coded-error.ts';
import { isFetchedLater } from '../../weather/series.ts';
import type { ForecastAttachedEvent } from '../events.ts';
import { instantText } from '../moment.ts';
import { momentOf, moveTo, note } from '../note-down.ts';
import type { State } from '../state.ts';

/** A forecast arrived; what is said beside it (that it is an old one, say) is noted, and so is one fetched after the conversation's moment. */
export function applyForecastAttached(state: State, event: ForecastAttachedEvent): State {
  const { forecast, warning } = event;
  const { askedLatitude, askedLongitude } = forecast.place;
  const attempt = { latitude: askedLatitude, longitude: askedLongitude, look: state.looks, failed: false };
  const warned = warning === undefined ? [] : [{ kind: 'error', error: warning } as const];
  const at = momentOf(state, event);
  const later = reportOf('FORECAST_FETCHED_LATER', {
    expected: `a forecast fetched by ${instantText(at)}`,
    came: instantText(forecast.fetchedAt),
  });
  const ahead = isFetchedLater(forecast, at) ? [{ kind: 'error', error: later } as const] : [];
  const noted = note(state, event, ...warned, ...ahead, {
    kind: 'forecast',
    fetchedAt: forecast.fetchedAt,
    attribution: forecast.attribution,
  });
  return moveTo({ ...noted, forecast, attempt }, event);
}
