import type { FactId } from '../facts/registry/index.ts';
import type { FactDefinition, Reading } from '../facts/types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { describeReading } from './values.ts';

/** Looks a fact up in the registry; handed in, since sentences read only types of the rest. */
export type DefinitionOf = (id: FactId) => FactDefinition;

/** What was said of one fact, as said back: "soil at 30 cm 9.2 C", "drains not running", "crop under stress: no". */
export function phraseOf(id: FactId, reading: Reading, definitionOf: DefinitionOf, words: Catalogue): string {
  const definition = definitionOf(id);
  if (reading.type === 'does-not-know') return words.phrases.notKnown(labelOf(id, definitionOf, words));
  const only = reading.type === 'choice' && reading.possible.length === 1 ? reading.possible[0] : undefined;
  const ready = only === undefined ? undefined : words.phrases.yesNo[id]?.[only];
  if (ready !== undefined) return ready;
  if (id === 'soil.temperatureTrendCPerDay' && reading.type === 'number' && reading.low !== undefined) {
    return trendOf(reading, words);
  }
  const isYesNo = only === 'yes' || only === 'no';
  return `${shortName(id, definition, words)}${isYesNo ? ':' : ''} ${describeReading(definition, reading, words)}`;
}

/** A trend that was told in words, in words. */
function trendOf({ low = 0, high = 0 }: Extract<Reading, { type: 'number' }>, { phrases }: Catalogue): string {
  if (high < 0) return phrases.trend.falling;
  return low > 0 ? phrases.trend.rising : phrases.trend.steady;
}

/** The name of a fact before words that hold no unit, such as a button's: of what is counted its label, since the short name needs the unit. */
export function nameBeforeWords(id: FactId, definition: FactDefinition, words: Catalogue): string {
  const isCounted = Object.hasOwn(words.values.unitsOfOne, definition.unit ?? '');
  return isCounted ? labelOf(id, () => definition, words) : shortName(id, definition, words);
}

/** The short name of a fact in running text. */
export function shortName(id: FactId, definition: FactDefinition, words: Catalogue): string {
  return words.phrases.short[id] ?? definition.labels?.[words.language] ?? words.facts[id] ?? definition.label;
}
