import { codedError } from '../../errors/coded-error.ts';
import { nearestName } from '../../errors/nearest.ts';
import type { EpochSeconds } from '../../units/brands.ts';
import { localDate, noonOf } from '../local-day.ts';
import {
  type CoreFactId,
  definitionIn,
  type FactId,
  type FactRegistry,
  factIdsOf,
  isFactOf,
} from '../registry/index.ts';
import type { FactObservation } from '../resolved.ts';
import type { FactType, Reading } from '../types.ts';
import { parseChoice } from './choice.ts';
import { parseCountry } from './country.ts';
import { parseDate } from './date.ts';
import { cameAs, type GivenFact, isJsonObject, keyAs, pointerStep, type ReadingParser } from './given.ts';
import { joinVisits } from './join-visits.ts';
import { parseNumber } from './number.ts';
import { parseReadElsewhere } from './read-elsewhere.ts';
import { parseSigns } from './signs.ts';

const soilTemperature: CoreFactId = 'soil.temperature30cmC';

const parsers: Readonly<Record<FactType, ReadingParser>> = {
  number: parseNumber,
  choice: parseChoice,
  signs: parseSigns,
  country: parseCountry,
  date: parseDate,
};

/** Reads one value for a fact, as it stands in a facts file. Throws a FACT_ error with pointer and fact. */
export function parseReading(registry: FactRegistry, id: FactId, given: unknown, pointer = pointerStep(id)): Reading {
  const definition = definitionIn(registry, id);
  return parsers[definition.type]({ id, definition, given, pointer });
}

/**
 * The observations of a facts file: one flat object of fact ids and values, all seen at `at` but for soil temperatures that say
 * their own moment (one, or a list of them), oldest first. Null counts as left out. `date` is checked against the day of `at` in
 * the zone and is no observation: it follows from the moment. Throws a FACT_ error, or a DEPTH_ or READING_ one.
 */
export function parseFacts(json: unknown, at: EpochSeconds, zone: string, registry: FactRegistry): FactObservation[] {
  const observationOf = (id: FactId, given: unknown, pointer: string) =>
    observed({ id, given, pointer }, at, zone, registry);
  return givenFacts(json, registry).flatMap(([id, given]): FactObservation[] => {
    if (id === soilTemperature && Array.isArray(given) && given.length > 0 && given.every(saysWhen)) {
      const all = given.map((one, index) => observationOf(id, one, `${pointerStep(id)}/${index}`));
      return joinVisits(all.toSorted((a, b) => a.at - b.at));
    }
    if (definitionIn(registry, id).type !== 'date') return [observationOf(id, given, pointerStep(id))];
    const reading = parseReading(registry, id, given);
    if (reading.type === 'date') checkDay(reading.iso, localDate(at, zone));
    return [];
  });
}

function observed(
  named: Pick<GivenFact, 'id' | 'given' | 'pointer'>,
  at: EpochSeconds,
  zone: string,
  registry: FactRegistry,
): FactObservation {
  const { id, given, pointer } = named;
  const fact = { ...named, definition: definitionIn(registry, id) };
  const elsewhere = parseReadElsewhere(fact, at, zone, (plain) => parseReading(registry, id, plain, pointer));
  return { fact: id, source: 'said', ...(elsewhere ?? { reading: parseReading(registry, id, given, pointer), at }) };
}

/** True for a value that says when it was read; only a list of such is one of several readings. */
function saysWhen(given: unknown): boolean {
  return isJsonObject(given) && given['readAt'] !== undefined;
}

/** Noon, in the zone, of the `date` in a facts file; null where it gives none. Throws the FACT_ error of a wrong name or date. */
export function momentOfFacts(json: unknown, zone: string, registry: FactRegistry): EpochSeconds | null {
  for (const [id, given] of givenFacts(json, registry)) {
    const reading = definitionIn(registry, id).type === 'date' ? parseReading(registry, id, given) : null;
    if (reading?.type === 'date') return noonOf(reading.iso, zone);
  }
  return null;
}

function givenFacts(json: unknown, registry: FactRegistry): (readonly [FactId, unknown])[] {
  if (!isJsonObject(json)) {
    throw codedError('FACTS_NOT_AN_OBJECT', { expected: 'a JSON object', came: cameAs(json), pointer: '' });
  }
  return Object.entries(json)
    .map(([key, given]) => [factIdOf(key, registry), given] as const)
    .filter(([, given]) => given !== null);
}

/** The id of a fact by its name. Throws FACT_UNKNOWN_ID with the nearest right name. */
export function factIdOf(key: string, registry: FactRegistry): FactId {
  if (isFactOf(registry, key)) return key;
  const nearest = key.length > 80 ? undefined : nearestName(key, factIdsOf(registry));
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
