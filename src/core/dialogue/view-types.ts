import type { ErrorReport } from '../errors/coded-error.ts';
import type { Outcome } from '../rules/trace-types.ts';
import type { Authority, Effect as RuleEffect } from '../rules/types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { WordedCaution, WordedReason } from './decision-types.ts';
import type { OutlookView } from './outlook-view/types.ts';

/** One line or card of the conversation's log, oldest first. Plain data with all sentences made. */
export type Entry =
  | { readonly kind: 'person'; readonly id: string; readonly text: string; readonly undone: boolean }
  | {
      readonly kind: 'understood';
      readonly id: string;
      readonly text: string;
      readonly undo: string;
      readonly undone: boolean;
    }
  | { readonly kind: 'said'; readonly id: string; readonly text: string }
  | { readonly kind: 'question'; readonly id: string; readonly text: string }
  | { readonly kind: 'verdict'; readonly id: string; readonly verdict: VerdictView }
  | { readonly kind: 'error'; readonly id: string; readonly error: ErrorReport; readonly text: string };

/** A button of a question. */
export interface ChoiceView {
  readonly id: string;
  readonly label: string;
  readonly help: string | null;
}

/** A number box of a question. */
export interface NumberBoxView {
  readonly fact: string;
  readonly label: string;
  readonly unit: string | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly step: number;
}

/** A trade term with its explanation, in one language. */
export interface TermView {
  readonly id: string;
  /** The words by which it is said, inflected and compounded ones too. */
  readonly said: readonly string[];
  /** What it means, with its source. */
  readonly text: string;
}

/** The open question. */
export interface QuestionView {
  readonly id: string;
  readonly ask: string;
  readonly why: string;
  readonly how: string;
  /** What it settles just now, by the rules; empty where that is not known. */
  readonly now: string;
  /** The answer that stands, where one is being changed. */
  readonly before: string | null;
  /** Id of a drawing that shows how; null where there is none. */
  readonly picture: string | null;
  readonly form: 'number' | 'choice' | 'signs' | 'place' | 'confirm';
  readonly choices: readonly ChoiceView[];
  readonly boxes: readonly NumberBoxView[];
  /** What can be said by pressing, where a reading waits for its hour. */
  readonly hours: readonly string[];
  /** Questions that go with it, to be answered in the same go; none within these. */
  readonly together: readonly QuestionView[];
}

/** One thing that was said, with the event to undo. */
export interface SaidView {
  readonly fact: string;
  readonly label: string;
  readonly value: string;
  /** "you said, 09:10", "field profile", "forecast, 2 h old". */
  readonly from: string;
  readonly undo: string | null;
  /** True where its question can be opened again by `change`. */
  readonly canChange: boolean;
}

/** One rule of the trace in words. */
export interface RuleView {
  readonly rule: string;
  readonly title: string;
  readonly outcome: Outcome;
  readonly outcomeText: string;
  readonly effect: RuleEffect;
  readonly authority: Authority;
  readonly source: string;
  readonly why: string;
  readonly facts: readonly {
    readonly fact: string;
    readonly label: string;
    readonly value: string;
    readonly from: string;
  }[];
  readonly limits: readonly { readonly parameter: string; readonly value: string; readonly source: string }[];
  readonly margins: readonly string[];
}

/** A verdict as shown: sentence first, then why, margins, what lifts it, dose, cautions, forecast; the trace unfolded on request. */
export interface VerdictView {
  readonly verdict: VerdictWord;
  readonly headline: string;
  readonly why: string;
  readonly reasons: readonly WordedReason[];
  readonly advice: readonly WordedReason[];
  /** Jobs for a person and things to find out, as sentences. */
  readonly jobs: readonly string[];
  readonly doseText: string;
  /** True where asking for the dose makes sense. */
  readonly doseNeeds: boolean;
  readonly cautions: readonly WordedCaution[];
  /** "Forecast fetched 2 h ago … Weather data by …", or that none was used. */
  readonly forecastText: string;
  readonly packText: string;
  /** ISO instants UTC. */
  readonly at: string;
  readonly validUntil: string | null;
  /** Until when it stands; null for what is no spray today. */
  readonly validUntilText: string | null;
  /** When it was given, with the day: for whoever reads it later. */
  readonly givenText: string;
  /** Until when a spray-today stands, with the day, and that it is withdrawn after; null for what is no spray today. */
  readonly goodUntilText: string | null;
  /** True where questions are left that were not asked because the answer is already sure. */
  readonly canCheckRest: boolean;
  /** How it differs from the verdict before, in a sentence; null for the first. */
  readonly change: string | null;
  /** Every rule of the verdict that stands; empty in the log's entries. */
  readonly rules: readonly RuleView[];
}

/** A field of today with its verdict in a line. */
export interface FieldLineView {
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

/** All that a page or terminal shows of one conversation. */
export interface ConversationView {
  /** Language of its sentences, ISO 639-1. */
  readonly language: string;
  readonly field: {
    readonly id: string;
    readonly name: string;
    readonly invented: boolean;
    readonly note: string | null;
  } | null;
  readonly packTitle: string;
  readonly entries: readonly Entry[];
  /** How many of the entries, from the oldest, belong to conversations that were put aside. */
  readonly earlier: number;
  readonly question: QuestionView | null;
  /** The verdict that stands; null before the first and after something said makes it stale. */
  readonly verdict: VerdictView | null;
  /** The coming days, beside a verdict that stands; null without a forecast and where the season is over for the field. */
  readonly outlook: OutlookView | null;
  readonly said: readonly SaidView[];
  /** Today's fields with each one's verdict in a line; empty where there is only one. */
  readonly fields: readonly FieldLineView[];
  /** Trade terms said anywhere in it. */
  readonly terms: readonly TermView[];
  /** Moment of the conversation at which this view was made, ISO instant UTC: on the demo farm that of its invented day. */
  readonly now: string;
  /** True while an effect is under way. */
  readonly busy: 'forecast' | 'rules' | null;
  /** Highest event count seen, for resuming. */
  readonly eventCount: number;
}
