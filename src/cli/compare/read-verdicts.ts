import type { SavedVerdict } from '../../core/compare/index.ts';
import { codedError, type ErrorReport } from '../../core/errors/coded-error.ts';
import { parseEvents } from '../../core/protocol/events/parse-events.ts';
import type { Io } from '../io.ts';
import { readNamedFile } from '../json-file.ts';

/** The verdicts of a file of events, and how many events could not be read, by why. */
export interface ReadVerdicts {
  readonly events: number;
  readonly verdicts: readonly SavedVerdict[];
  readonly unread: readonly { readonly error: ErrorReport; readonly count: number }[];
}

/**
 * Verdicts of a file of events as page or server save it: a JSON list, an object with a list named `events`, or one event a line. An
 * event that is of no form that there is does not hinder the others; one that stands there twice counts once. Throws FILE_UNREADABLE or FILE_NOT_JSON.
 */
export async function readVerdicts(io: Io, path: string): Promise<ReadVerdicts> {
  const events = eventsIn((await readNamedFile(io, path)).replace(/^\uFEFF/, ''), path);
  const verdicts = new Map<string, SavedVerdict>();
  const unread = new Map<string, { error: ErrorReport; count: number }>();
  for (const event of events) {
    const parsed = parseEvents({ events: [event] });
    if (parsed.ok) {
      for (const one of parsed.events) if (one.kind === 'verdict-given') verdicts.set(one.id, one.decision);
    } else {
      const { pointer: _pointer, ...error } = parsed.error;
      const key = JSON.stringify(error);
      unread.set(key, { error, count: (unread.get(key)?.count ?? 0) + 1 });
    }
  }
  return { events: events.length, verdicts: [...verdicts.values()], unread: [...unread.values()] };
}

function eventsIn(text: string, file: string): readonly unknown[] {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const whole = jsonOf(text);
  if (whole.ok) {
    const { value } = whole;
    if (Array.isArray(value)) return value;
    if (typeof value === 'object' && value !== null && 'events' in value && Array.isArray(value.events))
      return value.events;
    if (lines.length === 1) return [value];
  }
  return lines.map((line, at) => {
    const one = jsonOf(line);
    if (one.ok) return one.value;
    const expected = 'events as a JSON list, or one event a line';
    throw codedError('FILE_NOT_JSON', { file, expected, came: `line ${at + 1}: ${one.message}` });
  });
}

function jsonOf(
  text: string,
): { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly message: string } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
