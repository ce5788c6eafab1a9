import { codedError } from '../errors/coded-error.ts';
import type { Resolved } from '../facts/types.ts';
import type { Limit } from './types.ts';

/**
 * A fact as the engine's operators see it: unknown, a band on a scale (dates as month * 100 + day), a set of choices of which one
 * holds, or signs of which some are sure.
 */
export type EngineFact =
  | { readonly known: false }
  | { readonly known: true; readonly scale: 'number' | 'month-day'; readonly low: number; readonly high: number }
  | { readonly known: true; readonly possible: readonly string[]; readonly sure: readonly string[] | null };

/** The engine's form of a resolved fact; what is malformed stays malformed, for the operators to refuse. */
export function engineFactOf(fact: Resolved): EngineFact {
  if (!fact.known) return { known: false };
  if (fact.type === 'number') {
    const orderly = fact.low <= fact.value && fact.value <= fact.high;
    return { known: true, scale: 'number', low: orderly ? fact.low : Number.NaN, high: fact.high };
  }
  if (fact.type === 'choice') return { known: true, possible: fact.possible, sure: null };
  if (fact.type === 'signs') return { known: true, possible: fact.possible, sure: fact.present };
  const [, month, day] = /^\d{4}-(\d{2})-(\d{2})$/.exec(fact.iso) ?? [];
  const number = Number(`${month}${day}`);
  return { known: true, scale: 'month-day', low: number, high: number };
}

/** An operator of ours: the first says surely, the second possibly. */
type Pair = readonly [EngineOperator, EngineOperator];

/** A comparison of an engine fact with a limit; throws unless both are well formed. */
export type EngineOperator = (fact: EngineFact, limit: Limit) => boolean;

function onScale(surely: (low: number, high: number, at: number) => boolean, possibly: typeof surely): Pair {
  const judge =
    (unknown: boolean, test: typeof surely): EngineOperator =>
    (fact, limit) => {
      if (limit?.kind !== 'number' && limit?.kind !== 'month-day') throw malformed(fact, limit);
      if (!Number.isFinite(limit.value) || typeof fact?.known !== 'boolean') throw malformed(fact, limit);
      if (!fact.known) return unknown;
      if (!('low' in fact) || fact.scale !== limit.kind || !Number.isFinite(fact.low) || !Number.isFinite(fact.high))
        throw malformed(fact, limit);
      return test(fact.low, fact.high, limit.value);
    };
  return [judge(false, surely), judge(true, possibly)];
}

type SetTest = (possible: readonly string[], values: readonly string[], sure: readonly string[]) => boolean;

function onSets(signs: boolean, surely: SetTest, possibly: SetTest): Pair {
  const judge =
    (unknown: boolean, test: SetTest): EngineOperator =>
    (fact, limit) => {
      if (limit?.kind !== 'choices' || !Array.isArray(limit.values) || limit.values.length === 0)
        throw malformed(fact, limit);
      if (typeof fact?.known !== 'boolean') throw malformed(fact, limit);
      if (!fact.known) return unknown;
      if (!('possible' in fact) || (fact.sure !== null) !== signs) throw malformed(fact, limit);
      const { possible, sure } = fact;
      if (sure === null ? possible.length === 0 : sure.some((sign) => !possible.includes(sign)))
        throw malformed(fact, limit);
      return test(possible, limit.values, sure ?? []);
    };
  return [judge(false, surely), judge(true, possibly)];
}

const some = (some: readonly string[], of: readonly string[]): boolean => some.some((item) => of.includes(item));
const every = (every: readonly string[], of: readonly string[]): boolean => every.every((item) => of.includes(item));
const oneOf = onSets(false, every, some);
const noneOf = onSets(
  false,
  (possible, values) => !some(possible, values),
  (possible, values) => !every(possible, values),
);

/** The operators of the condition language as the engine runs them, surely and possibly. */
export const enginePairs = {
  above: onScale(
    (low, _high, at) => low > at,
    (_low, high, at) => high > at,
  ),
  atLeast: onScale(
    (low, _high, at) => low >= at,
    (_low, high, at) => high >= at,
  ),
  below: onScale(
    (_low, high, at) => high < at,
    (low, _high, at) => low < at,
  ),
  atMost: onScale(
    (_low, high, at) => high <= at,
    (low, _high, at) => low <= at,
  ),
  is: oneOf,
  oneOf,
  isNot: noneOf,
  noneOf,
  has: onSets(
    true,
    (_possible, values, sure) => some(values, sure),
    (possible, values) => some(values, possible),
  ),
} as const satisfies Record<string, Pair>;

function malformed(fact: unknown, limit: unknown) {
  const expected = 'a well-formed fact and limit of the same kind';
  return codedError('FACT_MALFORMED', { expected, came: `${JSON.stringify(fact)} with ${JSON.stringify(limit)}` });
}
