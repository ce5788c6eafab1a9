import type { EventMessage } from '../../src/core/protocol/messages.ts';
import type { Memory } from './memory.ts';

/** Messages that the server has not confirmed yet, oldest first. */
export type Outbox = readonly EventMessage[];

const key = 'loamward.unsent';

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

type Check = (value: unknown) => boolean;

const isText: Check = (value) => typeof value === 'string';
const isNumber: Check = (value) => Number.isFinite(value);
const listOf =
  (check: Check): Check =>
  (value) =>
    typeof value === 'object' && value !== null && Object.values(value).every(check);

/** What each kind of message holds; the server checks the rest. */
const fields: Readonly<Record<EventMessage['type'], Readonly<Record<string, Check>>>> = {
  start: { field: (value) => value === null || isText(value) },
  say: { text: isText },
  answer: {
    question: isText,
    choices: (value) => Array.isArray(value) && value.every(isText),
    numbers: listOf(isNumber),
    doesNotKnow: (value) => typeof value === 'boolean',
  },
  request: { request: isText },
  undo: { of: isText },
};
const stamp: Readonly<Record<string, Check>> = { id: isText, at: isNumber, device: isText, count: isNumber };

function messageIn(value: unknown): EventMessage[] {
  if (typeof value !== 'object' || value === null) return [];
  const given = value as Readonly<Record<string, unknown>>;
  const kind = typeof given['type'] === 'string' && Object.hasOwn(fields, given['type']) ? given['type'] : null;
  if (kind === null) return [];
  const checks = { ...stamp, ...fields[kind as EventMessage['type']] };
  return Object.entries(checks).every(([name, check]) => check(given[name])) ? [value as EventMessage] : [];
}

function parsed(text: string | null): unknown {
  try {
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}
