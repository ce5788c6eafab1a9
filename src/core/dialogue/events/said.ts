import { isWorkedOut } from '../../facts/depth-reading.ts';
import type { Reading } from '../../facts/types.ts';
import type { Pack, Question } from '../../rules/pack-types.ts';
import { changed } from '../changed.ts';
import type { FoldContext } from '../context.ts';
import type { SaidEvent } from '../events.ts';
import { applyIntents } from '../intents.ts';
import { momentOf, note } from '../note-down.ts';
import { offeredReadings } from '../offered-readings.ts';
import { isConfirmation, packQuestion } from '../open-question.ts';
import { joinSaidTwice } from '../said-twice.ts';
import type { State } from '../state.ts';
import { suppose } from '../suppose.ts';
import { type OfferedReading, takeReadings } from '../take-readings.ts';
import { supposedText } from '../understand/supposed.ts';
import type { Understanding } from '../understand/types.ts';

/** A person typed or spoke: takes what was understood, notes what was not, carries out what was wanted. */
export function applySaid(before: State, event: SaidEvent, context: FoldContext): State {
  const { pack } = context;
  const question = packQuestion(event.asked ?? before.asked, pack);
  const typed = note(before, event, { kind: 'typed', text: event.text });
  if (before.undone.has(event.id)) return typed;
  const confirming = event.asked !== null && isConfirmation(event.asked);
  const language = event.language ?? before.language;
  const fields = before.started?.fields ?? [];
  const told = { asked: question, pack, recent: recentFacts(before), confirming, fields, language };
  const supposed = supposedText(event.text, language);
  if (supposed !== null) return suppose(typed, event, supposed, told, context);
  const understanding = understandWithHour(before, event.text, (text) => context.understand(text, told));
  const moment = momentOf(before, event);
  const { offered: single, refused } = offeredReadings(understanding.readings, moment, pack.zone);
  const isChange = understanding.correction || before.changing === 'soil.temperature30cmC';
  const { offered, differ } = joinSaidTwice(single, before, moment, isChange);
  const { state: taken, readings } = takeReadings(typed, event, offered, pack.facts);
  const answered = differ.length > 0 ? reopened(taken, pack) : withAnswer(taken, event, question, offered);
  const noted = noteUnderstanding(
    answered,
    event,
    {
      ...understanding,
      refused: [...understanding.refused, ...refused],
      remarks: [...understanding.remarks, ...differ.map((quote) => ({ code: 'readings-differ', quote }))],
    },
    readings,
  );
  const hourless = understanding.refused.some(({ code }) => code === 'DEPTH_NEEDS_HOUR') ? event.text : null;
  const done = changed(applyIntents({ ...noted, hourless }, event, understanding, context), event, pack);
  return done.notes === typed.notes ? note(done, event, { kind: 'nothing-found' }) : done;
}

/** Reads a text; an hour alone belongs to the temperature at another depth that was said without one just before. */
function understandWithHour({ hourless }: State, text: string, read: (text: string) => Understanding): Understanding {
  const alone = read(text);
  if (hourless === null || alone.readings.length > 0) return alone;
  const together = read(`${hourless} ${text}`);
  return together.readings.some(({ depthCm }) => depthCm !== undefined) ? together : alone;
}

/** The question of the soil temperature is open again. */
function reopened(state: State, { questions }: Pack): State {
  const open = questions.filter(({ facts }) => facts.includes('soil.temperature30cmC')).map(({ id }) => id);
  return { ...state, answered: state.answered.filter(({ question }) => !open.includes(question)) };
}

/** Notes that a question is answered by what was said. */
function withAnswer(
  state: State,
  event: SaidEvent,
  question: Question | null,
  offered: readonly OfferedReading[],
): State {
  if (question === null) return state;
  if (offered.some((one) => question.facts.includes(one.fact) && isWhole(one.reading))) {
    return { ...state, answered: [...state.answered, { question: question.id, event: event.id }] };
  }
  return state;
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
