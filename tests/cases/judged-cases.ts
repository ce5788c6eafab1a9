import { compileRules } from '../../src/core/rules/compile.ts';
import type { ReachingPack } from '../../src/core/rules/reach.ts';
import { evaluateReference } from '../../src/core/rules/reference.ts';
import type { Trace } from '../../src/core/rules/trace-types.ts';
import type { CompiledRules } from '../../src/core/rules/types.ts';
import { expectedOf, givenBy, resolvedCases } from './shipped-pack.ts';

/** The trace of every case under these rules, in the order of the cases. */
export function traceCases(pack: ReachingPack): readonly Trace[] {
  const byDay = new Map<string, CompiledRules>();
  return resolvedCases.map(({ day, facts }) => {
    const compiled = byDay.get(day) ?? compileRules(pack, day);
    byDay.set(day, compiled);
    return evaluateReference(compiled, facts);
  });
}

/** True where some case does not come out as it says under these rules: a change that no case notices is one nobody would. */
export function someCaseNotices(pack: ReachingPack): boolean {
  const traces = traceCases(pack);
  return resolvedCases.some(({ one }, index) => {
    const given = givenBy(traces[index]!, one);
    return JSON.stringify(given) !== JSON.stringify(expectedOf(one));
  });
}
