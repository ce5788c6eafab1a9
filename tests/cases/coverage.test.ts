import { describe, expect, test } from 'vitest';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import { comparisonsOf, operatorOf, parameterOf, readsOf } from '../../src/core/rules/reads.ts';
import { traceCases } from '../../src/core/verdict/cases/trace-cases.ts';
import { packTable, resolvedCasesOf } from './shipped-pack.ts';

/** Most steps of the fact's precision by which a case just off a limit may be off it. */
const nearSteps = 10;

describe.each(packTable)('%s', (_, one) => {
  const { rules, parameters, facts: registry } = one.pack;
  const resolvedCases = resolvedCasesOf(one);
  const byId = new Map(rules.map((rule) => [rule.id, rule]));
  const traces = traceCases(one.pack, resolvedCases).map(({ trace }) => trace);
  const limitValues = new Map(parameters.map(({ id, value }) => [id, value]));

  describe('every rule has a case in which it is', () => {
    /** The day follows from the moment, so a rule that reads nothing else is always known. */
    const dayOnly = (id: string) => [...readsOf(byId.get(id)!.when, byId).facts].every((fact) => fact === 'date');

    test.each(rules.map(({ id }) => id))('%s: met, not met, and unknown where it can be', (id) => {
      const seen = new Set<string>();
      resolvedCases.forEach(({ one: { expect: expected } }, index) => {
        const { outcome } = traces[index]!.find(({ rule }) => rule === id)!;
        const named = { met: expected.met, 'not-met': expected.notMet, unknown: expected.unknown }[outcome];
        if (named?.includes(id)) seen.add(outcome);
      });
      expect([...seen].sort()).toEqual(dayOnly(id) ? ['met', 'not-met'] : ['met', 'not-met', 'unknown']);
    });
  });

  const limits = rules.flatMap((rule) =>
    comparisonsOf(rule.when, new Map()).flatMap((comparison) => {
      const parameter = parameterOf(comparison);
      const { op } = operatorOf(comparison);
      return parameter === null ? [] : [{ rule: rule.id, fact: comparison.fact, op, parameter }];
    }),
  );

  describe('every limit has a case at it and a case just off it, on the other side', () => {
    const numbers = limits.filter(({ parameter }) => typeof limitValues.get(parameter) === 'number');
    test.each(numbers)('$rule: $fact $op $parameter', ({ fact, op, parameter }) => {
      const limit = limitValues.get(parameter) as number;
      const near = registry[fact]!.precision! * nearSteps;
      const values = resolvedCases.flatMap(({ facts }) => {
        const known = facts[fact];
        return known?.known && known.type === 'number' && known.low === known.high ? [known.value] : [];
      });
      const beyond = op === 'above' || op === 'atMost' ? 1 : -1;
      const offBy = values.map((value) => (value - limit) * beyond).filter((off) => off > 0 && off <= near * 1.0001);
      expect(values).toContain(limit);
      expect(offBy).not.toEqual([]);
    });

    const days = limits.filter(({ fact }) => fact === 'date');
    test.each(days)('$rule: date $op $parameter', ({ op, parameter }) => {
      const seen = new Set(resolvedCases.map(({ day }) => day.slice(5)));
      const limit = String(limitValues.get(parameter));
      expect(seen).toContain(limit);
      expect(seen).toContain(neighbourDay(limit, op === 'above' || op === 'atMost' ? 1 : -1));
    });

    const lists = limits.filter(({ parameter }) => Array.isArray(limitValues.get(parameter)));
    test.each(lists)('$rule: $fact $op $parameter, each of the list and one beside it', ({ fact, parameter }) => {
      const list = limitValues.get(parameter) as readonly string[];
      const seen = choicesSeen(fact);
      expect([...seen]).toEqual(expect.arrayContaining([...list]));
      expect([...seen].filter((choice) => !list.includes(choice))).not.toEqual([]);
    });
  });

  function choicesSeen(fact: FactId): ReadonlySet<string> {
    return new Set(
      resolvedCases.flatMap(({ facts }) => {
        const known = facts[fact];
        return known?.known && known.type === 'choice' ? known.possible : [];
      }),
    );
  }
});

function neighbourDay(monthDay: string, by: number): string {
  const day = new Date(`2026-${monthDay}T00:00Z`);
  day.setUTCDate(day.getUTCDate() + by);
  return day.toISOString().slice(5, 10);
}
