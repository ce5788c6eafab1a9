/** A term as it may be said, in one language. */
export interface Sayable {
  readonly id: string;
  /** The words by which it is said, inflected and compounded ones too. */
  readonly said: readonly string[];
}

/** A piece of a text: plain, or the words by which a term is said. */
export type TextPart<T> = string | { readonly said: string; readonly term: T };

const indexes = new WeakMap<readonly Sayable[], ReadonlyMap<string, readonly Form<Sayable>[]>>();

interface Form<T> {
  readonly form: string;
  readonly term: T;
}

/**
 * A text in pieces, with the terms that it says marked: whole words in either case, the longest first, each term at most once. The
 * pieces put together are the text.
 */
export function markTerms<T extends Sayable>(text: string, terms: readonly T[]): TextPart<T>[] {
  const index = indexOf(terms);
  const parts: TextPart<T>[] = [];
  const known = new Set<string>();
  let plainFrom = 0;
  let goOnAt = 0;
  for (const { 0: word, index: at } of text.matchAll(wordPattern)) {
    if (at < goOnAt) continue;
    const found = index.get(word.toLowerCase())?.find(({ form }) => isSaidAt(text, at, form));
    if (!found) continue;
    const end = at + found.form.length;
    goOnAt = end;
    if (known.has(found.term.id)) continue;
    known.add(found.term.id);
    if (at > plainFrom) parts.push(text.slice(plainFrom, at));
    parts.push({ said: text.slice(at, end), term: found.term });
    plainFrom = end;
  }
  return plainFrom < text.length ? [...parts, text.slice(plainFrom)] : parts;
}

const wordPattern = /[\p{L}\p{N}][\p{L}\p{M}\p{N}-]*/gu;

function isSaidAt(text: string, at: number, form: string): boolean {
  const end = at + form.length;
  return (
    text.slice(at, end).toLowerCase() === form && !/^[\p{L}\p{M}\p{N}]|^-[\p{L}\p{N}]/u.test(text.slice(end, end + 2))
  );
}

/** The forms of the terms by their first word, the longest first; made once for each list. */
function indexOf<T extends Sayable>(terms: readonly T[]): ReadonlyMap<string, readonly Form<T>[]> {
  const kept = indexes.get(terms) as ReadonlyMap<string, readonly Form<T>[]> | undefined;
  if (kept) return kept;
  const index = new Map<string, Form<T>[]>();
  for (const term of terms) {
    for (const said of term.said) {
      const form = said.toLowerCase();
      const first = form.match(wordPattern)?.[0];
      if (first === undefined) continue;
      index.set(
        first,
        [...(index.get(first) ?? []), { form, term }].sort((a, b) => b.form.length - a.form.length),
      );
    }
  }
  indexes.set(terms, index);
  return index;
}
