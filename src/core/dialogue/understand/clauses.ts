import type { Language } from './language.ts';
import type { Item } from './quantities.ts';
import { tokenise } from './tokens.ts';
import { speaksAnew, turnAt } from './turn-at.ts';

/** A piece of a text that says one thing. */
export interface Clause {
  readonly items: readonly Exclude<Item, { kind: 'break' }>[];
  /** Place in the text. */
  readonly start: number;
  readonly end: number;
  /** What parts it from the clause before: a sign, a word, or '' at the beginning. */
  readonly joiner: string;
  /** What ends its sentence. */
  readonly isQuestion: boolean;
}

const sentenceEnds = new Set(['.', '?', '!', '\n']);

/** Parts a text at its signs and joining words. */
export function splitClauses(items: readonly Item[], language: Language): readonly Clause[] {
  const { little, units } = language;
  const clauses: Clause[] = [];
  let current: Clause['items'][number][] = [];
  let joiner = '';
  let inPlace = -1;
  const close = (next: string) => {
    const [first, last] = [current[0], current.at(-1)];
    if (first && last) clauses.push({ items: current, start: first.start, end: last.end, joiner, isQuestion: false });
    if (current.length > 0 || !sentenceEnds.has(joiner)) joiner = next;
    current = [];
  };
  for (const [at, item] of items.entries()) {
    const turn = turnAt(items, at, current.length, language);
    if (turn !== null) close(',');
    inPlace = turn ?? inPlace;
    if (item.kind === 'break') {
      close(item.text);
      if (item.text === '?') markQuestion(clauses);
    } else if (isSo(items, at, little) && current.length > 0) close('so');
    else if (isPair(items, at, little)) current.push(item as Clause['items'][number]);
    else if (item.kind === 'word' && little.clause.has(item.text)) {
      const isBetween =
        item.text === units.betweenJoiner && current.some((one) => one.kind === 'word' && one.text === units.between);
      if (isBetween && little.or !== undefined) current.push({ ...item, text: little.or });
      else close(item.text);
    } else current.push(item);
    if (at === inPlace && speaksAnew(items, at + 1, language)) close(',');
  }
  close('');
  return clauses;
}

/** "So" where a clause of its own begins: "it was 9, so I'd say 8.8". */
function isSo(items: readonly Item[], at: number, { soBefore }: Language['little']): boolean {
  const [item, next] = [items[at], items[at + 1]];
  if (item?.kind !== 'word' || item.text !== 'so' || soBefore === undefined) return false;
  return next?.kind === 'quantity' || (next?.kind === 'word' && soBefore.has(next.text));
}

/** True for the joining word of an idiom: "on and off", "a ball but it falls apart". */
function isPair(items: readonly Item[], at: number, { pairs, clause }: Language['little']): boolean {
  const [before, item, next] = [items[at - 1], items[at], items[at + 1]];
  if (item?.kind !== 'word' || !clause.has(item.text) || before?.kind !== 'word' || next?.kind !== 'word') return false;
  return pairs?.has(`${before.text}-${next.text}`) === true;
}

/** Every clause of the sentence that has just ended was part of a question. */
function markQuestion(clauses: Clause[]): void {
  for (let at = clauses.length - 1; at >= 0; at -= 1) {
    const clause = clauses[at]!;
    if (clause.isQuestion) return;
    clauses[at] = { ...clause, isQuestion: true };
    if (sentenceEnds.has(clause.joiner)) return;
  }
}

/** A text as plain words and numbers, for comparing with a label. */
export function wordsText(text: string, language: Language): string {
  return tokenise(text, language)
    .filter(({ kind }) => kind !== 'break')
    .map((token) => (token.kind === 'word' ? token.text : text.slice(token.start, token.end)))
    .join(' ');
}
