import type * as z from 'zod';
import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import { nearestName } from '../errors/nearest.ts';
import { type ClientMessage, clientMessageSchemas } from './messages.ts';
import { type ServerMessage, serverMessageSchemas } from './server-messages.ts';
import { reportIssue, shortText } from './zod-report.ts';

/** A message, or why it is none: the report names the field, what was expected, what came and what to do. */
export type Parsed<T> =
  | { readonly ok: true; readonly message: T }
  | { readonly ok: false; readonly error: ErrorReport };

/** Reads one text frame from a client. Never throws: MESSAGE_NOT_JSON, MESSAGE_TYPE_UNKNOWN or MESSAGE_FIELD_WRONG. */
export function parseClientMessage(text: string): Parsed<ClientMessage> {
  return parse<ClientMessage>(text, clientMessageSchemas);
}

/** Reads one text frame from the server, by the same rules and with the same codes. */
export function parseServerMessage(text: string): Parsed<ServerMessage> {
  return parse<ServerMessage>(text, serverMessageSchemas);
}

function parse<T>(text: string, schemas: Readonly<Record<string, z.ZodType>>): Parsed<T> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refuse('MESSAGE_NOT_JSON', 'one JSON object', shortText(text));
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refuse('MESSAGE_NOT_JSON', 'one JSON object', shortText(text));
  }
  const type: unknown = (value as { readonly type?: unknown }).type;
  const names = Object.keys(schemas);
  const schema = typeof type === 'string' && Object.hasOwn(schemas, type) ? schemas[type] : undefined;
  if (!schema) {
    const nearest = typeof type === 'string' ? nearestName(type.slice(0, 64), names) : undefined;
    return refuse('MESSAGE_TYPE_UNKNOWN', `a type that is one of ${names.join(', ')}`, shortText(type), nearest);
  }
  const result = schema.safeParse(value);
  if (result.success) return { ok: true, message: result.data as T };
  return { ok: false, error: reportIssue(result.error.issues, value) };
}

function refuse(
  code: 'MESSAGE_NOT_JSON' | 'MESSAGE_TYPE_UNKNOWN',
  expected: string,
  came: string,
  nearest?: string,
): { ok: false; error: ErrorReport } {
  return {
    ok: false,
    error: reportOf(code, { expected, came, ...(nearest ? { nearest, pointer: '/type' } : {}) }),
  };
}
