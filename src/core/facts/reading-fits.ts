import { isCountryCode } from './country-codes.ts';
import { isCalendarDay } from './local-day.ts';
import { checkRange } from './plausible.ts';
import type { FactId } from './registry/index.ts';
import type { FactDefinition, FactType, Reading } from './types.ts';

type Fits = (id: FactId, reading: Reading, choices: readonly string[], definition: FactDefinition) => boolean;

const allIn = (named: readonly string[], choices: readonly string[]) => named.every((one) => choices.includes(one));

const fits: Readonly<Record<FactType, Fits>> = {
  number: (id, reading, _, definition) => reading.type === 'number' && checkRange(id, definition, reading) === null,
  choice: (_, reading, choices) =>
    reading.type === 'choice' && reading.possible.length > 0 && allIn(reading.possible, choices),
  country: (_, reading) =>
    reading.type === 'choice' && reading.possible.length > 0 && reading.possible.every(isCountryCode),
  signs: (_, reading, choices) =>
    reading.type === 'signs' && allIn(reading.present, choices) && allIn(reading.absent, choices),
  date: (_, reading) => reading.type === 'date' && isCalendarDay(reading.iso),
};

/** True where a reading is of the fact's kind and can be: within its range, or of its choices. */
export function fitsFact(id: FactId, definition: FactDefinition, reading: Reading): boolean {
  return fits[definition.type](id, reading, definition.choices ?? [], definition);
}
