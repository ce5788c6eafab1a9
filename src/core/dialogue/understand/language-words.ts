import type { ClockWords } from './clock.ts';
import type { Flag, SaidUnit, Subject } from './lexicon-types.ts';
import type { WordRow } from './rows.ts';
import type { Token } from './tokens.ts';
import type { Intent } from './types.ts';

/** Patterns as in `phraseBook`. */
export type Patterns = readonly string[];

/** Which side of a number is open, or that it is only near. */
export type SaidBound = 'above' | 'least' | 'below' | 'most' | 'near';

/** Short answers, corrections and questions, at the beginning of a clause. */
export interface AnswerWords {
  readonly yes: Patterns;
  readonly no: Patterns;
  readonly leanYes: Patterns;
  readonly leanNo: Patterns;
  readonly correct: Patterns;
  /** What leads what was said before, where the next clause puts it right: "I said moist, but it's wet". */
  readonly saidBefore?: Patterns;
  readonly ask: Patterns;
  readonly askWithMark: Patterns;
  readonly noneOfIt: Patterns;
  /** Single words of a plain yes or no. */
  readonly plain: ReadonlySet<string>;
  /** Words of politeness, which say nothing. */
  readonly courtesies: ReadonlySet<string>;
  /** Words that may stand before a short answer. */
  readonly leads: ReadonlySet<string>;
  /** Words left off before the words of a choice. */
  readonly labelLeads: ReadonlySet<string>;
}

/** How numbers are said. */
export interface NumberWords {
  readonly small: Readonly<Record<string, number>>;
  /** Words that multiply what stands before them. */
  readonly multipliers: Readonly<Record<string, number>>;
  /** Words that begin a name that ends in "one": "the air one". */
  readonly articles?: ReadonlySet<string>;
  /** Round numbers said without a word before them: "a good hundred". */
  readonly bare?: Readonly<Record<string, number>>;
  /** The word of two that are only near, and what joins it to a round number: "a couple of hundred". */
  readonly couple?: { readonly word: string; readonly of: string };
  /** The word of one that may count nothing ("this one"), with what then stands before or after it. */
  readonly one: string;
  readonly noCountBeforeOne: ReadonlySet<string>;
  readonly noCountAfterOne: ReadonlySet<string>;
  readonly fractions: readonly (readonly [words: string, value: number])[];
  readonly minus: ReadonlySet<string>;
  readonly point: ReadonlySet<string>;
  /** A number before one of these is a day, a time or a count of something else. */
  readonly oddAfter: ReadonlySet<string>;
  /** "and" within a number ("a hundred and ten"), and "a" of "a hundred". */
  readonly and: string;
  readonly a: string;
}

/** How units, bounds and ranges are said. */
export interface UnitWords {
  readonly after: readonly (readonly [pattern: string, unit: SaidUnit])[];
  readonly before: readonly (readonly [pattern: string, unit: SaidUnit])[];
  /** Units with the number one in them ("a foot"). */
  /** Parts of a unit ("half a"). */
  readonly parts?: readonly (readonly [pattern: string, value: number])[];
  /** Words between a number and how far it may be out. */
  readonly plusMinus?: Patterns;
  readonly single: readonly (readonly [pattern: string, unit: SaidUnit])[];
  readonly boundsBefore: readonly (readonly [pattern: string, bound: SaidBound])[];
  readonly boundsAfter: readonly (readonly [pattern: string, bound: 'least' | 'most' | 'near' | 'negative'])[];
  readonly range: ReadonlySet<string>;
  readonly between: string;
  /** The joiner of a range after "between". */
  readonly betweenJoiner: string;
  readonly rangeLeads: ReadonlySet<string>;
  /** Words between 1 and the run of a slope ("1 in 20"). */
  readonly oneIn: ReadonlySet<string>;
  /** Words of ranges that say "up to" where no number stands before them. */
  readonly upTo?: ReadonlySet<string>;
  /** Words of a unit of speed that also name the nodes of a stem. */
  readonly nodes?: ReadonlySet<string>;
  /** The word of inches that means another thing too, and is inches only where it must be; '' where there is none. */
  readonly inches: string;
}

