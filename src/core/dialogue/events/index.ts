import type { FoldContext } from '../context.ts';
import type { ConversationEvent } from '../events.ts';
import type { State } from '../state.ts';
import { applyAnswered } from './answered.ts';
import { applyEvaluated } from './evaluated.ts';
import { applyEvaluationFailed } from './evaluation-failed.ts';
import { applyForecastAttached } from './forecast-attached.ts';
import { applyForecastFailed } from './forecast-failed.ts';
import { applyRequested } from './requested.ts';
import { applySaid } from './said.ts';
import { applyStarted } from './started.ts';
import { applyUndone } from './undone.ts';
import { applyVerdictGiven } from './verdict-given.ts';

type Kind = ConversationEvent['kind'];
type EventOf<K extends Kind> = Extract<ConversationEvent, { kind: K }>;

/** What each kind of event does to the state. */
export const eventTable: { readonly [K in Kind]: (state: State, event: EventOf<K>, context: FoldContext) => State } = {
  started: applyStarted,
  said: applySaid,
  answered: applyAnswered,
  requested: applyRequested,
  undone: applyUndone,
  'forecast-attached': applyForecastAttached,
  'forecast-failed': applyForecastFailed,
  evaluated: applyEvaluated,
  'evaluation-failed': applyEvaluationFailed,
  'verdict-given': applyVerdictGiven,
};
