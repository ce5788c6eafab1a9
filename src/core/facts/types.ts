import type { EpochSeconds } from '../units/brands.ts';

/** What kind of value a fact takes. `signs` may hold several at once; `country` is a choice with ISO codes. */
export type FactType = 'number' | 'choice' | 'signs' | 'date' | 'country';

/** Where a value came from. `told`: a person's account of a forecast; `profile`: the field profile. */
export type Source = 'said' | 'measured' | 'told' | 'profile' | 'derived' | 'forecast';

/** Why a fact is unknown. */
export type UnknownReason =
  | 'not-asked'
  | 'person-does-not-know'
  | 'too-old'
  | 'forecast-gap'
  | 'implausible'
  | 'in-conflict'
  | 'does-not-settle';

/** Where a known value came from, when it held and until when it may be relied on. */
export interface Origin {
  readonly source: Source;
  /** When it was seen, measured or forecast for, epoch seconds UTC. */
  readonly at: EpochSeconds;
  /** From this moment on it is too old; null where it does not age within the season. */
  readonly goodUntil: EpochSeconds | null;
  /** How it was come by, in words, where that matters (for example "cautious end of the forecast's band"). */
  readonly note?: string;
}

/** A known number with its band; low = value = high where there is none. In the fact's own unit. */
export interface KnownNumber extends Origin {
  readonly known: true;
  readonly type: 'number';
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A known choice; more than one in `possible` where it is one of several. */
export interface KnownChoice extends Origin {
  readonly known: true;
  readonly type: 'choice';
  readonly possible: readonly string[];
}

/** Several signs at once: `present` are surely there, `possible` (a superset) may be there. */
export interface KnownSigns extends Origin {
  readonly known: true;
  readonly type: 'signs';
  readonly present: readonly string[];
  readonly possible: readonly string[];
}

/** A known calendar day, ISO 8601 (YYYY-MM-DD), at the field. */
export interface KnownDate extends Origin {
  readonly known: true;
  readonly type: 'date';
  readonly iso: string;
}

/** A known fact. */
export type Known = KnownNumber | KnownChoice | KnownSigns | KnownDate;

/** An unknown fact and why. */
export interface Unknown {
  readonly known: false;
  readonly reason: UnknownReason;
  /** What was there once, in words, for example the too old value. */
  readonly note?: string;
}

/** A fact as the rules see it. */
export type Resolved = Known | Unknown;

/** What a person said or measured, before ageing: one row, never changed; a later row of the same fact outranks it. */
export type Reading =
  | {
      readonly type: 'number';
      readonly value: number;
      readonly low?: number;
      readonly high?: number;
      /** The reading at another depth (cm, C) and local hour that a soil temperature was worked out from. */
      readonly from?: { readonly depthCm: number; readonly valueC: number; readonly hour: string };
    }
  | { readonly type: 'choice'; readonly possible: readonly string[] }
  | {
      readonly type: 'signs';
      readonly present: readonly string[];
      readonly absent: readonly string[];
      /** True where the whole list was gone through, so that what is not named is absent. */
      readonly complete: boolean;
    }
  | { readonly type: 'date'; readonly iso: string }
  /** The person was asked and cannot say. */
  | { readonly type: 'does-not-know' };

/** One observation: a reading of one fact at one moment. */
export interface Observation<Id extends string = string> {
  readonly fact: Id;
  readonly reading: Reading;
  /** When it was seen or measured, epoch seconds UTC. */
  readonly at: EpochSeconds;
  readonly source: 'said' | 'measured' | 'told' | 'profile';
}

/** How long an observation of a fact stays good. Names in quotes are parameter ids of the pack. */
export type GoodFor =
  | { readonly kind: 'season' }
  | { readonly kind: 'moment' }
  | { readonly kind: 'same-day' }
  | { readonly kind: 'hours'; readonly parameter: string; readonly untilRainMm?: string }
  | { readonly kind: 'days'; readonly parameter: string };

/** What a pack's own fact may take from the hourly forecast. */
export type ForecastVariable =
  | 'air-temperature'
  | 'relative-humidity'
  | 'rain'
  | 'wind-at-boom'
  | 'gusts-at-boom'
  | 'delta-t';

/** How a pack's own fact is taken from the hourly forecast. */
export interface ForecastTaking {
  readonly variable: ForecastVariable;
  /** The hour of the moment, the hours ahead that a parameter of the pack counts, or the next night, sunset to sunrise. */
  readonly over: 'now' | 'next-night' | { readonly hoursAhead: string };
  /** What is taken of those hours; the value itself of the hour of the moment. */
  readonly take: 'value' | 'min' | 'max' | 'sum' | 'mean';
  /** The end of the band that stands for all of it, where nobody can see it now. */
  readonly end?: 'low' | 'high';
}

/** One entry of the fact registry. */
export interface FactDefinition {
  /** Short name for lists, in English, lower case. */
  readonly label: string;
  /** The same by language; absent for a fact built in, whose names the words hold. */
  readonly labels?: Readonly<Record<string, string>>;
  /** Names of the choices by choice and language; absent as the labels are. */
  readonly choiceLabels?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Words by which a person names the fact, by language; absent for a fact built in. */
  readonly words?: Readonly<Record<string, readonly string[]>>;
  /** How the value is taken from the hourly forecast; absent for a fact built in. */
  readonly forecast?: ForecastTaking;
  /** Where the fact's meaning and its range come from; absent for a fact built in. */
  readonly source?: string;
  readonly type: FactType;
  /** Unit symbol as shown, or null where there is none. */
  readonly unit: string | null;
  /** Closed range outside which a number cannot be. */
  readonly range?: readonly [number, number];
  /** Closed range outside which a number is asked about once before it is taken. */
  readonly plausible?: readonly [number, number];
  readonly choices?: readonly string[];
  /** Step to which a number is kept; at least ten times finer than any limit that reads it. */
  readonly precision?: number;
  /** Decimals shown to people. */
  readonly shownDecimals?: number;
  /** The ways in which it may come, best first. */
  readonly obtained: readonly ('asked' | 'derived' | 'forecast')[];
  /** Why no question asks for it; absent where a pack asks for it. */
  readonly noQuestion?: string;
  /** How long what a person said or measured stays good. */
  readonly goodFor: GoodFor;
  /** True for a fact of the field profile, asked once a season. */
  readonly profile?: true;
  /** Beyond the field where it was told: the whole farm, or fields nearby for a short while; absent where it holds for that field alone. */
  readonly scope?: 'farm' | 'near';
  /** Forecast value: at the hour's stamp, the sum of the hour before it, or over hours to come. */
  readonly forecastAt?: 'instant' | 'preceding-hour' | 'ahead';
  /** Nobody can see it now: the forecast's cautious (high) end stands instead of its band. */
  readonly cautiousEnd?: 'high';
  /** What a person who told a forecast in words is recorded as. */
  readonly toldNotSeen?: true;
}
