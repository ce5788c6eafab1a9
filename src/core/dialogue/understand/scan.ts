import type { Clause } from './clauses.ts';
import type { Language } from './language.ts';
import type { Entry, Flag, Subject } from './lexicon-types.ts';
import type { Quantity } from './quantities.ts';
import { withSpread } from './spread.ts';

/** A phrase found in a clause, by the places of its items. */
export interface Cue {
  readonly entry: Entry;
  readonly from: number;
  readonly to: number;
}

/** A quantity found in a clause. */
export interface Amount {
  readonly quantity: Quantity;
  readonly at: number;
  /** True where "at" stands before it. */
  readonly isAt: boolean;
  /** True where a word after it says that it is a height: "8 cm tall". */
  readonly isTall: boolean;
}

/** A clause as its phrases and quantities. */
export interface Scan {
  readonly language: Language;
  readonly clause: Clause;
  readonly cues: readonly Cue[];
  readonly amounts: readonly Amount[];
  readonly subjects: readonly { readonly subject: Subject; readonly at: number }[];
  readonly flags: ReadonlySet<Flag>;
  readonly agoHours: number | undefined;
  /** How many words and signs are not known. */
  readonly unknown: number;
  /** Their places. */
  readonly unknownAt: readonly number[];
  /** True where a span of time is named that dates nothing: "9 minutes". */
  readonly hasTime: boolean;
  /** How far ahead a named span of time reaches, hours; null where none is named. */
  readonly aheadHours: number | null;
  /** True where a year is named: "in 2019". */
  readonly hasYear: boolean;
  /** True where a word says that it began in time gone by: "since". */
  readonly hasSince: boolean;
  readonly wordAt: (at: number) => string;
}

/** Words of a clause by place; '' where there is no word. */
export function wordsOf({ items }: Pick<Clause, 'items'>): (at: number) => string {
  return (at) => {
    const item = items[at];
    return item?.kind === 'word' ? item.text : '';
  };
}

/** Finds the phrases of a clause: at each place the longest that is known. */
export function scan(clause: Clause, language: Language): Scan {
  const { books, little } = language;
  const wordAt = wordsOf(clause);
  const cues: Cue[] = [];
  const amounts: Amount[] = [];
  const flags = new Set<Flag>();
  let agoHours: number | undefined;
  const unknownAt: number[] = [];
  let hasTime = false;
  let hasYear = false;
  let aheadHours: number | null = null;
  for (let at = 0; at < clause.items.length; ) {
    const item = clause.items[at]!;
    if (item.kind === 'quantity') {
      const ago = agoOf(item.quantity, wordAt(at - 1), wordAt(at + 1), language);
      if (item.quantity.unit === 'time') {
        if (ago !== null) agoHours = item.quantity.numeral.value * ago.hours;
        else if (little.toFuture.has(wordAt(at - 1))) {
          flags.add('ahead');
          aheadHours = (language.agoUnits[item.quantity.unitWord] ?? 0) * item.quantity.numeral.value || null;
        } else hasTime = true;
      } else if (isYear(item.quantity) && little.beforeYear?.has(wordAt(at - 1))) hasYear = true;
      else if (item.quantity.unit === null && wordAt(at - 1) === 'next') {
        flags.add('ahead');
        aheadHours = item.quantity.numeral.value;
      } else {
        const isTall = item.quantity.unit !== null && little.tall.has(wordAt(at + 1));
        amounts.push({ quantity: item.quantity, at, isAt: little.atDepth.has(wordAt(at - 1)), isTall });
        at += Number(isTall);
      }
      at += 1 + (ago?.after ?? 0);
      continue;
    }
    if (item.kind === 'word' && item.isMended) flags.add('doubt');
    const found = books.lexicon.longestAt(wordAt, at);
    if (found === null) {
      unknownAt.push(at);
      at += 1;
      continue;
    }
    cues.push({ entry: found.value, from: at, to: at + found.length });
    for (const flag of found.value.flags) flags.add(flag);
    if (found.value.flags.includes('ended')) flags.add('doubt');
    agoHours = found.value.agoHours ?? agoHours;
    at += found.length;
  }
  const spread = flags.has('spread') ? withSpread(amounts, cues) : null;
  if (spread !== null) flags.delete('spread');
  const subjects = cues.flatMap(({ entry, from }) => entry.subjects.map((subject) => ({ subject, at: from })));
  const unknown = unknownAt.length;
  return {
    language,
    clause,
    cues,
    amounts: spread ?? amounts,
    subjects,
    flags,
    agoHours,
    unknown,
    unknownAt,
    hasTime,
    aheadHours,
    hasYear,
    hasSince: clause.items.some((item) => item.kind === 'word' && little.since.has(item.text)),
    wordAt,
  };
}

function isYear({ unit, numeral }: Quantity): boolean {
  const { value, low } = numeral;
  return unit === null && low === undefined && Number.isInteger(value) && value >= 1950 && value < 2100;
}

/** Hours of a span that lies back, and how many words after it say so. */
function agoOf(quantity: Quantity, before: string, next: string, { agoUnits, agoAfter, agoBefore }: Language) {
  const hours = quantity.unit === 'time' ? agoUnits[quantity.unitWord] : undefined;
  if (hours === undefined) return null;
  if (next !== '' && next === agoAfter) return { hours, after: 1 };
  return before !== '' && before === agoBefore ? { hours, after: 0 } : null;
}
