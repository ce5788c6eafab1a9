import { describe, expect, test } from 'vitest';
import { resolveOnBoth } from '../../../src/core/compare/case-facts.ts';
import { decidersOf, judgePair, pairRules, wayOf } from '../../../src/core/compare/index.ts';
import { changedOf, newTally } from '../../../src/core/compare/tally.ts';
import type { VerdictPair } from '../../../src/core/compare/types.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { good, parametersWith, ruleWith, smallPack, smallSide } from './small-pack.ts';

const compiled = (change: Partial<Pack> = {}) => compileRules({ ...smallPack(), ...change }, '2026-11-06');
const factsOf = (facts: Readonly<Record<string, unknown>>): ResolvedFacts => {
  const side = smallSide({}, [{ ...good, ...facts }]);
  return resolveOnBoth(side.cases[0]!, { a: side, b: side }).a;
};

describe('two rule sets side by side', () => {
  test('know which conditions are the very same', () => {
    const other = compiled({ parameters: parametersWith('windMostKmh', { value: 8 }) });
    expect(other.rules.map(({ rule }) => rule.id)).toEqual([
      'elsewhere',
      'late',
      'too-dry',
      'too-windy',
      'warm-and-dry',
    ]);
    expect(pairRules(compiled(), other).sameAs).toEqual([0, 1, 2, undefined, 4]);
  });

  test('judge a condition that both have once', () => {
    const readsOver = (change: Partial<Pack>) => {
      let reads = 0;
      const facts = new Proxy(factsOf({}), {
        get: (all, id) => {
          reads += 1;
          return Reflect.get(all, id);
        },
      });
      judgePair(pairRules(compiled(), compiled(change)), facts);
      return reads;
    };
    const without = readsOver({ rules: [] });
    expect(without).toBeGreaterThan(0);
    expect(readsOver({})).toBe(without);
    expect(readsOver({ parameters: parametersWith('windMostKmh', { value: 8 }) })).toBe(without + 1);
  });

  test('B is judged on facts of its own where it sees them otherwise, the same condition too', () => {
    const { a, b } = judgePair(pairRules(compiled(), compiled()), factsOf({}), factsOf({ 'wind.boomKmh': 12 }));
    expect([a.verdict, b.verdict]).toEqual(['spray-today', 'wait']);
    expect([a.outcomes[3], b.outcomes[3]]).toEqual(['not-met', 'met']);
  });
});

describe('the rules by which a verdict changed', () => {
  const windStop = ruleWith('too-windy', { effect: 'stop' });
  test.each<[string, Partial<Pack>, object, string, readonly string[]]>([
    ['a hold that becomes a stop', windStop, { 'wind.boomKmh': 12 }, 'stricter', ['too-windy']],
    ['a stop that may be met weighs as a hold', windStop, { 'wind.boomKmh': null }, 'same', []],
    ['advice that becomes a hold', ruleWith('late', { effect: 'hold' }), {}, 'stricter', ['late']],
    [
      'a hold that becomes advice',
      ruleWith('too-windy', { effect: 'advise' }),
      { 'wind.boomKmh': 12 },
      'looser',
      ['too-windy'],
    ],
    [
      'two at once, in the order of the rules',
      { parameters: parametersWith('windMostKmh', { value: 3 }), rules: ruleWith('late', { effect: 'hold' }).rules },
      {},
      'stricter',
      ['late', 'too-windy'],
    ],
    [
      'only those of the weight of the verdict: a stop, not the hold beside it',
      { parameters: parametersWith('windMostKmh', { value: 3 }), rules: ruleWith('late', { effect: 'stop' }).rules },
      {},
      'stricter',
      ['late'],
    ],
    [
      'none where another rule stands in the way on both sides',
      { parameters: parametersWith('windMostKmh', { value: 3 }) },
      { 'soil.feel': 'dry' },
      'same',
      [],
    ],
    ['a rule that only one has', { rules: [] }, { 'wind.boomKmh': null }, 'looser', ['too-windy']],
  ])('%s', (_, change, facts, way, by) => {
    const rules = pairRules(compiled(), compiled(change));
    const judged = judgePair(rules, factsOf({ ...facts }));
    expect([wayOf({ a: judged.a.verdict, b: judged.b.verdict }), decidersOf(rules, judged)]).toEqual([way, by]);
    const turned = pairRules(rules.b, rules.a);
    const back = { stricter: 'looser', looser: 'stricter', same: 'same' }[way];
    const judgedBack = judgePair(turned, factsOf({ ...facts }));
    expect(wayOf({ a: judgedBack.a.verdict, b: judgedBack.b.verdict })).toBe(back);
    expect(decidersOf(turned, judgedBack)).toEqual(by);
  });
});

describe('a tally of verdicts', () => {
  test('counts each kind of transition, from spray to do not spray, and how many change', () => {
    const pairs: readonly VerdictPair[] = [
      { a: 'do-not-spray', b: 'wait' },
      { a: 'wait', b: 'wait' },
      { a: 'spray-today', b: 'wait' },
      { a: 'spray-today', b: 'wait' },
      { a: 'wait', b: 'wait' },
      { a: 'wait', b: 'wait' },
    ];
    const tally = newTally();
    for (const pair of pairs) tally.add(pair);
    expect(tally.transitions()).toEqual([
      { a: 'spray-today', b: 'wait', way: 'stricter', count: 2 },
      { a: 'wait', b: 'wait', way: 'same', count: 3 },
      { a: 'do-not-spray', b: 'wait', way: 'looser', count: 1 },
    ]);
    expect(changedOf(tally.transitions())).toEqual({ all: 6, changed: 3 });
  });
});
