import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { type BenchWords, benchWordsOf } from '../../src/core/words/bench-words.ts';
import { type Catalogue, catalogueOf } from '../../src/core/words/catalogue.ts';
import type { SayWorld } from '../../src/core/words/say-condition.ts';
import { titlesOf } from '../../src/core/words/say-rule.ts';

/** What the bench speaks with, in the language of the page. */
export interface BenchSpeech {
  readonly words: Catalogue;
  readonly bench: BenchWords;
}

/** The sentences of the bench. */
export function speechOfPage(): BenchSpeech {
  const { lang } = document.documentElement;
  return { words: catalogueOf(lang), bench: benchWordsOf(lang) };
}

/** The speech that the parts of the bench share. */
export const SpeechContext = createContext<BenchSpeech | null>(null);

/** The speech of the bench that a part stands in. */
export function useSpeech(): BenchSpeech {
  return useContext(SpeechContext) ?? speechOfPage();
}

/** What sentences about the rules of a pack are said with. */
export function worldOf(pack: Pack, words: Catalogue): SayWorld {
  return { definitionOf: definitionsOf(pack.facts), titleOf: titlesOf(pack.rules, words) };
}
