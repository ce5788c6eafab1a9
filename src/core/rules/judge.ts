import { codedError } from '../errors/coded-error.ts';
import type { Known, Resolved } from '../facts/types.ts';
import { monthDayNumber } from './compile.ts';
import type { Outcome } from './trace-types.ts';
import type { CompiledComparison } from './types.ts';

/**
 * Outcome of one comparison: met if true throughout the fact's band (or set), not-met if false throughout, else unknown.
 * Throws FACT_MALFORMED where a known fact is not of the kind that the operator compares, or is no proper band or set.
 */
export function judgeComparison(comparison: CompiledComparison, fact: Resolved): Outcome {
  if (!fact.known) return 'unknown';
  const { op, limit } = comparison;
  if (limit.kind === 'choices') {
    if (op === 'has') return judgeSigns(comparison, fact, limit.values[0] ?? '');
    const { possible } = choiceOf(comparison, fact);
    const hits = possible.filter((choice) => limit.values.includes(choice)).length;
    const inside: Outcome = hits === possible.length ? 'met' : hits === 0 ? 'not-met' : 'unknown';
    return op === 'is' || op === 'oneOf' ? inside : opposite(inside);
  }
  const [low, high] = bandOf(comparison, fact);
  if (op === 'above') return throughout(low > limit.value, high > limit.value);
  if (op === 'atLeast') return throughout(low >= limit.value, high >= limit.value);
  if (op === 'below') return throughout(low < limit.value, high < limit.value);
  return throughout(low <= limit.value, high <= limit.value);
}

/** Kleene's negation: met and not-met change places, unknown stays. */
export function opposite(outcome: Outcome): Outcome {
  if (outcome === 'unknown') return outcome;
  return outcome === 'met' ? 'not-met' : 'met';
}

function throughout(atLow: boolean, atHigh: boolean): Outcome {
  if (atLow !== atHigh) return 'unknown';
  return atLow ? 'met' : 'not-met';
}

function judgeSigns(comparison: CompiledComparison, fact: Known, sign: string): Outcome {
  if (fact.type !== 'signs' || !fact.present.every((name) => fact.possible.includes(name))) {
    throw malformed(comparison, fact);
  }
  if (fact.present.includes(sign)) return 'met';
  return fact.possible.includes(sign) ? 'unknown' : 'not-met';
}

function choiceOf(comparison: CompiledComparison, fact: Known): { readonly possible: readonly string[] } {
  if (fact.type !== 'choice' || fact.possible.length === 0) throw malformed(comparison, fact);
  return fact;
}

function bandOf(comparison: CompiledComparison, fact: Known): readonly [number, number] {
  const { limit } = comparison;
  if (fact.type === 'date' && limit.kind === 'month-day' && /^\d{4}-\d{2}-\d{2}$/.test(fact.iso)) {
    const day = monthDayNumber(fact.iso.slice(5));
    return [day, day];
  }
  if (fact.type !== 'number' || limit.kind !== 'number') throw malformed(comparison, fact);
  const { low, value, high } = fact;
  if (Number.isFinite(low) && Number.isFinite(high) && low <= value && value <= high) return [low, high];
  throw malformed(comparison, fact);
}

function malformed({ fact, op, limit, name }: CompiledComparison, came: Known) {
  const expected = `a well-formed value to compare by ${op} with ${limit.kind}, for ${name}`;
  return codedError('FACT_MALFORMED', { expected, came: JSON.stringify(came), fact });
}
