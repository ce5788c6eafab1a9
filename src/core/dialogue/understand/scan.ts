import type { Clause } from './clauses.ts';
import { agoUnits, agoWord } from './en/flags.ts';
import { lexicon } from './lexicon.ts';
import type { Entry, Flag, Subject } from './lexicon-types.ts';
import type { Quantity } from './quantities.ts';

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
}

/** A clause as its phrases and quantities. */
export interface Scan {
  readonly clause: Clause;
  readonly cues: readonly Cue[];
  readonly amounts: readonly Amount[];
  readonly subjects: readonly { readonly subject: Subject; readonly at: number }[];
  readonly flags: ReadonlySet<Flag>;
  readonly agoHours: number | undefined;
  /** How many words and signs are not known. */
  readonly unknown: number;
  /** True where a span of time is named that dates nothing: "9 minutes". */
  readonly hasTime: boolean;
  readonly wordAt: (at: number) => string;
}

/** Words of a clause by place; '' where there is no word. */
export function wordsOf({ items }: Pick<Clause, 'items'>): (at: number) => string {
  return (at) => {
    const item = items[at];
    return item?.kind === 'word' ? item.text : '';
  };
}

const leadsToFuture = new Set(['next', 'coming', 'within', 'in']);

/** Finds the phrases of a clause: at each place the longest that is known. */
export function scan(clause: Clause): Scan {
  const wordAt = wordsOf(clause);
  const cues: Cue[] = [];
  const amounts: Amount[] = [];
  const flags = new Set<Flag>();
  let agoHours: number | undefined;
  let unknown = 0;
  let hasTime = false;
  for (let at = 0; at < clause.items.length; ) {
    const item = clause.items[at]!;
    if (item.kind === 'quantity') {
      const ago = agoOf(item.quantity, wordAt(at + 1));
      if (item.quantity.unit === 'time') {
        if (ago !== null) agoHours = item.quantity.numeral.value * ago;
        else if (leadsToFuture.has(wordAt(at - 1))) flags.add('ahead');
        else hasTime = true;
      } else amounts.push({ quantity: item.quantity, at, isAt: wordAt(at - 1) === 'at' });
      at += ago === null ? 1 : 2;
      continue;
    }
    const found = lexicon.longestAt(wordAt, at);
    if (found === null) {
      unknown += 1;
      at += 1;
      continue;
    }
    cues.push({ entry: found.value, from: at, to: at + found.length });
    for (const flag of found.value.flags) flags.add(flag);
    agoHours = found.value.agoHours ?? agoHours;
    at += found.length;
  }
  const subjects = cues.flatMap(({ entry, from }) => entry.subjects.map((subject) => ({ subject, at: from })));
  return { clause, cues, amounts, subjects, flags, agoHours, unknown, hasTime, wordAt };
}

function agoOf(quantity: Quantity, next: string): number | null {
  if (quantity.unit !== 'time' || next !== agoWord) return null;
  return agoUnits[quantity.unitWord] ?? null;
}
