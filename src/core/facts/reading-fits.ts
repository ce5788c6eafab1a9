import { isCountryCode } from './country-codes.ts';
import { isCalendarDay } from './local-day.ts';
import { checkRange } from './plausible.ts';
import { type FactId, factDefinition } from './registry/index.ts';
import type { FactType, Reading } from './types.ts';

type Fits = (id: FactId, reading: Reading, choices: readonly string[]) => boolean;

const allIn = (named: readonly string[], choices: readonly string[]) => named.every((one) => choices.includes(one));

const fits: Readonly<Record<FactType, Fits>> = {
  number: (id, reading) => reading.type === 'number' && checkRange(id, reading) === null,
  choice: (_, reading, choices) =>
    reading.type === 'choice' && reading.possible.length > 0 && allIn(reading.possible, choices),
  country: (_, reading) =>
    reading.type === 'choice' && reading.possible.length > 0 && reading.possible.every(isCountryCode),
  signs: (_, reading, choices) =>
    reading.type === 'signs' && allIn(reading.present, choices) && allIn(reading.absent, choices),
  date: (_, reading) => reading.type === 'date' && isCalendarDay(reading.iso),
};

/** True where a reading is of the fact's kind and can be: within its range, or of its choices. */
export function fitsFact(id: FactId, reading: Reading): boolean {
  const definition = factDefinition(id);
  return fits[definition.type](id, reading, definition.choices ?? []);
}
