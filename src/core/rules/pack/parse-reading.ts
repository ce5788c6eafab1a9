import { nearestName } from '../../errors/nearest.ts';
import type { FactId } from '../../facts/registry/index.ts';
import type { FactDefinition, Reading } from '../../facts/types.ts';
import { inside, type Place, type Report, show } from './findings.ts';
import { choiceFits } from './fit-choice.ts';
import { readingSchemas } from './schema.ts';
import { parseBySchema } from './zod-findings.ts';

/** Parses a reading that an answer gives for a fact; faults are reported, and the result is then null. */
export function parseReading(
  json: Readonly<Record<string, unknown>>,
  fact: FactId,
  definition: FactDefinition,
  place: Place,
  report: Report,
): Reading | null {
  const type = definition.type === 'country' ? 'choice' : definition.type;
  if (json['type'] !== 'does-not-know' && json['type'] !== type) {
    const nearest = nearestName(String(json['type']), [type, 'does-not-know']);
    report('QUESTION_MISFIT', inside(place, 'type'), {
      expected: `type ${type} or does-not-know for ${fact}`,
      came: show(json['type']),
      fact,
      ...(nearest === undefined ? {} : { nearest }),
    });
    return null;
  }
  const reading = parseBySchema(readingSchemas[json['type'] as Reading['type']], json, place, report) as Reading | null;
  return reading && readingFits(reading, fact, definition, place, report) ? reading : null;
}

function readingFits(
  reading: Reading,
  fact: FactId,
  definition: FactDefinition,
  place: Place,
  report: Report,
): boolean {
  const namesFit = (names: readonly string[], step: string) =>
    names.every((name, index) => choiceFits(name, fact, definition, inside(place, step, index), report));
  if (reading.type === 'number') {
    const [low, high] = bandOf(reading);
    const [least, most] = definition.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    if (least <= low && low <= reading.value && reading.value <= high && high <= most) return true;
    report('QUESTION_MISFIT', place, {
      expected: `low, value and high in rising order within ${least} to ${most}`,
      came: `${low}, ${reading.value}, ${high}`,
      fact,
    });
    return false;
  }
  if (reading.type === 'choice') return namesFit(reading.possible, 'possible');
  if (reading.type !== 'signs') return true;
  const named = namesFit(reading.present, 'present') && namesFit(reading.absent, 'absent');
  const both = reading.present.find((sign) => reading.absent.includes(sign));
  if (both === undefined) return named;
  report('QUESTION_MISFIT', place, { expected: 'a sign present or absent', came: `${both} as both`, fact });
  return false;
}

/** The closed band of a number reading; both ends are the value where it has none. */
export function bandOf(reading: Extract<Reading, { type: 'number' }>): readonly [number, number] {
  return [reading.low ?? reading.value, reading.high ?? reading.value];
}
