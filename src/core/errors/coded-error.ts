import type { ErrorCode } from './table.ts';
import { errorTable } from './table.ts';

/** Where an error stands and what it says beyond its code: all plain text or plain values. */
export interface ErrorDetails {
  /** What would have been right, in words. */
  readonly expected: string;
  /** What came instead, as text. */
  readonly came: string;
  /** What to do next; the table's own advice when absent. */
  readonly next?: string;
  readonly file?: string;
  /** JSON Pointer (RFC 6901) into `file` or into the input. */
  readonly pointer?: string;
  readonly fact?: string;
  readonly rule?: string;
  readonly parameter?: string;
  /** The right name nearest to what came. */
  readonly nearest?: string;
}

/** The form in which a coded error is printed as JSON or sent over a socket. */
export interface ErrorReport extends ErrorDetails {
  readonly code: ErrorCode;
  readonly says: string;
  readonly next: string;
}

/** The one error class of the project: a code from the table, what was expected, what came, what to do next. */
export class LoamwardError extends Error {
  readonly code: ErrorCode;
  readonly details: ErrorDetails;

  constructor(code: ErrorCode, details: ErrorDetails) {
    super(describeError(code, details));
    this.name = 'LoamwardError';
    this.code = code;
    this.details = details;
  }

  /** The error as plain data. */
  toJSON(): ErrorReport {
    return reportOf(this.code, this.details);
  }
}

/** Makes the coded error to throw or return. */
export function codedError(code: ErrorCode, details: ErrorDetails): LoamwardError {
  return new LoamwardError(code, details);
}

/** The plain-data form of an error. */
export function reportOf(code: ErrorCode, details: ErrorDetails): ErrorReport {
  const entry = errorTable[code];
  return { code, says: entry.says, ...details, next: details.next ?? entry.next };
}

/** One line a person can act on: code, place, what was expected, what came, what to do. */
export function describeError(code: ErrorCode, details: ErrorDetails): string {
  const entry = errorTable[code];
  const place = [details.file, details.pointer].filter(Boolean).join(' at ');
  const nearest = details.nearest ? ` Nearest right name: ${details.nearest}.` : '';
  const next = details.next ?? entry.next;
  return `${code}: ${entry.says}${place ? ` (${place})` : ''} Expected ${details.expected}; came ${details.came}.${nearest} ${next}`;
}

/** True for any error of ours. */
export function isLoamwardError(error: unknown): error is LoamwardError {
  return error instanceof LoamwardError;
}
