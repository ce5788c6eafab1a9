import type { ForecastAttachedEvent } from '../events.ts';
import { moveTo, note } from '../note-down.ts';
import type { State } from '../state.ts';

/** A forecast arrived; what is said beside it (that it is an old one, say) is noted. */
export function applyForecastAttached(state: State, event: ForecastAttachedEvent): State {
  const { forecast, warning } = event;
  const { askedLatitude, askedLongitude } = forecast.place;
  const attempt = { latitude: askedLatitude, longitude: askedLongitude, look: state.looks, failed: false };
  const warned = warning === undefined ? [] : [{ kind: 'error', error: warning } as const];
  const noted = note(state, event, ...warned, {
    kind: 'forecast',
    fetchedAt: forecast.fetchedAt,
    attribution: forecast.attribution,
  });
  return moveTo({ ...noted, forecast, attempt }, event);
}
