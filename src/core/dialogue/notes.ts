import type { ErrorReport } from '../errors/coded-error.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { AnsweredEvent, FieldProfile, RequestedEvent } from './events.ts';

/** One reading as noted. */
export interface NotedReading {
  readonly fact: FactId;
  readonly reading: Reading;
}

/** A value of one fact with its source, as noted when it was asked for. */
export interface NotedValue {
  readonly fact: FactId;
  readonly event: string;
}

/** What happened, as data; the view puts it into words. */
export type NoteBody =
  | { readonly kind: 'hello'; readonly field: FieldProfile | null }
  | { readonly kind: 'typed'; readonly text: string }
  | { readonly kind: 'pressed'; readonly answer: AnsweredEvent }
  | { readonly kind: 'requested'; readonly request: RequestedEvent['request'] }
  | {
      readonly kind: 'understood';
      readonly readings: readonly NotedReading[];
      readonly correction: boolean;
      /** The answer pressed, where the readings stand for its words. */
      readonly answer: AnsweredEvent | null;
    }
  | { readonly kind: 'not-understood'; readonly pieces: readonly string[] }
  | { readonly kind: 'declined'; readonly question: string }
  | { readonly kind: 'error'; readonly error: ErrorReport }
  | { readonly kind: 'remark'; readonly code: string; readonly quote: string }
  | { readonly kind: 'undone'; readonly readings: readonly NotedReading[] }
  | { readonly kind: 'confirmed' | 'denied'; readonly readings: readonly NotedReading[] }
  | { readonly kind: 'question'; readonly text: QuestionNote }
  | { readonly kind: 'why'; readonly question: string; readonly rules: readonly string[] }
  | { readonly kind: 'said-so-far'; readonly values: readonly NotedValue[] }
  | { readonly kind: 'clamped'; readonly at: EpochSeconds }
  | { readonly kind: 'forecast'; readonly fetchedAt: EpochSeconds }
  /** `verdicts`: how many had been given by then. */
  | { readonly kind: 'dose'; readonly verdicts: number }
  | { readonly kind: 'verdict'; readonly index: number }
  | { readonly kind: PlainNote };

/** Notes that need no data. */
export type PlainNote =
  | 'nothing-found'
  | 'nothing-to-undo'
  | 'nothing-to-confirm'
  | 'no-question'
  | 'help'
  | 'start-again'
  | 'another-field'
  | 'stopped'
  | 'forecast-failed'
  | 'look-again'
  | 'checking-rest'
  | 'verdict-asked';

/** The question as it was put. */
export type QuestionNote =
  | { readonly kind: 'pack'; readonly question: string; readonly conflict: readonly NotedReading[] }
  | { readonly kind: 'unusual' | 'doubtful'; readonly readings: NotedReading; readonly quote: string | null };

/** A note with the event that it belongs to. */
export type Note = NoteBody & { readonly event: string };
