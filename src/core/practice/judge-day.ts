import { compiledFor } from '../dialogue/standing.ts';
import { isLoamwardError } from '../errors/coded-error.ts';
import { momentOfFacts, parseFacts } from '../facts/parse/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { Pack } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import { parseInstant } from '../units/instant.ts';
import { adviceOf, reasonsOf } from '../verdict/reasons.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import type { JudgedDay } from './types.ts';

/** Facts and, where the facts give no date, the moment that they hold at. */
export interface DayFacts {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly at?: string;
}

/** A day by the rules of a pack; null where it has no moment. Throws the FACT_ error of facts that cannot be read. */
export function judgeDay({ facts: given, at: asked }: DayFacts, pack: Pack): JudgedDay | null {
  const at = asked === undefined ? momentOfFacts(given, pack.zone, pack.facts) : parseInstant(asked);
  if (at === null) return null;
  const compiled = compiledFor(pack, at);
  const observations = parseFacts(given, at, pack.zone, pack.facts);
  const { parameters, registry } = compiled;
  const facts = resolveFacts({ observations, forecast: null, at, zone: pack.zone, parameters, registry });
  const trace = evaluateReference(compiled, facts);
  const reasons = reasonsOf(trace);
  const named = (outcome: string) => reasons.filter((one) => one.outcome === outcome).map(({ rule }) => rule);
  return {
    at,
    facts,
    trace,
    verdict: verdictWord(trace),
    met: named('met'),
    unknown: named('unknown'),
    advice: adviceOf(trace).map(({ rule }) => rule),
  };
}

/** The same; null also where the facts cannot be read together. */
export function tryDay(day: DayFacts, pack: Pack): JudgedDay | null {
  try {
    return judgeDay(day, pack);
  } catch (error) {
    if (isLoamwardError(error)) return null;
    throw error;
  }
}
