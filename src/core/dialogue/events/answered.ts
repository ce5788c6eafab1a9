import { answerReadings } from '../answer-readings.ts';
import { confirm } from '../confirm.ts';
import type { FoldContext } from '../context.ts';
import { decline } from '../decline.ts';
import type { AnsweredEvent } from '../events.ts';
import { note } from '../note-down.ts';
import { isConfirmation, packQuestion } from '../open-question.ts';
import type { State } from '../state.ts';
import { takeReadings } from '../take-readings.ts';

/** A person pressed an answer, filled a box, or pressed "don't know". */
export function applyAnswered(before: State, event: AnsweredEvent, { pack }: FoldContext): State {
  const state = note(before, event, { kind: 'pressed', answer: event });
  if (state.undone.has(event.id)) return state;
  if (event.doesNotKnow) return decline(state, event, event.question, pack);
  if (isConfirmation(event.question) && Object.keys(event.numbers).length === 0) {
    return confirm(state, event, event.choices.includes('yes'), pack);
  }
  const readings = answerReadings(event, packQuestion(event.question, pack));
  if ('code' in readings) return note(state, event, { kind: 'error', error: readings });
  const offered = readings.map((one) => ({ ...one, quote: null, doubtful: false, agoHours: 0 }));
  const taken = takeReadings(state, event, offered);
  const refused = offered.length > 0 && taken.readings.length === 0 && taken.state.unusual === state.unusual;
  if (refused) return taken.state;
  const question = packQuestion(event.question, pack)?.id ?? event.question;
  const answered = { ...taken.state, answered: [...taken.state.answered, { question, event: event.id }] };
  if (taken.readings.length === 0) return answered;
  return note(answered, event, { kind: 'understood', readings: taken.readings, correction: false, answer: event });
}
