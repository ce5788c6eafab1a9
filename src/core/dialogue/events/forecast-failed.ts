import type { FoldContext } from '../context.ts';
import type { ForecastFailedEvent } from '../events.ts';
import { pointOf } from '../forecast-need.ts';
import { moveTo, note } from '../note-down.ts';
import { standingOf } from '../standing.ts';
import type { State } from '../state.ts';

/** No forecast is to be had: said, and the weather is asked by hand. A forecast had before stays as long as it is good. */
export function applyForecastFailed(state: State, event: ForecastFailedEvent, { pack }: FoldContext): State {
  const point = pointOf(standingOf(state, pack)?.facts ?? {}) ?? { latitude: Number.NaN, longitude: Number.NaN };
  const attempt = { ...point, look: state.looks, failed: true };
  const noted = note(state, event, { kind: 'error', error: event.error }, { kind: 'forecast-failed' });
  return moveTo({ ...noted, attempt }, event);
}
