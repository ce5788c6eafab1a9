import type { Pack } from '../rules/pack-types.ts';
import type { EventStamp } from './events.ts';
import { questionOfFact } from './open-question.ts';
import type { State } from './state.ts';

/**
 * The state once an event has answered the question whose answer was to be changed: what was told for its facts before stands no
 * longer, as if the new answer had come first. The same state while it has not been answered.
 */
export function changed(state: State, { id }: Pick<EventStamp, 'id'>, pack: Pack): State {
  const question = state.changing === null ? null : questionOfFact(state.changing, pack);
  if (question === null) return state;
  const isOfIt = (fact: string) => question.facts.some((one) => one === fact);
  if (![...state.observations, ...state.unusual].some(({ fact, event }) => event === id && isOfIt(fact))) return state;
  if (state.unusual.some(({ fact, event }) => event === id && isOfIt(fact))) return state;
  return {
    ...state,
    changing: null,
    observations: state.observations.filter(({ fact, event }) => event === id || !isOfIt(fact)),
    answered: state.answered.filter(({ question: one, event }) => event === id || one !== question.id),
  };
}
