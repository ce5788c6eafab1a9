import { confirm } from './confirm.ts';
import type { FoldContext } from './context.ts';
import { decline } from './decline.ts';
import type { SaidEvent } from './events.ts';
import { note } from './note-down.ts';
import { isConfirmation, openQuestion, packQuestion } from './open-question.ts';
import { request } from './requests.ts';
import type { State } from './state.ts';
import { lastTelling, takeBack } from './take-back.ts';
import { termsHere } from './terms-here.ts';
import type { Intent, Understanding } from './understand/types.ts';
import { explain, goToNext } from './wishes.ts';

type Carry = (state: State, event: SaidEvent, context: FoldContext, understanding: Understanding) => State;

const carries: Readonly<Record<Intent, Carry>> = {
  why: (state, event, context) => request(state, event, 'why-asked', context),
  'what-said': (state, event, context) => request(state, event, 'what-said', context),
  'start-again': (state, event) => note(state, event, { kind: 'start-again' }),
  'another-field': (state, event) => note(state, event, { kind: 'another-field' }),
  'dont-know': (state, event, { pack }, { readings }) => {
    const asked = event.asked ?? openQuestion(state, pack)?.id ?? null;
    const facts = packQuestion(asked, pack)?.facts ?? [];
    return readings.some(({ fact }) => facts.includes(fact)) ? state : decline(state, event, asked, pack);
  },
  undo: (state, event) => {
    const last = lastTelling(state);
    return last === null ? note(state, event, { kind: 'nothing-to-undo' }) : takeBack(state, event, last);
  },
  yes: (state, event, { pack }, { readings }) => (readings.length > 0 ? state : confirm(state, event, true, pack)),
  no: (state, event, { pack }, { readings, correction }) =>
    readings.length > 0 || (correction && !isBack(state, pack)) ? state : confirm(state, event, false, pack),
  verdict: (state, event, context) => request(state, event, 'verdict-now', context),
  help: (state, event, { pack }) => note(state, event, { kind: 'help', terms: termsHere(state, pack) }),
  stop: (state, event) => note(state, event, { kind: 'stopped' }),
  dose: (state, event, context) => request(state, event, 'dose', context),
  'check-the-rest': (state, event, context) => request(state, event, 'check-the-rest', context),
  'look-again': (state, event, context) => request(state, event, 'look-again', context),
  'why-not': (state, event, context) => request(state, event, 'why-not', context),
  when: (state, event, context) => request(state, event, 'when', context),
  needs: (state, event, context) => request(state, event, 'needs', context),
  fields: (state, event, context) => request(state, event, 'fields', context),
  define: (state, event, { pack }) => explain(state, event, pack),
  'same-for': (state, event) => goToNext(state, event, event.text),
};

/** Carries out what a person wanted beside telling facts, in the order in which it was said. */
export function applyIntents(
  state: State,
  event: SaidEvent,
  understanding: Understanding,
  context: FoldContext,
): State {
  return understanding.intents.reduce((now, intent) => carries[intent](now, event, context, understanding), state);
}

function isBack(state: State, pack: FoldContext['pack']): boolean {
  const open = openQuestion(state, pack);
  return open !== null && isConfirmation(open.id);
}
