import type { Pack } from '../rules/pack-types.ts';
import type { EventStamp } from './events.ts';
import { moveTo, note } from './note-down.ts';
import { packQuestion } from './open-question.ts';
import type { State } from './state.ts';
import { observationOf } from './take-readings.ts';

/** The person was asked and cannot say: noted for every fact of the question; what waited to be confirmed is dropped. */
export function decline(state: State, event: EventStamp, questionId: string | null, pack: Pack): State {
  const question = packQuestion(questionId, pack);
  if (question === null) return note(state, event, { kind: 'no-question' });
  const observations = question.facts.map((fact) =>
    observationOf(
      state,
      event,
      { fact, reading: { type: 'does-not-know' }, quote: null, doubtful: false, agoHours: 0 },
      pack.facts,
    ),
  );
  const declined: State = {
    ...state,
    observations: [...state.observations, ...observations],
    unusual: state.unusual.filter(({ fact }) => !question.facts.includes(fact)),
    answered: [...state.answered, { question: question.id, event: event.id }],
  };
  return moveTo(note(declined, event, { kind: 'declined', question: question.id }), event);
}
