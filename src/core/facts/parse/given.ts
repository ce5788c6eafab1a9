import { codedError, type ErrorDetails, type LoamwardError } from '../../errors/coded-error.ts';
import type { ErrorCode } from '../../errors/table.ts';
import type { FactId } from '../registry/index.ts';
import type { FactDefinition, Reading } from '../types.ts';

/** One value of a facts file on its way to a reading. */
export interface GivenFact {
  readonly id: FactId;
  readonly definition: FactDefinition;
  /** The plain value, or the object with `value`. Never null. */
  readonly given: unknown;
  /** JSON Pointer (RFC 6901) to it. */
  readonly pointer: string;
}

/** Turns one given value into a reading, or throws a coded error naming fact and place. */
export type ReadingParser = (fact: GivenFact) => Reading;

/** What came, as text, cut to 80 characters; a list or object nested too deep to write out is named as such. */
export function cameAs(value: unknown): string {
  return cut(typeof value === 'number' ? String(value) : jsonOf(value));
}

/** A key as it came, cut to 80 characters, letters that steer a terminal written as JSON escapes. */
export function keyAs(key: string): string {
  return cut(JSON.stringify(key).slice(1, -1));
}

function cut(text: string): string {
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

function jsonOf(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return Array.isArray(value) ? 'a list nested too deep' : 'an object nested too deep';
  }
}

/** A coded error about a given value; `within` is a further step of the pointer, for example `low`. */
export function refuse(
  fact: GivenFact,
  code: ErrorCode,
  details: Omit<ErrorDetails, 'fact' | 'pointer'>,
  within?: string | number,
): LoamwardError {
  const pointer = within === undefined ? fact.pointer : `${fact.pointer}/${within}`;
  return codedError(code, { ...details, fact: fact.id, pointer });
}

/** One step of a JSON Pointer, escaped as RFC 6901 section 3 asks. */
export function pointerStep(key: string): string {
  return `/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** True for a JSON object (not null, not a list). */
export function isJsonObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
