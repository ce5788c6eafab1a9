import type { Language } from './language.ts';
import type { SaidUnit } from './lexicon-types.ts';
import { type Numeral, rangeOf } from './numerals.ts';
import type { Token } from './tokens.ts';

/** A number with what stands around it. */
export interface Quantity {
  readonly numeral: Numeral;
  readonly unit: SaidUnit | null;
  /** Which side it is open to, or that it is only near; null where it is meant as it stands. */
  readonly bound: 'above' | 'least' | 'below' | 'most' | 'near' | null;
  /** The last word of the unit: which time it is. */
  readonly unitWord: string;
}

/** A token of a text whose numbers are put together with their units. */
export type Item =
  | Exclude<Token, { kind: 'number' }>
  | { readonly kind: 'quantity'; readonly quantity: Quantity; readonly start: number; readonly end: number };

interface Part {
  readonly numeral: Numeral;
  readonly unit: SaidUnit | null;
  readonly next: number;
}

/** Puts numbers, units, ranges and bounds together; tokens as `joinNumbers` gives them. */
export function findQuantities(tokens: readonly Token[], language: Language): readonly Item[] {
  const wordAt = (at: number): string => {
    const token = tokens[at];
    return token?.kind === 'word' ? token.text : '';
  };
  const items: Item[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found = quantityAt(tokens, wordAt, at, language);
    const token = tokens[at]!;
    if (found === null) {
      items.push(token as Item);
      at += 1;
      continue;
    }
    const last = tokens[found.next - 1]!;
    items.push({ kind: 'quantity', quantity: found.quantity, start: token.start, end: last.end });
    at = found.next;
  }
  return items;
}

type WordAt = (at: number) => string;

function quantityAt(tokens: readonly Token[], wordAt: WordAt, from: number, language: Language) {
  const { books, units } = language;
  const softener = books.boundsBefore.longestAt(wordAt, from);
  const bound = softener?.value === 'near' ? books.boundsBefore.longestAt(wordAt, from + softener.length) : null;
  const lead = bound ?? softener;
  const afterLead = from + (softener?.length ?? 0) + (bound?.length ?? 0);
  const isBetween = units.rangeLeads.has(wordAt(afterLead));
  const first = partAt(tokens, wordAt, isBetween ? afterLead + 1 : afterLead, language);
  if (first === null) return null;
  const whole = rangeAt(tokens, wordAt, first, wordAt(afterLead) === units.between, language);
  const tail = books.boundsAfter.longestAt(wordAt, whole.next);
  const following = tokens[whole.next + (tail?.length ?? 0)];
  const isZero = following?.kind === 'number' && following.numeral.value === 0;
  const isTail = tail !== null && !(tail.value === 'negative' && following?.kind === 'number' && !isZero);
  const next = whole.next + (isTail ? tail.length + Number(tail.value === 'negative' && isZero) : 0);
  const trailing = isTail && whole.unit === null ? books.unitsAfter.longestAt(wordAt, next) : null;
  const numeral = isTail && tail.value === 'negative' ? negative(whole.numeral) : whole.numeral;
  const tailBound = isTail && tail.value !== 'negative' ? tail.value : null;
  const unit = whole.unit ?? trailing?.value ?? null;
  const unitWord = wordAt(whole.next - 1);
  return {
    quantity: { numeral, unit, bound: lead?.value ?? tailBound, unitWord },
    next: next + (trailing?.length ?? 0),
  };
}

function negative({ value, low, high, halfStep }: Numeral): Numeral {
  const band = low === undefined || high === undefined ? {} : { low: 0 - high, high: 0 - low };
  return { value: 0 - value, ...band, halfStep };
}

/** A number with its unit, said before or after it; "1 in 20" and "a foot" too. */
function partAt(tokens: readonly Token[], wordAt: WordAt, from: number, language: Language): Part | null {
  const { books, units } = language;
  const lead = books.unitsBefore.longestAt(wordAt, from);
  const at = from + (lead?.length ?? 0);
  const token = tokens[at];
  if (token?.kind !== 'number') return lead === null ? partOfUnit(wordAt, from, language) : null;
  if (lead) return { numeral: token.numeral, unit: lead.value, next: at + 1 };
  const second = tokens[at + 2];
  if (token.numeral.value === 1 && units.oneIn.has(wordAt(at + 1)) && second?.kind === 'number') {
    return { numeral: second.numeral, unit: '1 in', next: at + 3 };
  }
  const fall = fallAt(tokens, wordAt, at, token.numeral, language);
  if (fall !== null) return fall;
  const unit = books.unitsAfter.longestAt(wordAt, at + 1);
  if (unit) return { numeral: token.numeral, unit: unit.value, next: at + 1 + unit.length };
  const isIn = isInches(tokens, wordAt, at + 1, language);
  return { numeral: token.numeral, unit: isIn ? 'in' : null, next: at + 1 + Number(isIn) };
}

