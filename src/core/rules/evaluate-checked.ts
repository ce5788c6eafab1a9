import { codedError } from '../errors/coded-error.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { evaluateWithEngine } from './engine.ts';
import { evaluateReference } from './reference.ts';
import type { Outcome, Trace } from './trace-types.ts';
import type { CompiledRules } from './types.ts';

/** The trace, given only where both evaluators agree on every rule; else EVALUATORS_DISAGREE names the rules. */
export async function evaluateChecked(compiled: CompiledRules, facts: ResolvedFacts): Promise<Trace> {
  const outcomes = await evaluateWithEngine(compiled, facts);
  const trace = evaluateReference(compiled, facts);
  requireAgreement(trace, outcomes);
  return trace;
}

/** Throws EVALUATORS_DISAGREE, naming the rules, unless trace and outcomes hold the same rules with the same outcomes. */
export function requireAgreement(trace: Trace, outcomes: ReadonlyMap<string, Outcome>): void {
  const disagreeing = trace.filter(({ rule, outcome }) => outcomes.get(rule) !== outcome);
  if (disagreeing.length === 0 && trace.length === outcomes.size) return;
  throw codedError('EVALUATORS_DISAGREE', {
    expected: 'the same outcome of every rule from both',
    came:
      disagreeing
        .map(({ rule, outcome }) => `${rule}: ${outcome} against ${outcomes.get(rule) ?? 'nothing'}`)
        .join('; ') || `${trace.length} rules against ${outcomes.size}`,
  });
}
