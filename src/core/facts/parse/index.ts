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
import { joinVisits } from './join-visits.ts';
import { parseNumber } from './number.ts';
import { parseReadElsewhere } from './read-elsewhere.ts';
import { parseSigns } from './signs.ts';

const soilTemperature: FactId = 'soil.temperature30cmC';

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
 * The observations of a facts file: one flat object of fact ids and values, all seen at `at` but for soil temperatures that say
 * their own moment (one, or a list of them), oldest first. Null counts as left out. `date` is checked against the day of `at` in
 * the zone and is no observation: it follows from the moment. Throws a FACT_ error, or a DEPTH_ or READING_ one.
 */
export function parseFacts(json: unknown, at: EpochSeconds, zone: string): FactObservation[] {
  return givenFacts(json).flatMap(([id, given]): FactObservation[] => {
    if (id === soilTemperature && Array.isArray(given) && given.length > 0 && given.every(saysWhen)) {
      const all = given.map((one, index) => observationOf(id, one, `${pointerStep(id)}/${index}`, at, zone));
      return joinVisits(all.toSorted((a, b) => a.at - b.at));
    }
    if (factDefinition(id).type !== 'date') return [observationOf(id, given, pointerStep(id), at, zone)];
    const reading = parseReading(id, given);
    if (reading.type === 'date') checkDay(reading.iso, localDate(at, zone));
    return [];
  });
}

function observationOf(id: FactId, given: unknown, pointer: string, at: EpochSeconds, zone: string): FactObservation {
  const fact = { id, definition: factDefinition(id), given, pointer };
  const elsewhere = parseReadElsewhere(fact, at, zone, (plain) => parseReading(id, plain, pointer));
  return { fact: id, source: 'said', ...(elsewhere ?? { reading: parseReading(id, given, pointer), at }) };
}

/** True for a value that says when it was read; only a list of such is one of several readings. */
function saysWhen(given: unknown): boolean {
  return isJsonObject(given) && given['readAt'] !== undefined;
}

/** Noon, in the zone, of the `date` in a facts file; null where it gives none. Throws the FACT_ error of a wrong name or date. */
export function momentOfFacts(json: unknown, zone: string): EpochSeconds | null {
  for (const [id, given] of givenFacts(json)) {
    const reading = factDefinition(id).type === 'date' ? parseReading(id, given) : null;
    if (reading?.type === 'date') return noonOf(reading.iso, zone);
  }
  return null;
}

function givenFacts(json: unknown): (readonly [FactId, unknown])[] {
  if (!isJsonObject(json)) {
    throw codedError('FACTS_NOT_AN_OBJECT', { expected: 'a JSON object', came: cameAs(json), pointer: '' });
  }
  return Object.entries(json)
    .map(([key, given]) => [factIdOf(key), given] as const)
    .filter(([, given]) => given !== null);
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
