import { describe, expect, test } from 'vitest';
import { requireAgreement } from '../../../src/core/rules/evaluate-checked.ts';
import { codedOf } from '../../fixtures/coded.ts';
import { traceOf } from '../../generators/outcomes.ts';

describe('two evaluators that differ', () => {
  const trace = [traceOf('a', 'hold', 'met'), traceOf('b', 'hold', 'unknown')];
  const expected = 'the same outcome of every rule from both';
  test.each<readonly [readonly (readonly [string, 'met' | 'not-met' | 'unknown'])[], string]>([
    [
      [
        ['a', 'not-met'],
        ['b', 'met'],
      ],
      'a: met against not-met; b: unknown against met',
    ],
    [[['a', 'met']], 'b: unknown against nothing'],
    [
      [
        ['a', 'met'],
        ['b', 'unknown'],
        ['c', 'met'],
      ],
      '2 rules against 3',
    ],
  ])('%j are told rule by rule: %s', (outcomes, came) => {
    expect(codedOf(() => requireAgreement(trace, new Map(outcomes)))).toEqual({
      code: 'EVALUATORS_DISAGREE',
      expected,
      came,
    });
  });

  test('none is told where they agree', () => {
    expect(() =>
      requireAgreement(
        trace,
        new Map([
          ['b', 'unknown'],
          ['a', 'met'],
        ]),
      ),
    ).not.toThrow();
  });
});
