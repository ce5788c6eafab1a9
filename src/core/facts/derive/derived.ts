import type { EpochSeconds } from '../../units/brands.ts';
import { type Banded, withoutBinaryNoise } from '../../weather/banded.ts';
import type { FactContext } from '../context.ts';
import { atPrecision } from '../precision.ts';
import { type CoreFactId, coreFacts } from '../registry/index.ts';
import type { FactDefinition, KnownChoice, KnownNumber, Resolved } from '../types.ts';

/** A derived choice, or one of several, at the moment asked about. */
export function derivedChoice(
  { at }: FactContext,
  possible: readonly string[],
  goodUntil: EpochSeconds | null,
  note: string,
): KnownChoice {
  return { known: true, type: 'choice', possible, source: 'derived', at, goodUntil, note };
}

/** A derived number with its band, kept to the fact's precision and within its range. */
export function derivedNumber(
  id: CoreFactId,
  { value, low, high }: Banded,
  at: EpochSeconds,
  goodUntil: EpochSeconds | null,
  note: string,
): KnownNumber {
  const definition: FactDefinition = coreFacts[id];
  const [lowest, highest] = definition.range!;
  const within = (number: number) => Math.min(highest, Math.max(lowest, withoutBinaryNoise(number)));
  const kept = atPrecision(definition, { value: within(value), low: within(low), high: within(high) });
  return { known: true, type: 'number', ...kept, source: 'derived', at, goodUntil, note };
}

/** The earliest of several moments at which something grows too old; null where none does. */
export function earliest(...moments: readonly (EpochSeconds | null)[]): EpochSeconds | null {
  return moments.reduce(
    (first, moment) => (first === null || (moment !== null && moment < first) ? moment : first),
    null,
  );
}

/** A fact as a known number, or null. */
export function asNumber(fact: Resolved): KnownNumber | null {
  return fact.known && fact.type === 'number' ? fact : null;
}

/** A fact as a known choice, or null. */
export function asChoice(fact: Resolved): KnownChoice | null {
  return fact.known && fact.type === 'choice' ? fact : null;
}

/** True where a fact is known to be just this choice. */
export function isSurely(fact: Resolved, choice: string): boolean {
  return fact.known && fact.type === 'choice' && fact.possible.length === 1 && fact.possible[0] === choice;
}
