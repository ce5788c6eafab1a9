import { describe, expect, test } from 'vitest';
import { applyChange } from '../../../../src/core/rules/mutate/types.ts';
import type { PackCase } from '../../../../src/core/rules/pack-types.ts';
import { resolveCase } from '../../../../src/core/rules/resolve-case.ts';
import { caseHolds } from '../../../../src/core/verdict/cases/judge-case.ts';
import { affectedBy, traceCases } from '../../../../src/core/verdict/cases/trace-cases.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { miniPack } from '../../../fixtures/mini-pack.ts';
import { calm as calmDay, mini, trying } from './calm-day.ts';

const whole = mini();
const calm: PackCase = { ...calmDay, expect: { verdict: 'spray-today', notMet: ['too-dry'] } };
const holds = (pack: Parameters<typeof traceCases>[0], one: PackCase) =>
  traceCases(pack, [resolveCase(one, whole)]).every(({ trace }) => caseHolds(trace, one));

describe('changes that no case notices', () => {
  const tried = () => trying([calm], whole);

  test('are found, and the case that is offered for each holds now and fails after the change', () => {
    const { survivors, changes, failing } = tried();
    expect(failing).toEqual([]);
    expect(survivors.length).toBeGreaterThan(changes / 2);
    for (const { change, kill } of survivors) {
      expect(kill && holds(whole, kill)).toBe(true);
      expect(kill && holds(applyChange(whole, change), kill)).toBe(false);
    }
  });

  test('with the cases offered added, none is left', () => {
    const offered = tried().survivors.flatMap(({ kill }) => (kill ? [kill] : []));
    expect(trying([calm, ...offered]).survivors).toEqual([]);
  });

  test('a limit is shown by the value at it or one step off it', () => {
    const wind = tried().survivors.filter(({ change }) => change.before.id === 'windMostKmh');
    expect(wind.map(({ change, facts }) => [change.after, facts['wind.boomKmh']])).toMatchObject([
      [{ value: 9.61 }, 9.61],
      [{ value: 9.59 }, 9.6],
      [{ value: 9.7 }, 9.61],
      [{ value: 9.5 }, 9.6],
    ]);
  });
});

test('a rule that says something twice has a change that no facts tell apart, listed apart', () => {
  const parsed = structuredClone(miniPack()) as Record<string, { rules: { id: string; when: unknown }[] }>;
  const rule = parsed['a.rules.json']!.rules.find(({ id }) => id === 'too-windy')!;
  rule.when = { any: [rule.when, rule.when] };
  const { equal } = trying([calm], mini({}, parsed));
  const members = equal.filter(({ kind, before }) => kind === 'member' && before.id === 'too-windy');
  expect(members).toHaveLength(1);
});

test('cases that fail with nothing changed are named with what comes out, and nothing is tried', () => {
  const wrong: PackCase = { ...calm, expect: { verdict: 'wait' } };
  const tried = trying([calm, wrong]);
  expect(tried).toMatchObject({ cases: 2, changes: 0, equal: [], survivors: [] });
  expect(tried.failing).toMatchObject([{ one: wrong, given: { verdict: calm.expect.verdict } }]);
});

describe('what a case says beyond the verdict is judged', () => {
  const { pack } = shipped;
  const windy = shipped.cases.find(({ expect: { met } }) => met?.join() === 'too-windy')!;
  const judged = (more: Partial<PackCase['expect']>) => {
    const one: PackCase = { ...windy, expect: { ...windy.expect, ...more } };
    return traceCases(pack, [resolveCase(one, pack)]).every(({ trace }) => caseHolds(trace, one));
  };
  test.each<readonly [boolean, Partial<PackCase['expect']>]>([
    [true, {}],
    [true, { lifts: { 'too-windy': 'hours' } }],
    [false, { lifts: { 'too-windy': 'days' } }],
    [false, { lifts: { gusty: 'hours' } }],
    [false, { met: [] }],
    [false, { notMet: ['too-windy'] }],
    [false, { unknown: ['soil-too-warm'] }],
    [false, { missing: ['soil.feel'] }],
    [false, { verdict: 'spray-today' }],
  ])('%s for %j', (right, more) => {
    expect(judged(more)).toBe(right);
  });
});

test('a change of a rule affects it and all that name it, through others too', () => {
  const { rules } = whole;
  const change = { kind: 'effect', before: rules.find(({ id }) => id === 'too-dry')!, after: rules[0]! } as const;
  expect([...affectedBy(whole, change)].sort()).toEqual(['too-dry', 'warm-and-dry']);
});

test('a case without a moment is refused', () => {
  const { at: _, ...undated } = calm;
  expect(() => resolveCase(undated, whole)).toThrow(expect.objectContaining({ code: 'CASE_MISFIT' }));
});
