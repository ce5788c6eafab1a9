import type { ErrorReport } from '../errors/coded-error.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { Reading, Resolved } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Verdict, VerdictWord } from '../verdict/types.ts';
import type { Decision } from './decision-types.ts';
import type { CarriedOver, FieldProfile, GivenAnswer, RequestedEvent } from './events.ts';

/** One reading as noted. */
export interface NotedReading {
  readonly fact: FactId;
  readonly reading: Reading;
}

/** A fact as it stood when the person asked what was told. */
export interface NotedValue {
  readonly fact: FactId;
  readonly resolved: Resolved;
}

/** What happened, as data; the view puts it into words. */
export type NoteBody =
  | { readonly kind: 'hello'; readonly field: FieldProfile | null }
  | { readonly kind: 'typed'; readonly text: string }
  | { readonly kind: 'pressed'; readonly answer: GivenAnswer }
  | { readonly kind: 'requested'; readonly request: RequestedEvent['request'] }
  | {
      readonly kind: 'understood';
      readonly readings: readonly NotedReading[];
      readonly correction: boolean;
      /** The answer pressed, where the readings stand for its words. */
      readonly answer: GivenAnswer | null;
    }
  | { readonly kind: 'not-understood'; readonly pieces: readonly string[] }
  | { readonly kind: 'declined'; readonly question: string }
  | { readonly kind: 'error'; readonly error: ErrorReport }
  | { readonly kind: 'remark'; readonly code: string; readonly quote: string }
  | { readonly kind: 'undone'; readonly readings: readonly NotedReading[] }
  | { readonly kind: 'confirmed' | 'denied'; readonly readings: readonly NotedReading[] }
  | { readonly kind: 'question'; readonly text: QuestionNote }
  | { readonly kind: 'why'; readonly question: string; readonly rules: readonly string[] }
  | { readonly kind: 'said-so-far'; readonly values: readonly NotedValue[]; readonly at: EpochSeconds }
  | { readonly kind: 'clamped'; readonly at: EpochSeconds }
  | { readonly kind: 'forecast'; readonly fetchedAt: EpochSeconds; readonly attribution: string }
  | { readonly kind: 'dose'; readonly decision: Pick<Decision, 'verdict' | 'dose' | 'doseText'> | null }
  | { readonly kind: 'verdict'; readonly index: number }
  | {
      readonly kind: 'supposed';
      readonly readings: readonly NotedReading[];
      readonly verdict: VerdictWord;
      /** Whether `rules` would be met or could not be judged. */
      readonly outcome: 'met' | 'unknown';
      readonly rules: readonly string[];
    }
  | { readonly kind: 'explained'; readonly term: string }
  | { readonly kind: 'not-explained'; readonly words: string }
  | { readonly kind: 'next-field'; readonly field: string | null }
  | { readonly kind: 'fields' | 'stopped' }
  | { readonly kind: 'help'; readonly terms: readonly string[] }
  | { readonly kind: 'changing'; readonly fact: FactId }
  | { readonly kind: 'carried'; readonly carried: CarriedOver }
  | {
      readonly kind: 'asked-back';
      readonly ask: AskBack;
      /** What the rules said then. */
      readonly judged: Verdict;
      readonly at: EpochSeconds;
      /** The answer that stood then; null where there was none. */
      readonly given: Decision | null;
    }
  | { readonly kind: 'past-verdict'; readonly headline: string }
  | { readonly kind: PlainNote };

/** What a person may want to know of an answer. */
export type AskBack = 'why-not' | 'when' | 'needs';

/** Notes that need no data. */
export type PlainNote =
  | 'nothing-found'
  | 'nothing-to-undo'
  | 'nothing-to-confirm'
  | 'no-question'
  | 'start-again'
  | 'another-field'
  | 'forecast-failed'
  | 'look-again'
  | 'checking-rest'
  | 'verdict-asked'
  | 'kept'
  | 'nothing-to-change';

/** The question as it was put. */
export type QuestionNote =
  | {
      readonly kind: 'pack';
      readonly question: string;
      readonly together: readonly string[];
      readonly conflict: readonly NotedReading[];
    }
  | { readonly kind: 'unusual' | 'doubtful'; readonly readings: NotedReading; readonly quote: string | null };

/** A note with the event that it belongs to. */
export type Note = NoteBody & { readonly event: string };
