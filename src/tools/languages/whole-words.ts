import { errorTable } from '../../core/errors/table.ts';
import { coreFactIds, coreFacts } from '../../core/facts/registry/index.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { words as german } from '../../core/words/de/index.ts';
import type { PhraseTable } from '../../core/words/phrase-table.ts';

/** All that a language says: what a folder of the page's words exports. */
export interface SpokenWords {
  readonly core: Pick<Catalogue, 'errors' | 'facts' | 'errorPhrases' | 'help'>;
  readonly page: object;
  readonly pictures: object;
}

/** What the error table says and advises, by code. */
export function englishErrors(): Readonly<Record<string, { readonly says: string; readonly next: string }>> {
  return Object.fromEntries(Object.entries(errorTable).map(([code, { says, next }]) => [code, { says, next }]));
}

/** What the registry calls the facts, by id. */
export function englishFacts(): Readonly<Record<string, string>> {
  return Object.fromEntries(coreFactIds.map((id) => [id, coreFacts[id].label]));
}

/** What errors expected and got, by itself: the phrases that the other languages tell. */
export function englishPhrases(): PhraseTable {
  return Object.fromEntries(Object.keys(german.errorPhrases).map((phrase) => [phrase, phrase]));
}

/** What the help of the command line says, by itself. */
export function englishHelp(): PhraseTable {
  return Object.fromEntries(Object.keys(german.help).map((phrase) => [phrase, phrase]));
}

/** English with what stands in the error table and the registry, where other languages have it among their words. */
export function wholeEnglish({ core, page, pictures }: SpokenWords): SpokenWords {
  return {
    core: {
      ...core,
      errors: englishErrors(),
      errorPhrases: englishPhrases(),
      help: englishHelp(),
      facts: englishFacts(),
    },
    page,
    pictures,
  };
}
