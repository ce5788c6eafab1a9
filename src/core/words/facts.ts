import type { FactId } from '../facts/registry/index.ts';
import type { Catalogue } from './catalogue.ts';
import type { DefinitionOf } from './phrases.ts';

/** What facts are called in one language. A fact without a label of its own keeps that of the registry, which is English. */
export type FactLabels = Readonly<Partial<Record<FactId, string>>>;

/** What a fact is called in the language of the words: "soil temperature at 30 cm", "Bodentemperatur in 30 cm". */
export function labelOf(id: FactId, definitionOf: DefinitionOf, words: Catalogue): string {
  const { label, labels } = definitionOf(id);
  return labels?.[words.language] ?? words.facts[id] ?? label;
}