/** "3 metres in a hundred": so much fall in a round length. */
function fallAt(tokens: readonly Token[], wordAt: WordAt, at: number, fall: Numeral, language: Language): Part | null {
  const { books, units } = language;
  const lengthOf = (from: number) => {
    const unit = books.unitsAfter.longestAt(wordAt, from);
    return unit === null ? 0 : unit.value === 'm' ? unit.length : null;
  };
  const own = lengthOf(at + 1);
  const run = own === null ? undefined : tokens[at + 2 + own];
  if (own === null || !units.oneIn.has(wordAt(at + 1 + own)) || run?.kind !== 'number') return null;
  const over = run.numeral.value;
  const after = lengthOf(at + 3 + own);
  if (after === null || fall.low !== undefined || over < 10 || over % 10 !== 0 || fall.value > over / 2) return null;
  const numeral = { value: (fall.value / over) * 100, halfStep: (fall.halfStep / over) * 100 };
  return { numeral, unit: '% slope', next: at + 3 + own + after };
}

/** "in" is inches where it is written onto its number ("12in"), a depth follows ("12 in deep") or nothing does ("at 12 in"). */
function isInches(tokens: readonly Token[], wordAt: WordAt, at: number, { units, little }: Language): boolean {
  if (units.inches === '' || wordAt(at) !== units.inches) return false;
  const next = tokens[at + 1];
  const endsAt = little.atDepth.has(wordAt(at - 2)) && (next === undefined || next.kind === 'break');
  return endsAt || tokens[at]?.start === tokens[at - 1]?.end || little.depth.has(wordAt(at + 1));
}

/** "Half a mile", "a foot". */
function partOfUnit(wordAt: WordAt, at: number, language: Language): Part | null {
  const part = language.books.parts.longestAt(wordAt, at);
  const unit = part && language.books.unitsAfter.longestAt(wordAt, at + part.length);
  if (!part || !unit || unit.value === 'foreign' || unit.value === 'time') return singleUnit(wordAt, at, language);
  return {
    numeral: { value: part.value, halfStep: part.value / 10 },
    unit: unit.value,
    next: at + part.length + unit.length,
  };
}

function singleUnit(wordAt: WordAt, at: number, { books }: Language): Part | null {
  const found = books.singleUnits.longestAt(wordAt, at);
  return found && { numeral: { value: 1, halfStep: 0.05 }, unit: found.value, next: at + found.length };
}

function rangeAt(tokens: readonly Token[], wordAt: WordAt, first: Part, isBetween: boolean, language: Language): Part {
  const { range, betweenJoiner } = language.units;
  const out = language.books.plusMinus.longestAt(wordAt, first.next);
  const off = out && partAt(tokens, wordAt, first.next + out.length, language);
  if (
    off &&
    first.numeral.low === undefined &&
    off.numeral.low === undefined &&
    (off.unit ?? first.unit) === (first.unit ?? off.unit)
  ) {
    const by = Math.abs(off.numeral.value);
    const around = (more: number) => Number((first.numeral.value + more).toPrecision(12));
    const numeral = { ...first.numeral, low: around(-by), high: around(by) };
    return { numeral, unit: first.unit ?? off.unit, next: off.next };
  }
  const joiner = wordAt(first.next);
  if (!(range.has(joiner) || (isBetween && joiner === betweenJoiner))) return first;
  const second = partAt(tokens, wordAt, first.next + 1, language);
  if (second === null || first.numeral.low !== undefined || second.numeral.low !== undefined) return first;
  const unit = second.unit ?? first.unit;
  if (first.unit !== null && first.unit !== unit) return first;
  if (first.numeral.value >= second.numeral.value) return first;
  return { numeral: rangeOf(first.numeral, second.numeral), unit, next: second.next };
}
