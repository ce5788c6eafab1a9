import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import type { Change } from '../../../../src/core/rules/mutate/types.ts';
import { loadPack } from '../../../../src/core/rules/pack/load-pack.ts';
import type { PackCase } from '../../../../src/core/rules/pack-types.ts';
import { evaluateReference } from '../../../../src/core/rules/reference.ts';
import { resolveCase } from '../../../../src/core/rules/resolve-case.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import { caseHolds, expectedOf, givenBy } from '../../../../src/core/verdict/cases/judge-case.ts';
import { affectedBy, traceCases, tracesAfter } from '../../../../src/core/verdict/cases/trace-cases.ts';
import { decidingMargin } from '../../../../src/core/verdict/reasons.ts';
import { codedOf } from '../../../fixtures/coded.ts';
import { ofCore } from '../../../fixtures/core-facts.ts';
import { filesOf, miniPack } from '../../../fixtures/mini-pack.ts';
import { generatedParameters } from '../../../generators/conditions.ts';
import { traceOf } from '../../../generators/outcomes.ts';
import { day, holdRule, number } from '../../../generators/small.ts';

const trace = [
  traceOf('b-hold', 'hold', 'met', { lifts: 'days' }),
  traceOf('a-stop', 'stop', 'met', { lifts: 'season' }),
  traceOf('advice', 'advise', 'met'),
  traceOf('idle', 'hold', 'not-met', { lifts: 'person' }),
  traceOf('open', 'stop', 'unknown'),
];
type Expect = PackCase['expect'];
const verdict = 'do-not-spray';

describe('what a trace gives for a case', () => {
  test.each<readonly [string, Omit<Expect, 'verdict'>, object]>([
    ['stops and holds that are met, though the case names none', {}, { met: ['a-stop', 'b-hold'] }],
    ['advice where the case names it', { met: ['advice', 'b-hold'] }, { met: ['a-stop', 'advice', 'b-hold'] }],
    ['what is not met, of what the case names', { notMet: ['open', 'idle', 'advice'] }, { notMet: ['idle'] }],
    ['what is unknown, of what the case names', { unknown: ['open', 'idle'] }, { unknown: ['open'] }],
    [
      'what lifts a rule that is met, nothing for another',
      { lifts: { 'b-hold': 'hours', idle: 'person', gone: 'days', advice: 'days' } },
      { lifts: { 'b-hold': 'days', idle: null, gone: null, advice: null } },
    ],
  ])('%s', (_, more, given) => {
    const nothing = { verdict, met: ['a-stop', 'b-hold'], notMet: [], unknown: [], missing: [], lifts: {} };
    expect(givenBy(trace, { expect: { verdict, ...more } })).toEqual({ ...nothing, ...given });
  });

  test('is compared with what it says, each list in order', () => {
    expect(expectedOf({ expect: { verdict } })).toEqual({
      verdict,
      met: [],
      notMet: [],
      unknown: [],
      missing: [],
      lifts: {},
    });
    const more = {
      met: ['b', 'a'],
      notMet: ['d', 'c'],
      unknown: ['f', 'e'],
      missing: ['soil.feel', 'date'],
      lifts: { a: 'days' },
    } as const;
    expect(expectedOf({ expect: { verdict, ...more } })).toEqual({
      ...{ verdict, met: ['a', 'b'], notMet: ['c', 'd'], unknown: ['e', 'f'] },
      ...{ missing: ['date', 'soil.feel'], lifts: { a: 'days' } },
    });
    expect(caseHolds(trace, { expect: { verdict, met: ['b-hold', 'a-stop'], unknown: ['open'] } })).toBe(true);
    expect(caseHolds(trace, { expect: { verdict, met: ['b-hold'] } })).toBe(false);
    expect(caseHolds(trace, { expect: { verdict: 'wait', met: ['b-hold', 'a-stop'] } })).toBe(false);
  });
});

