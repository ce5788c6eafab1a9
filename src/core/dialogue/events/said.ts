import { isWorkedOut } from '../../facts/depth-reading.ts';
import type { Reading } from '../../facts/types.ts';
import { changed } from '../changed.ts';
import type { FoldContext } from '../context.ts';
import type { SaidEvent } from '../events.ts';
import { applyIntents } from '../intents.ts';
import { momentOf, note } from '../note-down.ts';
import { offeredReadings } from '../offered-readings.ts';
import { isConfirmation, packQuestion } from '../open-question.ts';
import type { State } from '../state.ts';
import { suppose } from '../suppose.ts';
import { takeReadings } from '../take-readings.ts';
import { supposedText } from '../understand/supposed.ts';
import type { Understanding } from '../understand/types.ts';

/** A person typed or spoke: takes what was understood, notes what was not, carries out what was wanted. */
export function applySaid(before: State, event: SaidEvent, context: FoldContext): State {
  const { pack } = context;
  const question = packQuestion(event.asked ?? before.asked, pack);
  const typed = note(before, event, { kind: 'typed', text: event.text });
  if (before.undone.has(event.id)) return typed;
  const confirming = event.asked !== null && isConfirmation(event.asked);
  const told = { asked: question, pack, recent: recentFacts(before), confirming, fields: before.started?.fields ?? [] };
  const supposed = supposedText(event.text);
  if (supposed !== null) return suppose(typed, event, supposed, told, context);
  const understanding = context.understand(event.text, told);
  const { offered, refused } = offeredReadings(understanding.readings, momentOf(before, event), pack.zone);
  const { state: taken, readings } = takeReadings(typed, event, offered);
  const answers = question !== null && offered.some((one) => question.facts.includes(one.fact) && isWhole(one.reading));
  const answered = answers
    ? { ...taken, answered: [...taken.answered, { question: question.id, event: event.id }] }
    : taken;
  const noted = noteUnderstanding(
    answered,
    event,
    { ...understanding, refused: [...understanding.refused, ...refused] },
    readings,
  );
  const done = changed(applyIntents(noted, event, understanding, context), event, pack);
  return done === typed ? note(done, event, { kind: 'nothing-found' }) : done;
}

/** Naming some signs says nothing of the others, and a worked-out band may settle nothing: then the question stays open. */
function isWhole(reading: Reading): boolean {
  if (isWorkedOut(reading)) return false;
  return reading.type !== 'signs' || reading.complete;
}

function recentFacts({ observations, unusual }: State) {
  const spoken = [...observations.filter(({ quote, device }) => quote !== null || device !== ''), ...unusual];
  return [...new Set(spoken.map(({ fact }) => fact).reverse())];
}

function noteUnderstanding(
  state: State,
  event: SaidEvent,
  { refused, remarks, notUnderstood, correction }: Understanding,
  readings: ReturnType<typeof takeReadings>['readings'],
): State {
  return note(
    state,
    event,
    ...(readings.length > 0 ? [{ kind: 'understood', readings, correction, answer: null } as const] : []),
    ...refused.map((error) => ({ kind: 'error', error }) as const),
    ...remarks.map((remark) => ({ kind: 'remark', ...remark }) as const),
    ...(notUnderstood.length > 0 ? [{ kind: 'not-understood', pieces: notUnderstood } as const] : []),
  );
}
