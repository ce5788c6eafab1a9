import { describe, expect, test } from 'vitest';
import { findPacks, readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import { definitionIn } from '../../../src/core/facts/registry/index.ts';
import type { Resolved } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateChecked } from '../../../src/core/rules/evaluate-checked.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import type { Outcome } from '../../../src/core/rules/trace-types.ts';
import type { CompiledComparison, CompiledCondition, CompiledRules } from '../../../src/core/rules/types.ts';
import { day, holdRule, number } from '../../generators/small.ts';

const today = '2026-11-06';

/** Outcomes just below, at and just above the limit, as the words of the operators say. */
const expected: Readonly<Record<string, readonly [Outcome, Outcome, Outcome]>> = {
  below: ['met', 'not-met', 'not-met'],
  atMost: ['met', 'met', 'not-met'],
  above: ['not-met', 'not-met', 'met'],
  atLeast: ['not-met', 'met', 'met'],
};

const found = await findPacks('rules');
const packs = await Promise.all(found.map(async ({ id, folder }) => [id, await readPackFolder(folder)] as const));

function comparisonsOf(condition: CompiledCondition): CompiledComparison[] {
  if (condition.kind === 'comparison') return [condition];
  return 'member' in condition ? comparisonsOf(condition.member) : condition.members.flatMap(comparisonsOf);
}

function around({ fact, limit }: CompiledComparison, facts: Pack['facts']): Resolved[] {
  if (limit.kind === 'number') {
    const step = definitionIn(facts, fact).precision!;
    return [number(limit.value - step), number(limit.value), number(limit.value + step)];
  }
  if (limit.kind !== 'month-day') return [];
  const at = Date.UTC(2026, Math.floor(limit.value / 100) - 1, limit.value % 100);
  return [-1, 0, 1].map((days) => day(new Date(at + days * 86_400_000).toISOString().slice(0, 10)));
}

/** The comparison as the whole of a rule. */
function alone(comparison: CompiledComparison, compiled: CompiledRules): CompiledRules {
  const rule = holdRule('alone', { rule: 'alone' });
  const parameters = comparison.parameter === null ? [] : [comparison.parameter];
  return { ...compiled, rules: [{ rule, condition: comparison, facts: [comparison.fact], parameters }] };
}

test('there is a pack to try', () => {
  expect(packs.length).toBeGreaterThan(0);
});

describe.each(packs)('pack %s', (_id, files) => {
  test('every limit is judged rightly just below, at, just above, and where the fact is missing', async () => {
    const { pack } = loadPack(files);
    const compiled = compileRules(pack, today);
    const ordered = compiled.rules
      .flatMap(({ condition }) => comparisonsOf(condition))
      .filter(({ op }) => op in expected);
    expect(ordered.length).toBeGreaterThan(10);
    for (const comparison of ordered) {
      const single = alone(comparison, compiled);
      const outcomes: Outcome[] = [];
      for (const fact of around(comparison, pack.facts)) {
        outcomes.push((await evaluateChecked(single, { [comparison.fact]: fact }))[0]!.outcome);
      }
      expect(outcomes, comparison.name).toEqual(expected[comparison.op]);
      expect((await evaluateChecked(single, {}))[0]!.outcome).toBe('unknown');
    }
  });

  test('every rule is unknown, and none left out, where no fact is known', async () => {
    const compiled = compileRules(loadPack(files).pack, today);
    const trace = await evaluateChecked(compiled, {});
    expect(trace.map(({ rule }) => rule)).toEqual(compiled.rules.map(({ rule }) => rule.id));
    for (const rule of trace) expect(rule.outcome, rule.rule).toBe('unknown');
  });
});
