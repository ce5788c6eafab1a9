import type { GlossaryTerm, Pack } from '../rules/pack-types.ts';
import { remember } from '../units/remember.ts';
import { inLanguage, sourceIn } from '../units/texts.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { markTerms } from '../words/mark-terms.ts';
import type { TermView } from './view-types.ts';

const glossaries = new WeakMap<readonly GlossaryTerm[], Map<Catalogue, readonly TermView[]>>();

/** The trade terms of the glossary that these sentences say, in the order of the glossary. */
export function termsIn(sentences: readonly string[], { glossary }: Pack, words: Catalogue): TermView[] {
  const all = glossaryIn(glossary, words);
  const idsIn = idsBy.get(all) ?? remember((sentence: string) => idsOf(sentence, all), mostKept);
  idsBy.set(all, idsIn);
  const said = new Set([...new Set(sentences)].flatMap((sentence) => idsIn(sentence)));
  return all.filter(({ id }) => said.has(id));
}

/** Most sentences whose terms are kept, of one glossary: turns of a conversation mostly show the same ones. */
const mostKept = 4096;
const idsBy = new WeakMap<readonly TermView[], (sentence: string) => readonly string[]>();

function idsOf(sentence: string, all: readonly TermView[]): readonly string[] {
  return markTerms(sentence, all).flatMap((part) => (typeof part === 'string' ? [] : [part.term.id]));
}

/** Every sentence in what is shown, however deep it stands. */
export function sentencesIn(shown: unknown): string[] {
  const sentences: string[] = [];
  const gather = (part: unknown): void => {
    if (typeof part === 'string') sentences.push(part);
    else if (typeof part === 'object' && part !== null) for (const value of Object.values(part)) gather(value);
  };
  gather(shown);
  return sentences;
}

/** The word by which a term is called, in a language or else in English. */
export function headWord({ id, words }: GlossaryTerm, language: string): string {
  return (words[language] ?? words['en'])?.[0] ?? id;
}

/** The whole glossary in one language, made once. */
export function glossaryIn(glossary: readonly GlossaryTerm[], words: Catalogue): readonly TermView[] {
  const byWords = glossaries.get(glossary) ?? new Map<Catalogue, readonly TermView[]>();
  glossaries.set(glossary, byWords);
  const kept = byWords.get(words);
  if (kept) return kept;
  const made = glossary.map((term): TermView => {
    const { id, text, source, words: heads, forms = {} } = term;
    const own = heads[words.language] ?? heads['en'] ?? [];
    return {
      id,
      said: [...own, ...(forms[words.language] ?? [])],
      text: words.asking.explained(inLanguage(text, words.language), sourceIn(source, words.language)),
    };
  });
  byWords.set(words, made);
  return made;
}
