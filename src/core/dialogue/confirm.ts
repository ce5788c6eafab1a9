import type { Pack } from '../rules/pack-types.ts';
import { changed } from './changed.ts';
import type { EventStamp } from './events.ts';
import { moveTo, note } from './note-down.ts';
import { openQuestion, packQuestion } from './open-question.ts';
import type { State } from './state.ts';

/** Answers the reading back that is open: taken or not taken. Says so where none is open. */
export function confirm(state: State, event: EventStamp, isRight: boolean, pack: Pack): State {
  const open = openQuestion(state, pack);
  if (open === null || open.kind === 'pack') return note(state, event, { kind: 'nothing-to-confirm' });
  const { fact, reading } = open.kind === 'unusual' ? open.unusual : open.observation;
  const said = { kind: isRight ? 'confirmed' : 'denied', readings: [{ fact, reading }] } as const;
  return moveTo(
    note(
      open.kind === 'unusual' ? settleUnusual(state, isRight, pack) : settleDoubt(state, open.observation, isRight),
      event,
      said,
    ),
    event,
  );
}

function settleUnusual(state: State, isRight: boolean, pack: Pack): State {
  const [unusual, ...rest] = state.unusual;
  if (!unusual) return state;
  if (isRight) {
    const observation = { ...unusual.observation, doubtful: false };
    const taken = { ...state, unusual: rest, observations: [...state.observations, observation] };
    return changed(taken, { id: unusual.event }, pack);
  }
  return { ...state, unusual: rest, answered: reopened(state, unusual, pack) };
}

function settleDoubt(state: State, doubted: State['observations'][number], isRight: boolean): State {
  const observations = isRight
    ? state.observations.map((one) => (one === doubted ? { ...one, doubtful: false } : one))
    : state.observations.filter((one) => one !== doubted);
  const answered = isRight ? state.answered : state.answered.filter(({ event }) => event !== doubted.event);
  return { ...state, observations, answered };
}

function reopened(state: State, { event, fact }: State['unusual'][number], pack: Pack): State['answered'] {
  return state.answered.filter(
    (one) => one.event !== event || packQuestion(one.question, pack)?.facts.includes(fact) !== true,
  );
}
