import type { FactDefinition, Known, Reading, Resolved } from '../facts/types.ts';
import type { Catalogue } from './catalogue.ts';
import { showHigh, showLow, showNumber, showWhole } from './numbers.ts';
import { showDay } from './times.ts';
import { joinWords, unitSuffix } from './units.ts';

type KnownOf<T extends Known['type']> = Extract<Known, { type: T }>;

/** The name of a choice or sign for a person. Countries that have no name of their own here keep their ISO code. */
export function showChoice(choice: string, words: Catalogue, definition?: FactDefinition): string {
  return definition?.choiceLabels?.[choice]?.[words.language] ?? words.values.choices[choice] ?? choice;
}

/**
 * A resolved fact for a person: "9.2 C (9.0 to 9.4)", "moist or wet", "cracked and sticky", "not known: not asked".
 * Rounding never puts a number on or across one of `limits`.
 */
export function describeValue(
  definition: FactDefinition,
  resolved: Resolved,
  words: Catalogue,
  limits: readonly number[] = [],
): string {
  if (!resolved.known) return words.values.unknown(words.values.reasons[resolved.reason]);
  if (resolved.type === 'number') return describeNumber(definition, resolved, words, limits);
  if (resolved.type === 'date') return showDay(resolved.iso, words);
  if (resolved.type === 'signs') return describeSigns(definition, resolved, words);
  return joinWords(
    resolved.possible.map((choice) => showChoice(choice, words, definition)),
    words.values.or,
  );
}

function describeNumber(
  definition: FactDefinition,
  { value, low, high }: KnownOf<'number'>,
  words: Catalogue,
  limits: readonly number[],
): string {
  const decimals = definition.shownDecimals ?? 1;
  const shown = showNumber(words, value, decimals, limits);
  const unit = unitSuffix(definition.unit, words, shown);
  if (low === value && high === value) return `${shown}${unit}`;
  return words.values.band(shown, showLow(words, low, decimals), showHigh(words, high, decimals), unit);
}

function describeSigns(definition: FactDefinition, { present, possible }: KnownOf<'signs'>, words: Catalogue): string {
  const name = (sign: string) => showChoice(sign, words, definition);
  const unsure = possible.filter((sign) => !present.includes(sign)).map(name);
  const sure = joinWords(present.map(name), words.values.and);
  const perhaps = unsure.length === 0 ? '' : words.values.perhaps(joinWords(unsure, words.values.or));
  return [sure, perhaps].filter((part) => part !== '').join(', ') || words.values.noSigns;
}

/** A reading for a person, with all the decimals that it came with: "9.25 C", "moist", "cracked, not sticky". */
export function describeReading(definition: FactDefinition, reading: Reading, words: Catalogue): string {
  if (reading.type === 'does-not-know') return words.values.doesNotKnow;
  if (reading.type === 'date') return showDay(reading.iso, words);
  if (reading.type === 'signs') return describeSignsRead(definition, reading, words);
  if (reading.type === 'choice') {
    return joinWords(
      reading.possible.map((choice) => showChoice(choice, words, definition)),
      words.values.or,
    );
  }
  const { value, low = value, high = value } = reading;
  const unit = unitSuffix(definition.unit, words, showWhole(words, value));
  if (low === value && high === value) return `${showWhole(words, value)}${unit}`;
  const banded = words.values.band(showWhole(words, value), showWhole(words, low), showWhole(words, high), unit);
  if (reading.from === undefined) return banded;
  const { depthCm, valueC, hour } = reading.from;
  return words.values.workedOut(banded, showWhole(words, valueC), showWhole(words, depthCm), hour);
}

function describeSignsRead(
  definition: FactDefinition,
  reading: Extract<Reading, { type: 'signs' }>,
  words: Catalogue,
): string {
  const name = (sign: string) => showChoice(sign, words, definition);
  const present = joinWords(reading.present.map(name), words.values.and);
  const { gone, goneAll } = words.phrases;
  const absent = reading.absent.map(name);
  const said = absent.length > 1 ? goneAll(absent.join(', ')) : absent.map(gone).join('');
  return [present, said].filter((part) => part !== '').join('; ') || words.values.noSigns;
}
