import { compileRules } from '../../rules/compile.ts';
import type { Change, RuleSet } from '../../rules/mutate/types.ts';
import { readsOf, referencesOf } from '../../rules/reads.ts';
import { evaluateReference, evaluateRule } from '../../rules/reference.ts';
import type { ResolvedCase } from '../../rules/resolve-case.ts';
import type { Trace } from '../../rules/trace-types.ts';
import type { CompiledRules, Rule } from '../../rules/types.ts';
import { parametersOn } from '../../units/parameter.ts';

/** A case with its trace; `period` names the versions of parameters in force on its day. */
export interface TracedCase extends ResolvedCase {
  readonly period: string;
  readonly trace: Trace;
}

/** The trace of every case under a rule set, in the order of the cases. */
export function traceCases(set: RuleSet, cases: readonly ResolvedCase[]): TracedCase[] {
  const compiledIn = compileOnce(set);
  return cases.map((one) => {
    const period = [...parametersOn(set.parameters, one.day).values()]
      .map(({ id, validFrom }) => id + validFrom)
      .join();
    return { ...one, period, trace: evaluateReference(compiledIn(period, one.day), one.facts) };
  });
}

/** The traces of cases under a changed rule set, where only the rules named can come out otherwise. Made one by one as asked for. */
export function* tracesAfter(
  changed: RuleSet,
  affected: ReadonlySet<string>,
  traced: readonly TracedCase[],
): Generator<TracedCase> {
  const compiledIn = compileOnce(changed);
  for (const one of traced) {
    const { rules } = compiledIn(one.period, one.day);
    const trace = one.trace.map((was, index) => {
      const rule = rules[index];
      return rule && affected.has(was.rule) ? evaluateRule(rule, one.facts) : was;
    });
    yield { ...one, trace };
  }
}

/** Ids of the rules that can come out otherwise after a change: those that read the parameter, or the rule and all that name it. */
export function affectedBy({ rules }: RuleSet, change: Change): ReadonlySet<string> {
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const touched = (rule: Rule): boolean =>
    change.kind === 'limit'
      ? readsOf(rule.when, byId).parameters.has(change.before.id)
      : rule.id === change.before.id || namesRule(rule, change.before.id, byId);
  return new Set(rules.filter(touched).map(({ id }) => id));
}

function namesRule(rule: Rule, id: string, byId: ReadonlyMap<string, Rule>): boolean {
  return referencesOf(rule.when).some((name) => {
    const named = byId.get(name);
    return name === id || (named !== undefined && namesRule(named, id, byId));
  });
}

function compileOnce(set: RuleSet): (period: string, day: string) => CompiledRules {
  const done = new Map<string, CompiledRules>();
  return (period, day) => {
    const compiled = done.get(period) ?? compileRules(set, day);
    done.set(period, compiled);
    return compiled;
  };
}
