import type { GlossaryTerm } from '../../rules/pack-types.ts';
import type { FieldName } from '../events.ts';
import * as german from './de/wishes.ts';
import * as english from './en/wishes.ts';

/** Nobody says such a wish in more characters. */
const longestWish = 120;

const definePatterns = [...english.definePatterns, ...german.definePatterns];
const nextFieldWords = [...english.nextFieldWords, ...german.nextFieldWords];
const [sameForOf = /$^/, ...maySay] = english.sameForPatterns;
const sameForSurely = [sameForOf, ...german.sureSameForPatterns];
const sameForMaybe = [...maySay, ...german.sameForPatterns];

/**
 * The trade term that a text asks to be explained: the term of the glossary, or the words where it has none and the text asks in so
 * many words what they mean. Null where nothing is asked to be explained.
 */
export function askedTerm(
  text: string,
  glossary: readonly GlossaryTerm[],
): { readonly term: GlossaryTerm } | { readonly words: string } | null {
  if (text.length > longestWish) return null;
  const plain = plainText(text);
  for (const pattern of [...english.sureDefinePatterns, ...german.sureDefinePatterns]) {
    const words = pattern.exec(plain)?.[1];
    if (words === undefined || notTerms.has(words)) continue;
    const term = termOf(words, glossary);
    return term ? { term } : { words };
  }
  for (const [index, pattern] of definePatterns.entries()) {
    const words = pattern.exec(plain)?.[1];
    if (words === undefined) continue;
    const term = termOf(words, glossary);
    if (term) return { term };
    if (index === 0 && / (?:mean|stand for)$/.test(plain) && !notTerms.has(words)) return { words };
  }
  return null;
}

const notTerms: ReadonlySet<string> = new Set(['that', 'this', 'it', 'you', 'das', 'dies', 'es', 'du']);

/** The term said by these words, singular or plural, in any language of the glossary. */
export function termOf(words: string, glossary: readonly GlossaryTerm[]): GlossaryTerm | null {
  const wanted = new Set([words, words.replace(/s$/, ''), `${words}s`].map(plainText));
  return (
    glossary.find((term) =>
      [...Object.values(term.words), ...Object.values(term.forms ?? {})]
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
  if (text.length > longestWish) return undefined;
  const plain = plainText(text);
  if (english.nextFieldWords.includes(plain)) return null;
  const patterns = [...sameForSurely, ...sameForMaybe];
  for (const [index, pattern] of patterns.entries()) {
    const name = pattern.exec(plain)?.[1];
    if (name === undefined) continue;
    if (nextFieldWords.includes(name)) return null;
    const found = fields.find((field) => plainText(field.name) === name || field.id === name);
    if (found) return found.id;
    if (index < sameForSurely.length) return null;
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
