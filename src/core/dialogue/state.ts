import type { ErrorReport } from '../errors/coded-error.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { FactObservation } from '../facts/resolved.ts';
import type { Reading } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from '../weather/forecast.ts';
import type { Decision } from './decision-types.ts';
import type { StartedEvent, VerdictGivenEvent } from './events.ts';
import type { Note } from './notes.ts';

/** Stands for the device of what came with the field; it contradicts nobody. */
export const fieldDevice = '';

/** An observation with the event that it came from. */
export interface StateObservation extends FactObservation {
  readonly event: string;
  readonly device: string;
  /** True until confirmed where the words could have meant something else. */
  readonly doubtful: boolean;
  /** The words that it was read from; null for a button or the field profile. */
  readonly quote: string | null;
  /** The field that it was told for, where it was carried over from another. */
  readonly carriedFrom?: string;
}

/** A value that is far outside what is usual: asked about once, not yet taken. */
export interface Unusual {
  readonly event: string;
  readonly fact: FactId;
  readonly reading: Reading;
  readonly quote: string | null;
  readonly observation: StateObservation;
}

/** A question that a person answered or could not answer. */
export interface AnsweredQuestion {
  readonly question: string;
  readonly event: string;
}

/** For which place and which look the forecast last came or failed. */
export interface ForecastAttempt {
  readonly latitude: number;
  readonly longitude: number;
  readonly look: number;
  readonly failed: boolean;
}

/** The fold of a conversation's events. Times are moments of the conversation: what devices gave, plus its shift. */
export interface State {
  readonly started: StartedEvent | null;
  /** Language in which the conversation goes on, ISO 639-1. */
  readonly language: string;
  /** Moment of the last event that bears on facts; null before the start. */
  readonly at: EpochSeconds | null;
  readonly observations: readonly StateObservation[];
  readonly unusual: readonly Unusual[];
  readonly undone: ReadonlySet<string>;
  readonly answered: readonly AnsweredQuestion[];
  readonly forecast: Forecast | null;
  readonly attempt: ForecastAttempt | null;
  /** How often the person asked to look again. */
  readonly looks: number;
  readonly checkRest: boolean;
  readonly wantsDose: boolean;
  readonly wantsVerdict: boolean;
  readonly verdicts: readonly VerdictGivenEvent[];
  /** Tags for which no verdict can be given, with the reason. */
  readonly failures: ReadonlyMap<string, ErrorReport>;
  readonly notes: readonly Note[];
  /** Id of the question last put. */
  readonly asked: string | null;
  /** The fact whose answer is being changed. */
  readonly changing: FactId | null;
  /** The fields looked at before in this conversation, with how each came out. */
  readonly fields: readonly FieldResult[];
  /** What was last said of a temperature at another depth without its hour; an hour said next belongs to it. */
  readonly hourless: string | null;
}

/** How a field came out when the conversation left it. */
export interface FieldResult {
  readonly id: string;
  readonly name: string;
  readonly at: EpochSeconds;
  /** Null where no answer stood. */
  readonly given: Pick<Decision, 'verdict' | 'slowest' | 'validUntil'> | null;
}

/** Nothing has happened. */
export const emptyState: State = {
  started: null,
  language: 'en',
  at: null,
  observations: [],
  unusual: [],
  undone: new Set(),
  answered: [],
  forecast: null,
  attempt: null,
  looks: 0,
  checkRest: false,
  wantsDose: false,
  wantsVerdict: false,
  verdicts: [],
  failures: new Map(),
  notes: [],
  asked: null,
  changing: null,
  fields: [],
  hourless: null,
};
