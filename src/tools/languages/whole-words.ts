import { errorTable } from '../../core/errors/table.ts';
import { coreFactIds, coreFacts } from '../../core/facts/registry/index.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { words as german } from '../../core/words/de/index.ts';
import type { PhraseTable } from '../../core/words/phrase-table.ts';

/** All that a language says: what the index and `later.ts` of a folder of the page's words export. */
export interface SpokenWords {
  readonly core: Pick<Catalogue, 'errors' | 'facts' | 'errorPhrases' | 'help' | 'notes'>;
  readonly page: object;
  readonly pictures: object;
  readonly learn: object;
  readonly card: object;
}

/** What the error table says and advises, by code. */
export function englishErrors(): Readonly<Record<string, { readonly says: string; readonly next: string }>> {
  return Object.fromEntries(Object.entries(errorTable).map(([code, { says, next }]) => [code, { says, next }]));
}

/** What the registry calls the facts, by id. */
export function englishFacts(): Readonly<Record<string, string>> {
  return Object.fromEntries(coreFactIds.map((id) => [id, coreFacts[id].label]));
}

/** Phrases of errors, the help and notes, by themselves: those that the other languages tell. */
export function englishPhrases(table: 'errorPhrases' | 'help' | 'notes'): PhraseTable {
  return Object.fromEntries(Object.keys(german[table]).map((phrase) => [phrase, phrase]));
}

/** English with what stands in the error table and the registry, where other languages have it among their words. */
export function wholeEnglish({ core, ...rest }: SpokenWords): SpokenWords {
  return {
    core: {
      ...core,
      errors: englishErrors(),
      errorPhrases: englishPhrases('errorPhrases'),
      help: englishPhrases('help'),
      notes: englishPhrases('notes'),
      facts: englishFacts(),
    },
    ...rest,
  };
}
