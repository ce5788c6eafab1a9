import { type ErrorDetails, type ErrorReport, reportOf } from '../errors/coded-error.ts';
import type { FactId } from './registry/index.ts';
import type { FactDefinition, Reading } from './types.ts';

type NumberReading = Extract<Reading, { type: 'number' }>;
type Member = 'value' | 'low' | 'high';

/** Why a number cannot be taken, and which of its members is at fault. */
export interface RangeProblem {
  readonly code: 'FACT_OUT_OF_RANGE' | 'FACT_BAND_WRONG';
  readonly member: Member;
  readonly details: ErrorDetails;
}

/** Checks a number reading against the fact's range, and its band against its value; null where both hold. */
export function checkRange(id: FactId, definition: FactDefinition, reading: NumberReading): RangeProblem | null {
  const { value, low = value, high = value } = reading;
  const members: readonly (readonly [Member, number])[] = [
    ['value', value],
    ['low', low],
    ['high', high],
  ];
  const outside = members.find(([, number]) => !isWithin(number, definition.range));
  if (outside) {
    const details = { expected: rangeText(definition), came: String(outside[1]), fact: id };
    return { code: 'FACT_OUT_OF_RANGE', member: outside[0], details };
  }
  if (low <= value && value <= high) return null;
  const details = { expected: 'low <= value <= high', came: `${low}, ${value}, ${high}`, fact: id };
  return { code: 'FACT_BAND_WRONG', member: low > value ? 'low' : 'high', details };
}

/**
 * Whether a reading can be taken at once ('fine'), is asked about once before it is taken ('ask-once'), or cannot be
 * (the report of the error, with the range). Only numbers are judged.
 */
export function judgePlausible(
  id: FactId,
  definition: FactDefinition,
  reading: Reading,
): 'fine' | 'ask-once' | ErrorReport {
  if (reading.type !== 'number') return 'fine';
  const problem = checkRange(id, definition, reading);
  if (problem) return reportOf(problem.code, problem.details);
  return isWithin(reading.value, definition.plausible) ? 'fine' : 'ask-once';
}

function isWithin(value: number, range: readonly [number, number] | undefined): boolean {
  return Number.isFinite(value) && (range === undefined || (value >= range[0] && value <= range[1]));
}

function rangeText({ range, unit }: FactDefinition): string {
  const suffix = unit === null ? '' : ` ${unit}`;
  return range === undefined ? 'a finite number' : `${range[0]} to ${range[1]}${suffix}`;
}
