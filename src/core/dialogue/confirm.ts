import type { FactId } from '../facts/registry/index.ts';
import type { Pack } from '../rules/pack-types.ts';
import { changed } from './changed.ts';
import type { EventStamp } from './events.ts';
import { moveTo, note } from './note-down.ts';
import { openQuestion, packQuestion } from './open-question.ts';
import type { State, Unusual } from './state.ts';

/** Answers the reading back that is open: taken or not taken. Says so where none is open. */
export function confirm(state: State, event: EventStamp, isRight: boolean, pack: Pack): State {
  const open = openQuestion(state, pack);
  if (open === null || open.kind === 'pack') return note(state, event, { kind: 'nothing-to-confirm' });
  const { fact, reading } = open.kind === 'unusual' ? open.unusual : open.observation;
  const said = { kind: isRight ? 'confirmed' : 'denied', readings: [{ fact, reading }] } as const;
  return moveTo(
    note(
      open.kind === 'unusual'
        ? settleUnusual(state, open.unusual, isRight, pack)
        : settleDoubt(state, open.observation, isRight, pack),
      event,
      said,
    ),
    event,
  );
}

function settleUnusual(state: State, unusual: Unusual, isRight: boolean, pack: Pack): State {
  const rest = state.unusual.filter((one) => one !== unusual);
  if (!isRight) return denied({ ...state, unusual: rest }, unusual, pack);
  const observation = { ...unusual.observation, doubtful: false };
  const taken = { ...state, unusual: rest, observations: [...state.observations, observation] };
  return changed(taken, { id: unusual.event }, pack);
}

function settleDoubt(state: State, doubted: State['observations'][number], isRight: boolean, pack: Pack): State {
  const { observations } = state;
  if (!isRight) return denied({ ...state, observations: observations.filter((one) => one !== doubted) }, doubted, pack);
  return { ...state, observations: observations.map((one) => (one === doubted ? { ...one, doubtful: false } : one)) };
}

/** Its question is open again: anew, or with the earlier answer that it was to take the place of. */
function denied(state: State, { event, fact }: { readonly event: string; readonly fact: FactId }, pack: Pack): State {
  const isEarlier = state.observations.some((one) => one.fact === fact && one.reading.type !== 'does-not-know');
  const answered = state.answered.filter(
    (one) => one.event !== event || packQuestion(one.question, pack)?.facts.includes(fact) !== true,
  );
  return { ...state, answered, changing: isEarlier ? fact : state.changing };
}
