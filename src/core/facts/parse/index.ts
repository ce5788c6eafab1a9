import { codedError } from '../../errors/coded-error.ts';
import { nearestName } from '../../errors/nearest.ts';
import type { EpochSeconds } from '../../units/brands.ts';
import { localDate, noonOf } from '../local-day.ts';
import { type FactId, factDefinition, factIds, isFactId } from '../registry/index.ts';
import type { FactObservation } from '../resolved.ts';
import type { FactType, Reading } from '../types.ts';
import { parseChoice } from './choice.ts';
import { parseCountry } from './country.ts';
import { parseDate } from './date.ts';
import { cameAs, isJsonObject, keyAs, pointerStep, type ReadingParser } from './given.ts';
import { parseNumber } from './number.ts';
import { parseSigns } from './signs.ts';

const parsers: Readonly<Record<FactType, ReadingParser>> = {
  number: parseNumber,
  choice: parseChoice,
  signs: parseSigns,
  country: parseCountry,
  date: parseDate,
};

/** Reads one value for a fact, as it stands in a facts file. Throws a FACT_ error with pointer and fact. */
export function parseReading(id: FactId, given: unknown, pointer = pointerStep(id)): Reading {
  const definition = factDefinition(id);
  return parsers[definition.type]({ id, definition, given, pointer });
}

/**
 * The observations of a facts file: one flat object of fact ids and values, all seen at `at`. Null counts as left
 * out. `date` is checked against the day of `at` in the zone and is no observation: it follows from the moment.
 * Throws a FACT_ error.
 */
export function parseFacts(json: unknown, at: EpochSeconds, zone: string): FactObservation[] {
  const observations: FactObservation[] = [];
  for (const [id, reading] of readingsOf(json)) {
    if (reading.type === 'date') checkDay(reading.iso, localDate(at, zone));
    else observations.push({ fact: id, reading, at, source: 'said' });
  }
  return observations;
}

/** Noon, in the zone, of the `date` in a facts file; null where it gives none. Throws as `parseFacts`. */
export function momentOfFacts(json: unknown, zone: string): EpochSeconds | null {
  for (const [, reading] of readingsOf(json)) {
    if (reading.type === 'date') return noonOf(reading.iso, zone);
  }
  return null;
}

function readingsOf(json: unknown): (readonly [FactId, Reading])[] {
  if (!isJsonObject(json)) {
    throw codedError('FACTS_NOT_AN_OBJECT', { expected: 'a JSON object', came: cameAs(json), pointer: '' });
  }
  return Object.entries(json)
    .map(([key, given]) => [factIdOf(key), given] as const)
    .filter(([, given]) => given !== null)
    .map(([id, given]) => [id, parseReading(id, given)] as const);
}

/** The id of a fact by its name. Throws FACT_UNKNOWN_ID with the nearest right name. */
export function factIdOf(key: string): FactId {
  if (isFactId(key)) return key;
  const nearest = key.length > 80 ? undefined : nearestName(key, factIds);
  throw codedError('FACT_UNKNOWN_ID', {
    expected: 'the id of a fact',
    came: cameAs(key),
    fact: keyAs(key),
    pointer: pointerStep(keyAs(key)),
    ...(nearest === undefined ? {} : { nearest }),
  });
}

function checkDay(given: string, day: string): void {
  if (given === day) return;
  throw codedError('FACT_DATE_OTHER_DAY', { expected: day, came: given, fact: 'date', pointer: '/date' });
}
