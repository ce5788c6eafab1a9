import { clientMessageSchemas, type EventMessage } from '../../src/core/protocol/messages.ts';
import type { Memory } from './memory.ts';

/** Messages that the server has not confirmed yet, oldest first. */
export type Outbox = readonly EventMessage[];

const key = 'loamward.unsent';
const kinds = ['start', 'say', 'answer', 'request', 'undo'] as const;

/** Reads what an earlier life of the page could not hand over. */
export function readOutbox(memory: Memory): Outbox {
  return parseOutbox(memory.read(key));
}

/** Messages in a text that was kept; what is none of the protocol is left out. */
export function parseOutbox(text: string | null): Outbox {
  const kept = parsed(text);
  return Array.isArray(kept) ? kept.flatMap(messageIn) : [];
}

/** Keeps the outbox for the next life of the page. */
export function keepOutbox(memory: Memory, outbox: Outbox): void {
  memory.write(key, outbox.length === 0 ? null : JSON.stringify(outbox));
}

/** The outbox without the messages of these ids. */
export function without(outbox: Outbox, ids: ReadonlySet<string>): Outbox {
  return outbox.filter(({ id }) => !ids.has(id));
}

/** What still makes sense in a new conversation: from the last start on; the rest belongs to one that is gone. */
export function fromLastStart(outbox: Outbox): Outbox {
  const start = outbox.findLastIndex(({ type }) => type === 'start');
  return start < 0 ? [] : outbox.slice(start);
}

function messageIn(value: unknown): EventMessage[] {
  for (const kind of kinds) {
    const result = clientMessageSchemas[kind].safeParse(value);
    if (result.success) return [result.data];
  }
  return [];
}

function parsed(text: string | null): unknown {
  try {
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}
