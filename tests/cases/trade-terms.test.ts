import { describe, expect, test } from 'vitest';
import { glossaryIn } from '../../src/core/dialogue/terms.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { markTerms } from '../../src/core/words/mark-terms.ts';
import { packTable, shipped } from './shipped-pack.ts';
import { tradeTerms } from './trade-terms.ts';

type Language = keyof typeof tradeTerms;
const languages: readonly Language[] = ['en', 'de'];

/** Every text of a language in a pack's files; a rule's and a parameter's reason is written in English alone. */
function packTexts(node: unknown, language: Language): string[] {
  if (Array.isArray(node)) return node.flatMap((one) => packTexts(one, language));
  if (typeof node !== 'object' || node === null) return [];
  const { en, de, why, ...rest } = node as Record<string, unknown>;
  const own = language === 'en' ? en : de;
  return [
    ...strings(own),
    ...(language === 'en' && typeof why === 'string' ? [why] : []),
    ...packTexts(Object.values(rest), language),
  ];
}

/** Every string in what a catalogue says; of what takes arguments, the words that are written out. */
function strings(node: unknown): string[] {
  if (typeof node === 'string') return [node];
  if (typeof node === 'function') {
    const written = [...String(node).matchAll(/'([^'\n]*)'|"([^"\n]*)"|`([^`]*)`/g)];
    return written.map(([, a, b, c]) => (a ?? b ?? c ?? '').replaceAll(/\$\{[^}]*\}/g, '…'));
  }
  return typeof node === 'object' && node !== null ? Object.values(node).flatMap(strings) : [];
}

describe.each(packTable.flatMap(([id, { pack }]) => languages.map((language) => ({ id, pack, language }))))(
  'trade terms of $id in $language',
  ({ pack, language }) => {
    const { questions, rules, cautions, title, parameters, glossary } = pack;
    const isFirst = pack.id === shipped.pack.id;
    const words = catalogueOf(language);
    const { rules: _, errors: __, ...said } = words as typeof words & Record<'rules' | 'errors', unknown>;
    const texts = [
      ...packTexts([questions, rules, cautions, title, parameters], language),
      ...(isFirst ? strings(said) : []),
    ];
    const terms = glossaryIn(glossary, words);
    const patterns = tradeTerms[language].map(
      ({ source }) =>
        new RegExp(`(?<![\\p{L}\\p{N}-])(?:${source})(?![\\p{L}\\p{N}-])`, language === 'en' ? 'giu' : 'gu'),
    );

    test('are explained wherever the pack or the program says one', () => {
      const found = new Set(texts.flatMap((text) => patterns.flatMap((one) => text.match(one) ?? [])));
      expect(found.size).toBeGreaterThan(isFirst ? 40 : 10);
      const unexplained = [...found].filter((word) => {
        const [part, ...more] = markTerms(word, terms);
        return more.length > 0 || typeof part !== 'object' || part.said !== word;
      });
      expect(unexplained).toEqual([]);
    });

    test('are explained by one entry each, with a source, in words that no other entry has', () => {
      const forms = terms.flatMap(({ said: all }) => all.map((form) => form.toLowerCase()));
      expect(forms.filter((form, index) => forms.indexOf(form) !== index)).toEqual([]);
      for (const { source, text, words: heads } of glossary) {
        expect(JSON.stringify(source)).toMatch(/\d{4}|WMO|EPPO|ISO|common practice, no source/);
        expect(text[language]?.length).toBeGreaterThan(20);
        expect(heads[language]?.length).toBeGreaterThan(0);
      }
    });
  },
);
