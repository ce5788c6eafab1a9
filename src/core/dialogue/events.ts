import type { ErrorReport } from '../errors/coded-error.ts';
import type { FactObservation } from '../facts/resolved.ts';
import type { Outcome } from '../rules/trace-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from '../weather/forecast.ts';
import type { Decision } from './decision-types.ts';

/** What every event carries: identity and its place in the order (time said, device, count), never of arrival. */
export interface EventStamp {
  /** UUID; the same id with other content is refused (EVENT_CHANGED). */
  readonly id: string;
  /** When it was said, epoch seconds UTC. A time in the future is clamped and said. */
  readonly at: EpochSeconds;
  readonly device: string;
  /** Rising number per device. */
  readonly count: number;
  /** The time that the device gave, where it lay in the future and `at` was clamped. */
  readonly clampedFrom?: EpochSeconds;
}

/** A field with what is known of it for the season: its profile as observations. */
export interface FieldProfile {
  readonly id: string;
  readonly name: string;
  /** True for the demo farm: labelled invented wherever it shows. */
  readonly invented: boolean;
  readonly note?: string;
  readonly observations: readonly FactObservation[];
}

/** A conversation about one field begins (also "start again" and "another field"). */
export interface StartedEvent extends EventStamp {
  readonly kind: 'started';
  readonly packId: string;
  readonly packHash: string;
  readonly field: FieldProfile | null;
  /** Seconds added to every moment of this conversation: 0, but for the demo farm, whose invented day it moves to. */
  readonly shiftSeconds: number;
  /** Language of the conversation, ISO 639-1; that of the one before where absent, English at first. */
  readonly language?: string;
  /** What was told for the whole farm in the conversation before; absent where nothing was. */
  readonly carried?: CarriedOver;
  /** The fields on offer, by which a person may name the next one. */
  readonly fields?: readonly FieldName[];
}

/** A field as people call it. */
export interface FieldName {
  readonly id: string;
  readonly name: string;
}

/** What holds beyond the field that it was told for: readings with their own moments, and that field. */
export interface CarriedOver {
  readonly from: FieldName;
  readonly observations: readonly CarriedObservation[];
}

/** A reading told for one field that holds for another: doubt and words come with it. */
export interface CarriedObservation extends FactObservation {
  readonly doubtful: boolean;
  readonly quote: string | null;
}

/** A person typed or spoke. `asked` is the id of the question then open. */
export interface SaidEvent extends EventStamp {
  readonly kind: 'said';
  readonly text: string;
  readonly asked: string | null;
  /** Language that it was said in; that of the conversation where absent. */
  readonly language?: string;
}

/** One answer to one question. */
export interface GivenAnswer {
  readonly question: string;
  /** Ids of the choices taken (several for a checklist; none for a box or for don't know). */
  readonly choices: readonly string[];
  /** Numbers filled in, by fact id, in the fact's unit. */
  readonly numbers: Readonly<Record<string, number>>;
  readonly doesNotKnow: boolean;
}

/** A person pressed an answer of a question, filled its box, or pressed "don't know". */
export interface AnsweredEvent extends EventStamp, GivenAnswer {
  readonly kind: 'answered';
  /** Answers to the questions asked together with this one, given in one go. */
  readonly also?: readonly GivenAnswer[];
}

/** A person pressed a button that is no answer. */
export interface RequestedEvent extends EventStamp {
  readonly kind: 'requested';
  readonly request:
    | 'why-asked'
    | 'what-said'
    | 'check-the-rest'
    | 'look-again'
    | 'dose'
    | 'verdict-now'
    | 'confirm'
    | 'deny'
    | 'why-not'
    | 'when'
    | 'needs'
    | 'fields'
    | 'change'
    | 'keep'
    | 'same-for'
    | 'language';
  /** The fact whose answer is to be changed; only with `change`. */
  readonly fact?: string;
  /** The language to go on in; only with `language`. */
  readonly language?: string;
}

/** Something said or answered is taken back; `of` is the event's id. What was said stays in the log. */
export interface UndoneEvent extends EventStamp {
  readonly kind: 'undone';
  readonly of: string;
}

/** A forecast arrived. */
export interface ForecastAttachedEvent extends EventStamp {
  readonly kind: 'forecast-attached';
  readonly forecast: Forecast;
  /** Said beside it, for example that it is the last good one and how old. */
  readonly warning?: ErrorReport;
}

/** No forecast is to be had; the weather is asked for by hand. */
export interface ForecastFailedEvent extends EventStamp {
  readonly kind: 'forecast-failed';
  readonly error: ErrorReport;
}

/** The engine's run came back for the facts named by `tag`; stale ones are dropped. */
export interface EvaluatedEvent extends EventStamp {
  readonly kind: 'evaluated';
  readonly tag: string;
  readonly outcomes: Readonly<Record<string, Outcome>>;
}

/** The engine's run failed. */
export interface EvaluationFailedEvent extends EventStamp {
  readonly kind: 'evaluation-failed';
  readonly tag: string;
  readonly error: ErrorReport;
}

/** A verdict was given: the whole decision is kept, with the ids of the events it saw. Never rewritten. */
export interface VerdictGivenEvent extends EventStamp {
  readonly kind: 'verdict-given';
  readonly tag: string;
  readonly saw: readonly string[];
  readonly decision: Decision;
}

/** All that can happen in a conversation. */
export type ConversationEvent =
  | StartedEvent
  | SaidEvent
  | AnsweredEvent
  | RequestedEvent
  | UndoneEvent
  | ForecastAttachedEvent
  | ForecastFailedEvent
  | EvaluatedEvent
  | EvaluationFailedEvent
  | VerdictGivenEvent;

/**
 * What the caller of `step` must carry out. The results of the first two come back as events; the others ask for a new
 * conversation about the same field, for the choice of a field, or to leave (what was told is kept).
 */
export type Effect =
  | { readonly kind: 'fetch-forecast'; readonly latitude: number; readonly longitude: number }
  | { readonly kind: 'evaluate'; readonly tag: string }
  | { readonly kind: 'restart' }
  | { readonly kind: 'choose-field' }
  /** The next field begins with what holds for the farm; null where the person has not said which. */
  | { readonly kind: 'same-for'; readonly field: string | null }
  | { readonly kind: 'leave' };
