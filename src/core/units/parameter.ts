import { codedError } from '../errors/coded-error.ts';
import type { Source, Texts } from './texts.ts';

/** Which way a parameter may be moved without letting more through. */
export type Tighter = 'lower' | 'higher' | 'fewer' | 'more' | 'neither';

/** A number, month and day (MM-DD) or list that a rule, derivation or ageing compares with, from one day on. */
export interface Parameter {
  readonly id: string;
  readonly value: number | string | readonly string[];
  /** Unit symbol; `month-day` for a day of the year, `list` for a list. */
  readonly unit: string;
  readonly source: Source;
  readonly why: Texts;
  /** First day on which it holds, ISO date. */
  readonly validFrom: string;
  /** Last day on which it holds, ISO date; absent where it has no end. */
  readonly validTo?: string;
  readonly tighter: Tighter;
}

/** Parameters in force on one day, by id. */
export type Parameters = ReadonlyMap<string, Parameter>;

/**
 * The parameters in force on a day: of several versions of an id, the one with the latest `validFrom` not after the day.
 * `isoDate` is YYYY-MM-DD.
 */
export function parametersOn(all: readonly Parameter[], isoDate: string): Parameters {
  const inForce = new Map<string, Parameter>();
  for (const parameter of all) {
    if (parameter.validFrom > isoDate || (parameter.validTo !== undefined && parameter.validTo < isoDate)) continue;
    const earlier = inForce.get(parameter.id);
    if (!earlier || earlier.validFrom < parameter.validFrom) inForce.set(parameter.id, parameter);
  }
  return inForce;
}

/** The number of a parameter in its own unit. Throws PARAMETER_MISSING where it is absent or no finite number. */
export function numberParameter(parameters: Parameters, id: string): number {
  const value = parameters.get(id)?.value;
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    throw codedError('PARAMETER_MISSING', {
      expected: 'a number in force on this day',
      came: String(value),
      parameter: id,
    });
  }
  return value;
}
