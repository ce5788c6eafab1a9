import type { Language } from './language.ts';
import type { Item } from './quantities.ts';

const wordsIn = (items: readonly Item[]) => (at: number) => {
  const item = items[at];
  return item?.kind === 'word' ? item.text : '';
};

/**
 * Where a number is put right in one breath, "20 m off no 25" or "12 km/h no mph": between two numbers, or a number and a unit, stands
 * nothing but "no", "sorry" or the like. The place of what ends what is put in its place; null where `from` begins no such words. `open`
 * is how many items the clause has so far.
 */
export function turnAt(items: readonly Item[], from: number, open: number, language: Language): number | null {
  const { answers, books, fillers } = language;
  const wordAt = wordsIn(items);
  const back = [1, 2, 3].find((back) => !isAfterNumber(wordAt(from - back), language)) ?? 0;
  if (items[from - back]?.kind !== 'quantity' || back === 0 || open < back) return null;
  let at = from;
  for (;;) {
    const isNo = answers.plain.has(wordAt(at)) && books.shortAnswers.longestAt(wordAt, at)?.value === 'no';
    const length = books.correcting.longestAt(wordAt, at)?.length ?? Number(isNo);
    if (length === 0) break;
    at += length;
  }
  if (at === from) return null;
  const said = [0, 1, 2].find((skipped) => !fillers.has(wordAt(at + skipped))) ?? 0;
  const after = items[at]?.kind === 'break' ? at + 1 : at + said;
  if (items[after]?.kind === 'quantity') return after;
  const unit = books.unitsAfter.longestAt(wordAt, after);
  const next = unit === null ? undefined : items[after + unit.length];
  return unit !== null && next?.kind !== 'word' && next?.kind !== 'quantity' ? after + unit.length - 1 : null;
}

/** True for a word that may stand between a number and what puts it right: how far off or deep it is, or when. */
function isAfterNumber(word: string, { little, books }: Language): boolean {
  if (word === '') return false;
  if (little.off.has(word) || little.tall.has(word) || little.depth.has(word)) return true;
  const entry = books.lexicon.longestAt((at) => (at === 0 ? word : ''), 0)?.value;
  const isTime = entry?.agoHours !== undefined || entry?.flags.includes('ahead') === true;
  return isTime && entry.rows.length + entry.subjects.length === 0;
}

/** True where the words at a place begin to tell a number of something: "wind 6", not the "buffer" of "no 6 m buffer". */
export function speaksAnew(items: readonly Item[], at: number, { books }: Language): boolean {
  const found = books.lexicon.longestAt(wordsIn(items), at);
  return found !== null && found.value.subjects.length > 0 && items[at + found.length]?.kind === 'quantity';
}