const mini = () => loadPack(filesOf(miniPack())).pack;
const one: PackCase = {
  file: 'cases/a.json',
  name: 'a day',
  at: '2026-11-06T09:00:00Z',
  facts: { 'wind.boomKmh': 12, 'soil.feel': 'dry' },
  expect: { verdict: 'wait' },
};

describe('the traces of cases', () => {
  test('of a changed rule set are made anew for the rules that it touches alone', () => {
    const pack = mini();
    const traced = traceCases(pack, [resolveCase(one, pack)]);
    const eased = {
      ...pack,
      parameters: pack.parameters.map((each) => (each.id === 'windMostKmh' ? { ...each, value: 20 } : each)),
    };
    const outcome = (affected: readonly string[]) =>
      [...tracesAfter(eased, new Set(affected), traced)].map(
        (each) => each.trace.find(({ rule }) => rule === 'too-windy')?.outcome,
      );
    expect(outcome(['too-windy'])).toEqual(['not-met']);
    expect(outcome(['too-dry'])).toEqual(['met']);
    expect(traced.map(({ period }) => period.includes('windMostKmh2020-01-01'))).toEqual([true]);
  });

  test('a limit touches each rule that reads it, through another too', () => {
    const pack = mini();
    const change = (id: string): Change => {
      const before = pack.parameters.find((each) => each.id === id)!;
      return { kind: 'limit', before, after: before };
    };
    expect([...affectedBy(pack, change('soilDryPercent'))].sort()).toEqual(['too-dry', 'warm-and-dry']);
    expect([...affectedBy(pack, change('windMostKmh'))]).toEqual(['too-windy']);
  });

  test('a case without a day is told by name and file', () => {
    const { at: _, ...undated } = one;
    expect(codedOf(() => resolveCase(undated, mini()))).toEqual({
      code: 'CASE_MISFIT',
      expected: '"at", or "date" among its facts',
      came: 'neither, in "a day"',
      file: 'cases/a.json',
    });
  });

  test('one with a date alone is judged at noon of it, at the field', () => {
    const { at: _, ...undated } = one;
    const resolved = resolveCase({ ...undated, facts: { ...one.facts, date: '2026-07-01' } }, mini());
    expect(resolved.day).toBe('2026-07-01');
    expect(resolved.facts['wind.boomKmh']).toMatchObject({ known: true, at: Date.UTC(2026, 6, 1, 11) / 1000 });
  });
});

describe('the margin that decides', () => {
  const margin = (when: Condition, facts: Parameters<typeof evaluateReference>[1]) => {
    const rules = [holdRule('a', when), holdRule('named', { fact: 'wind.boomKmh', above: 'n0l1' })];
    const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
    const found = decidingMargin(evaluateReference(compiled, facts)[0]!.condition);
    return found && [found.fact, found.margin];
  };
  const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
  const warm: Condition = { fact: 'soil.temperature30cmC', above: 'n1l2' };
  const from: Condition = { fact: 'date', atLeast: 'day2' };
  const to: Condition = { fact: 'date', atMost: 'day3' };
  const facts = { 'wind.boomKmh': number(12), 'soil.temperature30cmC': number(8), date: day('2026-10-15') };

  test.each<readonly [string, Condition, readonly [string, number] | null]>([
    ['is that of the member that comes out as the group', { any: [warm, windy] }, ['wind.boomKmh', -2.4]],
    ['of a group that is not met, that of the one that is not', { all: [windy, warm] }, ['soil.temperature30cmC', 2]],
    ['is found under a not', { not: { any: [windy, warm] } }, ['wind.boomKmh', 2.4]],
    ['is found in a rule that is named', { all: [{ rule: 'named' }, from] }, ['wind.boomKmh', -2.4]],
    ['between two days is that to the end', { all: [from, to] }, ['date', -5]],
    ['is that to the end in any order', { all: [to, from] }, ['date', -5]],
    ['of one day alone is that to it', { all: [from, windy] }, ['date', -75]],
    ['is none of choices', { fact: 'soil.feel', is: 'dry' }, null],
  ])('%s', (_, when, found) => {
    expect(margin(when, facts)).toEqual(found);
  });
});
