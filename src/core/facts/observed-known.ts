import type { EpochSeconds } from '../units/brands.ts';
import { workedOutNote } from './depth-reading.ts';
import { mergeSigns } from './observed-signs.ts';
import { atPrecision } from './precision.ts';
import type { FactObservation } from './resolved.ts';
import type { FactDefinition, Known, Origin, Reading } from './types.ts';

/** An observation with the moment from which it is too old. */
export interface DatedReading extends FactObservation {
  readonly goodUntil: EpochSeconds;
}

/** A still-good observation that says something. */
export type LiveReading = DatedReading & { readonly reading: Exclude<Reading, { type: 'does-not-know' }> };

/** The known value that still-good readings of one fact (oldest first) give: the newest, or all signs merged. */
export function knownFrom(definition: FactDefinition, live: readonly LiveReading[]): Known | null {
  const newest = live.at(-1);
  if (newest === undefined) return null;
  const { reading, source, at, goodUntil } = newest;
  const origin: Origin = { source, at, goodUntil };
  if (reading.type === 'number') return knownNumber(definition, reading, origin);
  if (reading.type === 'choice') return { known: true, type: 'choice', possible: reading.possible, ...origin };
  if (reading.type === 'date') return { known: true, type: 'date', iso: reading.iso, ...origin };
  return mergeSigns(live, definition.choices ?? []);
}

function knownNumber(definition: FactDefinition, reading: Extract<Reading, { type: 'number' }>, origin: Origin): Known {
  const { value, low = value, high = value } = reading;
  const kept = atPrecision(definition, { value, low, high });
  const isBanded = kept.low !== kept.high;
  if (!isBanded || definition.cautiousEnd === undefined || origin.source === 'told') {
    const note = workedOutNote(reading);
    return { known: true, type: 'number', ...kept, ...origin, ...(note === null ? {} : { note }) };
  }
  return { known: true, type: 'number', ...cautiousEnd(kept.high), ...origin, note: cautiousNote(kept.low, kept.high) };
}

/** One end standing for a whole band. */
export function cautiousEnd(end: number): { readonly value: number; readonly low: number; readonly high: number } {
  return { value: end, low: end, high: end };
}

/** Says that the high end of a band stands for it. */
export function cautiousNote(low: number, high: number): string {
  return `cautious end of the band ${low} to ${high}`;
}
