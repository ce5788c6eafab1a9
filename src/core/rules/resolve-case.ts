import { codedError } from '../errors/coded-error.ts';
import { localDate } from '../facts/local-day.ts';
import { momentOfFacts, parseFacts } from '../facts/parse/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { parseInstant } from '../units/instant.ts';
import { parametersOn } from '../units/parameter.ts';
import type { Pack, PackCase } from './pack-types.ts';
import { reachedFacts } from './reach.ts';

/** A case with its facts resolved at its moment. */
export interface ResolvedCase {
  readonly one: PackCase;
  /** Day at the field, whose parameters hold. */
  readonly day: string;
  readonly facts: ResolvedFacts;
}

/**
 * Resolves the facts of a case at its `at`, else at noon of its `date`, without a forecast. Throws CASE_MISFIT where it has
 * neither, or the FACT_ error of a fact that cannot be read.
 */
export function resolveCase(one: PackCase, pack: Pack): ResolvedCase {
  const { zone, parameters, facts: all } = pack;
  const at = one.at === undefined ? momentOfFacts(one.facts, zone, all) : parseInstant(one.at);
  if (at === null) {
    const expected = '"at", or "date" among its facts';
    throw codedError('CASE_MISFIT', { expected, came: `neither, in "${one.name}"`, file: one.file });
  }
  const day = localDate(at, zone);
  const observations = parseFacts(one.facts, at, zone, all);
  const facts = resolveFacts({
    observations,
    forecast: null,
    at,
    zone,
    parameters: parametersOn(parameters, day),
    registry: reachedFacts(pack),
  });
  return { one, day, facts };
}
