import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import { compileRules } from '../../src/core/rules/compile.ts';
import { indirectReach } from '../../src/core/rules/overlay/protect/parameter-kinds.ts';
import { protectedFacts, protectedParameters } from '../../src/core/rules/overlay/protect/world.ts';
import type { Pack, PackCase } from '../../src/core/rules/pack-types.ts';
import type { CompiledRule, CompiledRules } from '../../src/core/rules/types.ts';
import type { Parameter } from '../../src/core/units/parameter.ts';

/** A rule with what the bench shows of it. */
export interface BenchRule extends CompiledRule {
  readonly limits: readonly Parameter[];
  /** Cases that say something of it. */
  readonly cases: readonly PackCase[];
}

/** Rules of one topic. */
export interface BenchTopic {
  readonly topic: string;
  readonly rules: readonly BenchRule[];
}

/** All that the bench shows of a rule set on a day. */
export interface BenchRules {
  readonly compiled: CompiledRules;
  readonly topics: readonly BenchTopic[];
  /** Values in force that no rule compares with: ageing, bands, derivations, dose. */
  readonly others: readonly Parameter[];
  /** Ids of the values that may only be moved the way that is tighter. */
  readonly onlyTighter: ReadonlySet<string>;
}

/** The rules of a pack on a day (YYYY-MM-DD) by topic, in written order. */
export function benchRules(pack: Pack, cases: readonly PackCase[], day: string): BenchRules {
  const compiled = compileRules(pack, day);
  const byId = new Map(compiled.rules.map((one) => [one.rule.id, one]));
  const topics = new Map<string, BenchRule[]>();
  for (const { id, topic } of pack.rules) {
    const one = byId.get(id);
    if (!one) continue;
    const limits = one.parameters.flatMap((name) => compiled.parameters.get(name) ?? []);
    topics.set(topic, [
      ...(topics.get(topic) ?? []),
      { ...one, limits, cases: cases.filter((each) => speaksOf(each, id)) },
    ]);
  }
  const read = new Set(compiled.rules.flatMap(({ parameters }) => parameters));
  const others = [...compiled.parameters.values()].filter(({ id }) => !read.has(id));
  const facts = protectedFacts(pack, day);
  const definitionOf = definitionsOf(pack.facts);
  const reached = others.filter(({ id }) => indirectReach(id, facts, definitionOf) !== null);
  return {
    compiled,
    topics: [...topics].map(([topic, rules]) => ({ topic, rules })),
    others,
    onlyTighter: new Set([...protectedParameters(pack, day), ...reached.map(({ id }) => id)]),
  };
}

function speaksOf({ expect }: PackCase, rule: string): boolean {
  return [expect.met, expect.notMet, expect.unknown].some((ids) => ids?.includes(rule) === true);
}
