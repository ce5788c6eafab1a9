import { answerReadings } from '../answer-readings.ts';
import { changed } from '../changed.ts';
import { confirm } from '../confirm.ts';
import type { FoldContext } from '../context.ts';
import { decline } from '../decline.ts';
import type { AnsweredEvent } from '../events.ts';
import { note } from '../note-down.ts';
import { isConfirmation, packQuestion } from '../open-question.ts';
import type { State } from '../state.ts';
import { takeReadings } from '../take-readings.ts';

/** A person pressed an answer, filled a box, or pressed "don't know". */
export function applyAnswered(before: State, event: AnsweredEvent, context: FoldContext): State {
  const { also = [], ...first } = event;
  return [first, ...also].reduce((state, given) => applyOne(state, { ...first, ...given }, context), before);
}

/** One of the answers given in one go, each in its own right. */
function applyOne(before: State, event: AnsweredEvent, { pack }: FoldContext): State {
  const { question: asked, choices, numbers, doesNotKnow } = event;
  const answer = { question: asked, choices, numbers, doesNotKnow };
  const state = note(before, event, { kind: 'pressed', answer });
  if (state.undone.has(event.id)) return state;
  if (event.doesNotKnow) return changed(decline(state, event, event.question, pack), event, pack);
  if (isConfirmation(event.question) && Object.keys(event.numbers).length === 0) {
    return confirm(state, event, event.choices.includes('yes'), pack);
  }
  const readings = answerReadings(event, packQuestion(event.question, pack), pack.facts);
  if ('code' in readings) return note(state, event, { kind: 'error', error: readings });
  const offered = readings.map((one) => ({ ...one, quote: null, doubtful: false, agoHours: 0 }));
  const taken = takeReadings(state, event, offered, pack.facts);
  const refused = offered.length > 0 && taken.readings.length === 0 && taken.state.unusual === state.unusual;
  if (refused) return taken.state;
  const question = packQuestion(event.question, pack)?.id ?? event.question;
  const answered = changed(
    { ...taken.state, answered: [...taken.state.answered, { question, event: event.id }] },
    event,
    pack,
  );
  if (taken.readings.length === 0) return answered;
  return note(answered, event, {
    kind: 'understood',
    readings: taken.readings,
    correction: before.changing !== null,
    answer,
  });
}
