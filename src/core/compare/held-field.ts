import { isLoamwardError } from '../errors/coded-error.ts';
import { localDate } from '../facts/local-day.ts';
import { parseFacts } from '../facts/parse/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Resolved } from '../facts/types.ts';
import type { Pack } from '../rules/pack-types.ts';
import { plainDayOf } from '../rules/plain-day.ts';
import { reachedFacts } from '../rules/reach.ts';
import { resolveCase } from '../rules/resolve-case.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { parametersOn } from '../units/parameter.ts';
import type { HeldField, Side } from './types.ts';

/** Facts of a field from a facts file, seen at a moment, to be held through seasons. Throws the FACT_ errors of `parseFacts`. */
export function fieldOfFacts(json: unknown, at: EpochSeconds, pack: Pack): HeldField {
  const { zone } = pack;
  const observations = parseFacts(json, at, zone, pack.facts);
  const parameters = parametersOn(pack.parameters, localDate(at, zone));
  const input = { observations, forecast: null, at, zone, parameters, registry: reachedFacts(pack) };
  const facts = json as Readonly<Record<string, unknown>>;
  return { facts, resolved: only(facts, resolveFacts(input)) };
}

/** A plain field: the facts of the fullest case of a pack that is spray today. Without facts where it has none. */
export function plainField({ pack, cases }: Side): HeldField {
  const plain = plainDayOf(cases);
  if (plain === null) return { facts: {}, resolved: {} };
  try {
    return { facts: plain.facts, resolved: only(plain.facts, resolveCase(plain, pack).facts) };
  } catch (error) {
    if (!isLoamwardError(error)) throw error;
    return { facts: {}, resolved: {} };
  }
}

/** What was given itself; nothing that followed from it, which is worked out anew each day. Held facts do not age. */
function only(given: Readonly<Record<string, unknown>>, resolved: ResolvedFacts): ResolvedFacts {
  const kept = Object.entries(resolved).filter(([id, fact]) => id in given && id !== 'date' && fact.known);
  return Object.fromEntries(kept.map(([id, fact]) => [id, { ...(fact as Resolved), goodUntil: null }]));
}
