import type { GlossaryTerm, Pack } from '../rules/pack-types.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { inLanguage } from './decision.ts';
import type { TermView } from './view-types.ts';

const patterns = new WeakMap<GlossaryTerm, Map<string, RegExp>>();

/** The trade terms of the glossary that sentences say, each once with its explanation, in the order in which they are said. */
export function termsIn(sentences: readonly string[], { glossary }: Pack, words: Catalogue): TermView[] {
  const text = sentences.join(' ');
  return glossary
    .flatMap((term) => {
      const said = patternOf(term, words.language).exec(text);
      return said ? [{ at: said.index, term, word: said[0] }] : [];
    })
    .sort((a, b) => a.at - b.at)
    .map(({ term, word }) => ({
      id: term.id,
      word,
      text: words.asking.explained(inLanguage(term.text, words.language), term.source),
    }));
}

function patternOf(term: GlossaryTerm, language: string): RegExp {
  const known = patterns.get(term) ?? new Map<string, RegExp>();
  patterns.set(term, known);
  const said = term.words[language] ?? term.words['en'] ?? [];
  const longestFirst = [...said].sort((a, b) => b.length - a.length).map(escaped);
  const pattern = known.get(language) ?? new RegExp(`(?<![\\p{L}-])(?:${longestFirst.join('|')})(?![\\p{L}-])`, 'iu');
  known.set(language, pattern);
  return pattern;
}

function escaped(words: string): string {
  return words.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