/** Words that the reading of signs, times and depths hangs on. */
export interface LittleWords {
  /** What "@" and "&" and "~" stand for, and "at" before a depth. */
  readonly at: string;
  readonly or?: string;
  /** Words joined to the end of another, with what each is read as. */
  readonly joinedEnds?: Readonly<Record<string, string>>;
  /** Words before the number of a year ("in 2019"). */
  readonly beforeYear?: ReadonlySet<string>;
  readonly and: string;
  readonly about: string;
  /** Words that lead to a depth. */
  readonly atDepth: ReadonlySet<string>;
  /** Words after a length that make it a depth. */
  readonly depth: ReadonlySet<string>;
  /** Words after a length that make it the height of what grows. */
  readonly tall: ReadonlySet<string>;
  /** Forms of "is" that may stand within the name of a fact, parted by `|`: "leaves are wet". */
  readonly being: string;
  /** Words of the names of facts with what says that it is not so: "wet" and "dry". */
  readonly opposites: Readonly<Record<string, string>>;
  /** Words beside a height that leave it that of the plant told of before: "they are". */
  readonly ofIt: ReadonlySet<string>;
  /** Words after a length that say how far off something is. */
  readonly off: ReadonlySet<string>;
  /** Words of time that began and goes on. */
  readonly since: ReadonlySet<string>;
  /** Words before a length that make it a depth. */
  readonly depthBefore: ReadonlySet<string>;
  /** Words whose full stop ends no sentence. */
  readonly abbreviations: ReadonlySet<string>;
  /** Words that may be written onto their number. */
  readonly mayLeadNumber: ReadonlySet<string>;
  /** Words whose 's stays on. */
  readonly shortened: ReadonlySet<string>;
  /** Words before a span of time that make it the time to come. */
  readonly toFuture: ReadonlySet<string>;
  /** Words right before a number that deny it. */
  readonly notBefore: ReadonlySet<string>;
  /** Verbs with which a person or an instrument tells a number. */
  readonly telling?: ReadonlySet<string>;
  /** Pairs of words that a joining word makes one idiom of, by a hyphen: "on and off". */
  readonly pairs?: ReadonlySet<string>;
  /** Words that begin a clause after "so". */
  readonly soBefore?: ReadonlySet<string>;
  /** Words that part a sentence into clauses beside punctuation. */
  readonly clause: ReadonlySet<string>;
}

/** What is supposed only ("what if it were 9"). */
export interface SupposingWords {
  /** At the start of a text, the longer before those they begin with. */
  readonly openings: readonly string[];
  /** What shows that a text with such an opening tells on what an answer hangs: "if it rains they will". */
  readonly tells?: RegExp;
  /** What may stand for the fact last spoken of. */
  readonly itWere: readonly string[];
  /** Forms of what is only supposed, and what they are read as. */
  readonly forms: readonly (readonly [said: string, read: string])[];
  /** How a correction of the fact last spoken of begins. */
  readonly correction: string;
}

/** A wish that is known by how it begins. */
export interface LooseWish {
  readonly intent: Intent;
  readonly begins: Patterns;
  /** All that may follow. */
  readonly words: ReadonlySet<string>;
  /** One of these must be said, at the beginning or after it; any text where absent. */
  readonly needs?: ReadonlySet<string>;
}

/** All that the grammar knows of one language. */
export interface LanguageWords {
  /** Rewrites a lower-case word as the lists have it; the lists are written so. */
  readonly spell?: (word: string) => string;
  /** Puts what the language says in its own way into the words of the lists; every token keeps its place. */
  readonly retell?: (tokens: readonly Token[]) => readonly Token[];
  /** A number as it is written, as the grammar reads it. */
  readonly retellNumber?: (written: string) => string;
  /** Words that are no mistyped word of the lists, though a letter away from one; without it nothing mistyped is mended. */
  readonly properWords?: readonly string[];
  readonly rows: readonly WordRow[];
  readonly subjects: Readonly<Partial<Record<Subject, Patterns>>>;
  readonly flags: Readonly<Record<Exclude<Flag, 'filler' | 'ended' | 'spread' | 'mostly'>, Patterns>> &
    Readonly<Partial<Record<'ended' | 'spread' | 'mostly', Patterns>>>;
  /** Words that may stand within a phrase without changing it: articles, and words of degree. */
  readonly gaps?: ReadonlySet<string>;
  /** Crops, each by all its names. */
  readonly crops?: readonly Patterns[];
  /** Words that say nothing of a fact, parted by blanks. */
  readonly filler: string;
  /** Phrases that say nothing of a fact. */
  readonly fillerPhrases?: Patterns;
  readonly ago: readonly (readonly [pattern: string, hours: number])[];
  /** Units of "three days ago" in hours, and the word after or before them. */
  readonly agoUnits: Readonly<Record<string, number>>;
  readonly agoAfter?: string;
  readonly agoBefore?: string;
  readonly little: LittleWords;
  readonly answers: AnswerWords;
  /** What may stand before and after the words of a wish without changing it. */
  readonly wishLeads?: Patterns;
  readonly wishTails?: Patterns;
  readonly intents: Readonly<Partial<Record<Exclude<Intent, 'yes' | 'no'>, Patterns>>>;
  readonly looseWishes?: readonly LooseWish[];
  readonly numbers: NumberWords;
  readonly units: UnitWords;
  readonly supposing: SupposingWords;
  readonly clock: ClockWords;
}
