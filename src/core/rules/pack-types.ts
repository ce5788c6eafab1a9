import type { FactId, FactRegistry } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import type { Parameter } from '../units/parameter.ts';
import type { Source, Texts } from '../units/texts.ts';
import type { PictureId } from './pack/picture-ids.ts';
import type { Lifts, Rule } from './types.ts';

/** One answer offered as a button: what it says and which readings it gives. */
export interface AnswerChoice {
  /** Stable id within the question. */
  readonly id: string;
  readonly label: Readonly<Record<string, string>>;
  /** Further words under the label, for example the hand test. */
  readonly help?: Readonly<Record<string, string>>;
  readonly gives: Readonly<Record<FactId, Reading>>;
}

/** How a question is answered: a number box, one of several buttons, or a checklist of signs. */
export type AnswerForm = 'number' | 'choice' | 'signs' | 'place';

/** A question that a person can answer in the field or from papers. */
export interface Question {
  readonly id: string;
  /** Facts that an answer settles. */
  readonly facts: readonly FactId[];
  readonly form: AnswerForm;
  /** Effort to answer, seconds: the cheapest useful question is asked first. */
  readonly effortSeconds: number;
  /** Earlier numbers are asked before later ones of equal use: field, crop, soil, weather. */
  readonly group: 'season' | 'field' | 'crop' | 'soil' | 'weather' | 'dose';
  /** Asked only by those who want the dose; never for the verdict. */
  readonly forDose?: true;
  /** Ids of questions that are asked together with it where they are open too. */
  readonly with?: readonly string[];
  /** Drawing that shows how to find out. */
  readonly picture?: PictureId;
  readonly choices?: readonly AnswerChoice[];
  readonly text: Readonly<Record<string, QuestionText>>;
}

/** Sentences of a question in one language. */
export interface QuestionText {
  readonly ask: string;
  /** One line: why it matters now. */
  readonly why: string;
  /** How to find out. */
  readonly how: string;
}

/** A caution shown with every spray-today and always at hand. */
export interface Caution {
  readonly id: string;
  readonly authority: 'law' | 'label' | 'water' | 'practice';
  readonly text: Readonly<Record<string, string>>;
}

/** A trade term explained. */
export interface GlossaryTerm {
  readonly id: string;
  /** The words by which it is said, by language. */
  readonly words: Readonly<Record<string, readonly string[]>>;
  /** Other forms in which texts say it, inflected or compounded, by language. */
  readonly forms?: Readonly<Record<string, readonly string[]>>;
  readonly text: Readonly<Record<string, string>>;
  /** Where the explanation comes from, or "common practice, no source". */
  readonly source: Source;
  /** Drawing that shows it. */
  readonly picture?: PictureId;
}

/** A readable example with the verdict and outcomes expected; `facts` is as in a facts file of the command line. */
export interface PackCase {
  /** File that it came from, relative to the pack's folder. */
  readonly file: string;
  readonly name: string;
  readonly why?: string;
  /** Moment at which the facts hold, ISO 8601 with offset. */
  readonly at?: string;
  readonly facts: Readonly<Record<string, unknown>>;
  readonly expect: {
    readonly verdict: 'spray-today' | 'wait' | 'do-not-spray';
    readonly met?: readonly string[];
    readonly notMet?: readonly string[];
    readonly unknown?: readonly string[];
    readonly missing?: readonly string[];
    /** What lifts rules that are met, by rule. */
    readonly lifts?: Readonly<Record<string, Lifts>>;
    readonly doseGPerHa?: number;
  };
}

/** An overlay that a pack carries: who changed what, for which place. */
export interface AppliedOverlay {
  readonly id: string;
  readonly title: Texts;
  readonly author: string;
  readonly place: string;
  /** Why the local conditions differ: one text, or one in each language. */
  readonly reason: Source;
  readonly layer: 'area' | 'farm';
  readonly validFrom: string;
  readonly validTo?: string;
  /** SHA-256 over its canonical JSON (RFC 8785) without cases, lower-case hex. */
  readonly hash: string;
  /** Ids of what it replaced, added or removed. */
  readonly changed: OverlayChanges;
  /** Ids of entries that no farm may change after it. */
  readonly fixed: readonly string[];
}

/** Ids of entries that an overlay replaced, added or removed, by list. */
export interface OverlayChanges {
  readonly parameters: readonly string[];
  readonly rules: readonly string[];
  readonly questions: readonly string[];
  readonly cautions: readonly string[];
  readonly glossary: readonly string[];
}

/** A treatment pack as loaded and checked. */
export interface Pack {
  readonly id: string;
  readonly version: string;
  readonly title: Readonly<Record<string, string>>;
  /** What is treated against what, in one line. */
  readonly scope: Readonly<Record<string, string>>;
  /** IANA time zone of the pack's country. */
  readonly zone: string;
  readonly active: string;
  /** ISO 639-1 codes in which every text is given. */
  readonly languages: readonly string[];
  /** Every fact that the pack may read: those built in, then its own. */
  readonly facts: FactRegistry;
  readonly parameters: readonly Parameter[];
  readonly rules: readonly Rule[];
  readonly questions: readonly Question[];
  readonly cautions: readonly Caution[];
  readonly glossary: readonly GlossaryTerm[];
  /** A day on which nothing stands in the way, from the pack's cases: practice days begin there. Absent where no case is one. */
  readonly plainDay?: Pick<PackCase, 'facts' | 'at'>;
  /** Overlays applied, in order; absent where there are none. */
  readonly overlays?: readonly AppliedOverlay[];
  /** SHA-256 over the canonical JSON (RFC 8785) of pack and overlays, lower-case hex. */
  readonly hash: string;
}
