import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { parseInstant } from '../../units/instant.ts';
import { depthProblem, is30cm, workOutAt30cm } from '../depth-reading.ts';
import { localTime } from '../local-day.ts';
import type { FactObservation } from '../resolved.ts';
import type { Reading } from '../types.ts';
import { cameAs, type GivenFact, isJsonObject, refuse } from './given.ts';

/** A reading with the moment at which it was read. */
export type ReadAt = Pick<FactObservation, 'reading' | 'at'>;

/**
 * Reads a soil temperature that says its own depth in cm, its own moment, or both: `{ "value": 7, "depthCm": 10, "readAt":
 * "2026-11-05T15:00Z" }`. Null for one that says neither. Another depth than 30 cm needs the moment. Throws a coded error.
 */
export function parseReadElsewhere(
  fact: GivenFact,
  at: EpochSeconds,
  zone: string,
  parse: (given: unknown) => Reading,
): ReadAt | null {
  if (fact.id !== 'soil.temperature30cmC' || !isJsonObject(fact.given)) return null;
  const { depthCm, readAt, ...plain } = fact.given;
  if (depthCm === undefined && readAt === undefined) return null;
  const seenAt = readAt === undefined ? at : momentOf(fact, readAt, at, zone);
  const reading = parse(plain);
  if (depthCm === undefined || reading.type !== 'number') return { reading, at: seenAt };
  if (typeof depthCm !== 'number' || !Number.isFinite(depthCm)) {
    throw refuse(fact, 'FACT_WRONG_TYPE', { expected: 'a depth in cm', came: cameAs(depthCm) }, 'depthCm');
  }
  if (is30cm(depthCm)) return { reading, at: seenAt };
  const problem = depthProblem(depthCm);
  if (problem !== null) throw refuse(fact, problem.code, { expected: problem.expected, came: problem.came }, 'depthCm');
  if (readAt === undefined) {
    throw refuse(fact, 'DEPTH_NEEDS_HOUR', { expected: '"readAt" beside "depthCm"', came: `${depthCm} cm alone` });
  }
  return { reading: workOutAt30cm(reading, depthCm, seenAt, zone), at: seenAt };
}

function momentOf(fact: GivenFact, readAt: unknown, at: EpochSeconds, zone: string): EpochSeconds {
  const seenAt = typeof readAt === 'string' ? instantOf(readAt) : null;
  if (seenAt === null) {
    const expected = 'a date and time with Z or an offset';
    throw refuse(fact, 'FACT_WRONG_TYPE', { expected, came: cameAs(readAt) }, 'readAt');
  }
  if (seenAt <= at) return seenAt;
  throw refuse(
    fact,
    'READING_IN_FUTURE',
    { expected: `a time up to ${localTime(at, zone)}`, came: cameAs(readAt) },
    'readAt',
  );
}

function instantOf(text: string): EpochSeconds | null {
  try {
    return epochSeconds(parseInstant(text));
  } catch {
    return null;
  }
}
