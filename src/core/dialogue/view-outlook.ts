import { type OutlookInput, outlookOf } from '../outlook/index.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { secondsOf } from '../words/times.ts';
import type { Decision } from './decision-types.ts';
import { outlookView } from './outlook-view/index.ts';
import type { OutlookView } from './outlook-view/types.ts';
import { compiledFor } from './standing.ts';
import type { State, StateObservation } from './state.ts';
import type { ViewContext } from './view-context.ts';

const hourSeconds = 3600;

interface Made {
  readonly at: EpochSeconds;
  readonly words: Catalogue;
  readonly observations: readonly StateObservation[];
  readonly view: OutlookView;
}

const made = new WeakMap<Decision, Made>();

/**
 * The coming days beside the verdict that stands, seen from its moment and, once that is past, from hour to hour. Null without
 * its forecast, and where a stop holds for the season. Made once for each decision, hour and set of things observed.
 */
export function standingOutlook(
  decision: Decision,
  state: Pick<State, 'forecast' | 'observations'>,
  { pack, now, words }: ViewContext,
): OutlookView | null {
  const { forecast } = state;
  if (forecast === null || decision.forecast === null || isOver(decision)) return null;
  if (secondsOf(decision.forecast.fetchedAt) !== Math.floor(forecast.fetchedAt)) return null;
  const given = secondsOf(decision.at);
  const at = epochSeconds(given + Math.max(0, Math.floor((now - given) / hourSeconds)) * hourSeconds);
  const observations = state.observations.filter((one) => Math.floor(one.at) <= given);
  const known = made.get(decision);
  if (known?.at === at && known.words === words && areSame(known.observations, observations)) return known.view;
  const view = outlookBeside(decision, { pack, observations, forecast, at }, words);
  made.set(decision, { at, words, observations, view });
  return view;
}

/** The coming days beside an answer, seen from a moment at or after it. */
export function outlookBeside({ verdict }: Decision, input: OutlookInput, words: Catalogue): OutlookView {
  const { pack, forecast, at } = input;
  return outlookView({ outlook: outlookOf(input), verdict, forecast, pack, compiled: compiledFor(pack, at), words });
}

/** True where a stop holds for the season: then no coming day changes anything. */
export function isOver({ reasons }: Decision): boolean {
  return reasons.some(({ effect, lifts, outcome }) => effect === 'stop' && lifts === 'season' && outcome === 'met');
}

function areSame(some: readonly StateObservation[], others: readonly StateObservation[]): boolean {
  return some.length === others.length && some.every((one, index) => one === others[index]);
}
