import type { GlossaryTerm } from '../../rules/pack-types.ts';
import type { FieldName } from '../events.ts';
import { definePatterns, nextFieldWords, sameForPatterns } from './en/wishes.ts';

/**
 * The trade term that a text asks to be explained: the term of the glossary, or the words where it has none and the text asks in so
 * many words what they mean. Null where nothing is asked to be explained.
 */
export function askedTerm(
  text: string,
  glossary: readonly GlossaryTerm[],
): { readonly term: GlossaryTerm } | { readonly words: string } | null {
  const plain = plainText(text);
  for (const [index, pattern] of definePatterns.entries()) {
    const words = pattern.exec(plain)?.[1];
    if (words === undefined) continue;
    const term = termOf(words, glossary);
    if (term) return { term };
    if (index === 0 && / (?:mean|stand for)$/.test(plain) && !notTerms.has(words)) return { words };
  }
  return null;
}

const notTerms: ReadonlySet<string> = new Set(['that', 'this', 'it', 'you']);

/** The term said by these words, singular or plural, in any language of the glossary. */
export function termOf(words: string, glossary: readonly GlossaryTerm[]): GlossaryTerm | null {
  const wanted = new Set([words, words.replace(/s$/, ''), `${words}s`].map(plainText));
  return (
    glossary.find((term) =>
      Object.values(term.words)
        .flat()
        .some((one) => wanted.has(plainText(one))),
    ) ?? null
  );
}

/**
 * The next field that a text asks for: its id, null where it is "the next field" or one that nobody offers is named after "the same
 * for". Undefined where the text asks for none.
 */
export function askedField(text: string, fields: readonly FieldName[]): string | null | undefined {
  const plain = plainText(text);
  if (nextFieldWords.includes(plain)) return null;
  for (const [index, pattern] of sameForPatterns.entries()) {
    const name = pattern.exec(plain)?.[1];
    if (name === undefined) continue;
    if (nextFieldWords.includes(name)) return null;
    const found = fields.find((field) => plainText(field.name) === name || field.id === name);
    if (found) return found.id;
    if (index === 0) return null;
  }
  return undefined;
}

/** True where a text asks for the next field without naming one. */
export function isNextField(text: string): boolean {
  const plain = plainText(text);
  return nextFieldWords.some((words) => plain === words || plain.endsWith(` ${words}`));
}

function plainText(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll('\u2019', "'")
    .replaceAll(/\s+/g, ' ')
    .replace(/[?!.,"\s]+$/, '')
    .replace(/^["\s]+/, '');
}
