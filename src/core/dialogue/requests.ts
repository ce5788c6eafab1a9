import { isFactOf } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import { confirm } from './confirm.ts';
import type { FoldContext } from './context.ts';
import type { EventStamp, RequestedEvent } from './events.ts';
import { momentOf, moveTo, note } from './note-down.ts';
import { openQuestion, packQuestion, questionOfFact } from './open-question.ts';
import { keptOnLookingAgain } from './spent.ts';
import { standingOf } from './standing.ts';
import { fieldDevice, type State } from './state.ts';
import { askBack, goToNext } from './wishes.ts';

type Request = RequestedEvent['request'];
type Carry = (state: State, event: EventStamp, context: FoldContext) => State;

const carries: Readonly<Record<Request, Carry>> = {
  'why-asked': (state, event, { pack }) => {
    const open = openQuestion(state, pack);
    const question = packQuestion(open?.id ?? null, pack);
    if (question === null) return askBack(state, event, 'why-not', pack);
    const rules = standingOf(state, pack)?.trace ?? [];
    const deciding = rules.filter(
      ({ effect, outcome, facts }) =>
        effect !== 'advise' && outcome === 'unknown' && question.facts.some((fact) => facts.includes(fact)),
    );
    return note(state, event, { kind: 'why', question: question.id, rules: deciding.map(({ rule }) => rule) });
  },
  'what-said': (state, event, { pack }) => {
    const told = state.observations.filter(
      ({ device, reading }) => device !== fieldDevice && reading.type !== 'does-not-know',
    );
    const facts = standingOf(state, pack)?.facts ?? {};
    const values = [...new Set(told.map(({ fact }) => fact))].map((fact) => ({
      fact,
      resolved: resolvedFact(facts, fact),
    }));
    return note(state, event, { kind: 'said-so-far', values, at: momentOf(state, event) });
  },
  'check-the-rest': (state, event) =>
    moveTo(note({ ...state, checkRest: true }, event, { kind: 'checking-rest' }), event),
  'look-again': (state, event, { pack }) => {
    const moved = moveTo({ ...state, looks: state.looks + 1, checkRest: false }, event);
    const facts = standingOf(moved, pack)?.facts ?? {};
    const kept = { ...moved, answered: keptOnLookingAgain(state.answered, pack, facts) };
    return note(kept, event, { kind: 'look-again' });
  },
  dose: (state, event) =>
    note({ ...state, wantsDose: true }, event, { kind: 'dose', decision: state.verdicts.at(-1)?.decision ?? null }),
  'verdict-now': (state, event) =>
    moveTo(note({ ...state, wantsVerdict: true }, event, { kind: 'verdict-asked' }), event),
  'why-not': (state, event, { pack }) => askBack(state, event, 'why-not', pack),
  when: (state, event, { pack }) => askBack(state, event, 'when', pack),
  needs: (state, event, { pack }) => askBack(state, event, 'needs', pack),
  fields: (state, event) => note(state, event, { kind: 'fields' }),
  change: (state, event, { pack }) => openAgain(state, event, pack),
  keep: (state, event) =>
    state.changing === null
      ? note(state, event, { kind: 'nothing-to-change' })
      : note({ ...state, changing: null }, event, { kind: 'kept' }),
  'same-for': (state, event) => goToNext(state, event, null),
  language: (state, event: EventStamp & Pick<RequestedEvent, 'language'>) => ({
    ...state,
    language: event.language ?? state.language,
  }),
  confirm: (state, event, { pack }) => confirm(state, event, true, pack),
  deny: (state, event, { pack }) => confirm(state, event, false, pack),
};

/** Opens the question of a fact again, with the answer that stands. */
function openAgain(state: State, event: EventStamp & Pick<RequestedEvent, 'fact'>, pack: Pack): State {
  const { fact } = event;
  if (fact === undefined || !isFactOf(pack.facts, fact) || questionOfFact(fact, pack) === null) {
    return note(state, event, { kind: 'nothing-to-change' });
  }
  return note({ ...state, changing: fact }, event, { kind: 'changing', fact });
}

/** Carries out a request that is no answer. */
export function request(state: State, event: EventStamp, kind: Request, context: FoldContext): State {
  return carries[kind](state, event, context);
}
