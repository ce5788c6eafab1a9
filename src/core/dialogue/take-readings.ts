import { judgePlausible } from '../facts/plausible.ts';
import { definitionIn, type FactId, type FactRegistry } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import { epochSeconds } from '../units/brands.ts';
import type { EventStamp } from './events.ts';
import { momentOf, moveTo, note } from './note-down.ts';
import type { NotedReading } from './notes.ts';
import type { State, StateObservation, Unusual } from './state.ts';

/** One reading offered by an event. */
export interface OfferedReading {
  readonly fact: FactId;
  readonly reading: Reading;
  readonly quote: string | null;
  readonly doubtful: boolean;
  readonly agoHours: number;
}

/** The state with what could be taken, and those readings. */
export interface Taken {
  readonly state: State;
  readonly readings: readonly NotedReading[];
}

/**
 * Takes the readings of an event: usual ones at once; one far outside what is usual waits to be confirmed, or counts as
 * confirmed where it repeats what is waiting; one that cannot be is refused with its range. Notes only the refusals.
 */
export function takeReadings(
  before: State,
  event: EventStamp,
  offered: readonly OfferedReading[],
  registry: FactRegistry,
): Taken {
  let state = before;
  const readings: NotedReading[] = [];
  for (const one of offered) {
    const { fact, reading } = one;
    const judged = judgePlausible(fact, definitionIn(registry, fact), reading);
    if (typeof judged === 'object') {
      state = note(state, event, { kind: 'error', error: judged });
      continue;
    }
    const waiting = state.unusual.find((other) => other.fact === fact);
    state = { ...state, unusual: state.unusual.filter((other) => other.fact !== fact) };
    if (judged === 'ask-once' && !(waiting && isSameNumber(waiting.reading, reading))) {
      state = { ...state, unusual: [...state.unusual, waitFor(state, event, one, registry)] };
      continue;
    }
    state = { ...state, observations: [...state.observations, observationOf(state, event, one, registry)] };
    readings.push({ fact, reading });
  }
  return { state: state === before ? state : moveTo(state, event), readings };
}

/** A reading as an observation of its event. */
export function observationOf(
  state: State,
  event: EventStamp,
  offered: OfferedReading,
  registry: FactRegistry,
): StateObservation {
  const { fact, reading, quote, doubtful, agoHours } = offered;
  return {
    fact,
    reading,
    at: epochSeconds(momentOf(state, event) - agoHours * 3600),
    source: definitionIn(registry, fact).toldNotSeen ? 'told' : 'said',
    event: event.id,
    device: event.device,
    doubtful,
    quote,
  };
}

function waitFor(state: State, event: EventStamp, offered: OfferedReading, registry: FactRegistry): Unusual {
  const { fact, reading, quote } = offered;
  return { event: event.id, fact, reading, quote, observation: observationOf(state, event, offered, registry) };
}

function isSameNumber(a: Reading, b: Reading): boolean {
  return a.type === 'number' && b.type === 'number' && a.value === b.value;
}
