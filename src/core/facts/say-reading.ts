import { localTime } from './local-day.ts';
import type { FactObservation } from './resolved.ts';
import type { FactDefinition, Reading } from './types.ts';

const texts: { readonly [T in Reading['type']]: (reading: Extract<Reading, { type: T }>) => string } = {
  number: ({ value }) => String(value),
  choice: ({ possible }) => possible.join(' or '),
  signs: ({ present }) => (present.length === 0 ? 'none' : present.join(', ')),
  date: ({ iso }) => iso,
  'does-not-know': () => 'not known',
};

/** What a too old reading was and when, for a note: "9.6 C at 2026-11-05 09:00". */
export function describeReading(definition: FactDefinition, { reading, at }: FactObservation, zone: string): string {
  return `${sayReading(definition, reading)} at ${localTime(at, zone)}`;
}

/** A reading with its unit: "9.6 C". */
export function sayReading({ unit }: FactDefinition, reading: Reading): string {
  const text = (texts[reading.type] as (reading: Reading) => string)(reading);
  return `${text}${unit === null ? '' : ` ${unit}`}`;
}
