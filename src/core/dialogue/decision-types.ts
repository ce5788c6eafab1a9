import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Margin } from '../rules/trace-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Dose, Reason, Verdict } from '../verdict/types.ts';

/** A reason with its sentences in the language of the conversation. */
export interface WordedReason extends Reason {
  readonly title: string;
  /** The sentence of the rule: what is and what the limit is, or what to find out and how. */
  readonly text: string;
  /** What lifts it and what to do or watch for; null for advice. */
  readonly lift: string | null;
  readonly margins: readonly Margin[];
  /** How far from the limit, in words; null where no comparison decides, and for advice. */
  readonly marginText: string | null;
}

/** The amount that rain of the next 48 h is judged by, mm, and the share of so many courses that stay at or below it. */
export interface RainChance {
  readonly courses: number;
  /** 0 to 1. */
  readonly share: number;
  readonly atMostMm: number;
}

/** The forecast a verdict stands on. */
export interface ForecastSummary {
  readonly attribution: string;
  readonly invented: boolean;
  /** ISO instant UTC. */
  readonly fetchedAt: string;
  readonly ageHours: number;
  /** Last stamp up to which nothing that the rules need is missing, ISO instant UTC; null where this hour already lacks some. */
  readonly reachesTo: string | null;
  /** Why none of it was used: its age, or how far its point lies from the field; null where it was used. */
  readonly unused: 'too-old' | 'too-far' | null;
  /** What a reader should know about its numbers or its age, one sentence; null where there is nothing to say. */
  readonly note: string | null;
  /** Rain of the next 48 h by the courses of an ensemble; null where it has none or was not used. */
  readonly rainChance: RainChance | null;
  readonly latitude: number;
  readonly longitude: number;
  readonly distanceKm: number;
}

/** Which rules judged: pack id, version and content hash; and whose local rules, where there are any. */
export interface PackStamp {
  readonly id: string;
  readonly version: string;
  readonly hash: string;
  readonly title: string;
  /** Overlays in force, in the order in which they were applied; absent where there are none. */
  readonly overlays?: readonly OverlayStamp[];
}

/** Local rules that judged: whose they are, for which place, and which rules they changed. */
export interface OverlayStamp {
  readonly id: string;
  readonly title: string;
  readonly author: string;
  readonly place: string;
  readonly hash: string;
  /** Titles of the rules that it changed or added, and of those whose limits it moved; of one that it took away the id. */
  readonly changedRules: readonly string[];
}

/** A caution in the language of the conversation. */
export interface WordedCaution {
  readonly id: string;
  readonly authority: 'law' | 'label' | 'water' | 'practice';
  readonly text: string;
}

/** One whole answer: verdict, sentences, dose, cautions, stamp. Plain data; what `loamward decide --json` prints. */
export interface Decision extends Omit<Verdict, 'reasons' | 'advice' | 'validUntil'> {
  /** The verdict as a sentence. */
  readonly headline: string;
  /** Why, in one or two plain sentences. */
  readonly why: string;
  readonly reasons: readonly WordedReason[];
  readonly advice: readonly WordedReason[];
  readonly dose: Dose;
  readonly doseText: string;
  readonly cautions: readonly WordedCaution[];
  readonly pack: PackStamp;
  readonly forecast: ForecastSummary | null;
  readonly facts: ResolvedFacts;
  /** The moment judged, ISO instant UTC. */
  readonly at: string;
  /** ISO instant UTC after which a spray-today is withdrawn; null where nothing ages. */
  readonly validUntil: string | null;
}

/** A moment as epoch seconds together with the field's zone. */
export interface Moment {
  readonly at: EpochSeconds;
  /** IANA zone. */
  readonly zone: string;
}
