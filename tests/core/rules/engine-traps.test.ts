import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known, Resolved } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { engineFactsFor, engineRulesFor, evaluateWithEngine, newEngine } from '../../../src/core/rules/engine.ts';
import { enginePairs } from '../../../src/core/rules/engine-operators.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { CompiledRules, Condition } from '../../../src/core/rules/types.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { choice, day, holdRule, number, signsSeen } from '../../generators/small.ts';

function compile(when: Condition): CompiledRules {
  return compileRules({ ...ofCore, rules: [holdRule('a', when)], parameters: generatedParameters }, '2026-11-06');
}

const notWindy: Condition = { not: { fact: 'wind.boomKmh', above: 'n0l1' } };

describe('missing data under a not', () => {
  test.each<[string, ResolvedFacts]>([
    ['an absent fact', {}],
    ['an unknown fact', { 'wind.boomKmh': { known: false, reason: 'too-old' } }],
    ['another fact only', { 'wind.gustKmh': number(3) }],
  ])('is unknown, never approval: %s', async (_name, facts) => {
    expect(evaluateReference(compile(notWindy), facts)[0]!.outcome).toBe('unknown');
    expect(await evaluateWithEngine(compile(notWindy), facts)).toEqual(new Map([['a', 'unknown']]));
  });
});

const text = '12' as unknown as number;
const malformed: [string, Condition, Resolved][] = [
  ['no number', notWindy, number(Number.NaN)],
  ['a band without an end', notWindy, number(9, 9, Number.NaN)],
  ['an infinite band', notWindy, number(9, 9, Number.POSITIVE_INFINITY)],
  ['a number as text', notWindy, number(text)],
  ['nothing as a number', notWindy, number(null as unknown as number)],
  ['undefined as a number', notWindy, { ...number(1), low: undefined } as unknown as Known],
  ['a band upside down', notWindy, number(9, 10, 8)],
  ['a choice for a number', notWindy, choice('dry')],
  ['a number for a choice', { not: { fact: 'soil.feel', is: 'dry' } }, number(3)],
  ['signs for a choice', { not: { fact: 'soil.feel', is: 'dry' } }, signsSeen(['dry'])],
  ['a choice of nothing', { not: { fact: 'soil.feel', is: 'dry' } }, choice()],
  ['a choice for signs', { not: { fact: 'soil.surface', has: 'cracked' } }, choice('cracked')],
  [
    'a sign that is there but not possible',
    { not: { fact: 'soil.surface', has: 'cracked' } },
    { ...signsSeen([], ['sticky']), present: ['cracked'] } as Known,
  ],
  ['a number for a date', { not: { fact: 'date', above: 'day0' } }, number(1106)],
  ['a day for a number', notWindy, day('2026-11-06')],
  ['a date that is no date', { not: { fact: 'date', above: 'day0' } }, day('tomorrow')],
];

describe('a value that is not well formed', () => {
  test.each(malformed)('stops both evaluators: %s', async (_name, when, fact) => {
    const id = 'not' in when && 'fact' in when.not ? when.not.fact : 'date';
    const compiled = compile(when);
    expect(() => evaluateReference(compiled, { [id]: fact })).toThrow('FACT_MALFORMED');
    await expect(evaluateWithEngine(compiled, { [id]: fact })).rejects.toThrow('FACT_MALFORMED');
  });

  test.each<[string, unknown]>([
    ['text', { kind: 'number', value: '9.6' }],
    ['nothing', { kind: 'number', value: null }],
    ['no number', { kind: 'number', value: Number.NaN }],
    ['a bare number', 9.6],
    ['undefined', undefined],
    ['choices', { kind: 'choices', values: ['a'] }],
  ])('is refused as the limit of a number: %s', (_name, limit) => {
    for (const op of ['above', 'atLeast', 'below', 'atMost'] as const) {
      for (const operator of enginePairs[op]) {
        const fact = { known: true, scale: 'number', low: 1, high: 1 } as const;
        expect(() => operator(fact, limit as never)).toThrow('FACT_MALFORMED');
        expect(() => operator({ known: false }, limit as never)).toThrow('FACT_MALFORMED');
        expect(() => operator(undefined as never, { kind: 'number', value: 1 })).toThrow('FACT_MALFORMED');
      }
    }
  });

  test.each<[string, unknown]>([
    ['a text, which would be searched for letters', { kind: 'choices', values: 'dry' }],
    ['an empty list', { kind: 'choices', values: [] }],
    ['a number', { kind: 'number', value: 1 }],
  ])('is refused as a list of choices: %s', (_name, limit) => {
    for (const op of ['is', 'isNot', 'oneOf', 'noneOf'] as const) {
      for (const operator of enginePairs[op]) {
        expect(() => operator({ known: true, possible: ['d'], sure: null }, limit as never)).toThrow('FACT_MALFORMED');
      }
    }
  });
});

describe('the engine that we make', () => {
  const leaf = { fact: 'x', operator: 'surely above', value: { kind: 'number', value: 1 } };
  const fact = { known: true, scale: 'number', low: 5, high: 5 } as const;
  const run = (more: object, facts: Record<string, unknown> = { x: fact }) =>
    newEngine([{ conditions: { all: [{ ...leaf, ...more }] }, event: { type: 'e' } }]).run(facts);

  test('has none of the built-in operators', async () => {
    for (const operator of [
      'equal',
      'notEqual',
      'in',
      'notIn',
      'contains',
      'doesNotContain',
      'lessThan',
      'lessThanInclusive',
      'greaterThan',
      'greaterThanInclusive',
    ]) {
      await expect(run({ operator }), operator).rejects.toThrow('Unknown operator');
    }
    expect((await run({})).results).toHaveLength(1);
  });

  test('takes no undefined fact', async () => {
    await expect(run({}, {})).rejects.toThrow('Undefined fact: x');
  });

  test('takes no path into a fact', async () => {
    await expect(run({ path: '$.low' })).rejects.toThrow('FACT_MALFORMED');
  });

  test('is new for each evaluation, and its rules carry no mark of the last', async () => {
    const compiled = compile({ all: [notWindy, { fact: 'soil.feel', is: 'dry' }] });
    const facts = { 'wind.boomKmh': number(3), 'soil.feel': choice('dry') };
    const before = JSON.stringify(engineRulesFor(compiled, facts));
    expect(await evaluateWithEngine(compiled, facts)).toEqual(new Map([['a', 'met']]));
    expect(await evaluateWithEngine(compiled, {})).toEqual(new Map([['a', 'unknown']]));
    expect(JSON.stringify(engineRulesFor(compiled, facts))).toBe(before);
  });

  test('gets facts as plain values, one for each fact that is read', () => {
    const facts = engineFactsFor(compile(notWindy), { 'air.deltaTC': number(3) });
    expect(facts['wind.boomKmh']).toEqual({ known: false });
    expect(Object.keys(facts)).toHaveLength(2);
  });

  test('gets no empty group, though every way of an eitherOf is absent', async () => {
    const compiled = compile({
      eitherOf: [
        { fact: 'soil.feel', is: 'dry' },
        { fact: 'wind.boomKmh', above: 'n0l1' },
      ],
    });
    expect(JSON.stringify(engineRulesFor(compiled, {}))).not.toContain('[]');
    expect(await evaluateWithEngine(compiled, {})).toEqual(new Map([['a', 'unknown']]));
  });
});

test('an answer that is lost or given twice is an error, not a verdict', async () => {
  const compiled = compile(notWindy);
  const twice: CompiledRules = { ...compiled, rules: [...compiled.rules, ...compiled.rules] };
  await expect(evaluateWithEngine(twice, {})).rejects.toMatchObject({
    code: 'EVALUATION_INCOMPLETE',
    details: { expected: '2 answers', came: '4' },
  });
});

test('what the engine cannot compare is told as it came, and a path into a fact too', async () => {
  const compiled = compile(notWindy);
  await expect(evaluateWithEngine(compiled, { 'wind.boomKmh': number(9, 10, 11) })).rejects.toMatchObject({
    code: 'FACT_MALFORMED',
    details: {
      expected: 'a well-formed fact and limit of the same kind',
      came: '{"known":true,"scale":"number","low":null,"high":11} with {"kind":"number","value":9.6}',
    },
  });
  const path = { fact: 'x', operator: 'surely above', value: 1, path: '$.low' };
  const engine = newEngine([{ conditions: { all: [path] }, event: { type: 'e' } }]);
  await expect(engine.run({ x: {} })).rejects.toMatchObject({
    code: 'FACT_MALFORMED',
    details: { expected: 'no path into a fact', came: '$.low' },
  });
});

test('each operator of the engine takes and leaves what it should, surely and possibly', () => {
  const band = { known: true, scale: 'number', low: 9, high: 11 } as const;
  const at = (value: number) => ({ kind: 'number', value }) as const;
  const outcomes = (op: keyof typeof enginePairs, ...limits: number[]) =>
    limits.map((limit) => enginePairs[op].map((operator) => operator(band, at(limit))));
  const [sure, perhaps, no] = [
    [true, true],
    [false, true],
    [false, false],
  ];
  expect(outcomes('above', 8, 9, 10, 11, 12)).toEqual([sure, perhaps, perhaps, no, no]);
  expect(outcomes('atLeast', 8, 9, 10, 11, 12)).toEqual([sure, sure, perhaps, perhaps, no]);
  expect(outcomes('below', 8, 9, 10, 11, 12)).toEqual([no, no, perhaps, perhaps, sure]);
  expect(outcomes('atMost', 8, 9, 10, 11, 12)).toEqual([no, perhaps, perhaps, sure, sure]);
  const listed = (op: keyof typeof enginePairs, possible: string[], sign: string[] | null, ...values: string[]) =>
    enginePairs[op].map((operator) => operator({ known: true, possible, sure: sign }, { kind: 'choices', values }));
  expect(listed('oneOf', ['a', 'b'], null, 'a', 'b')).toEqual(sure);
  expect(listed('oneOf', ['a', 'b'], null, 'a')).toEqual(perhaps);
  expect(listed('oneOf', ['a', 'b'], null, 'c')).toEqual(no);
  expect(listed('noneOf', ['a', 'b'], null, 'c')).toEqual(sure);
  expect(listed('noneOf', ['a', 'b'], null, 'a')).toEqual(perhaps);
  expect(listed('noneOf', ['a', 'b'], null, 'b', 'a')).toEqual(no);
  expect(listed('has', ['a', 'b'], ['a'], 'a')).toEqual(sure);
  expect(listed('has', ['a', 'b'], ['a'], 'b')).toEqual(perhaps);
  expect(listed('has', ['a', 'b'], ['a'], 'c')).toEqual(no);
  for (const op of ['above', 'atLeast', 'below', 'atMost'] as const)
    expect(enginePairs[op].map((operator) => operator({ known: false }, at(1)))).toEqual(perhaps);
});

test('a circle of rules that was not caught at load is caught before the engine', () => {
  const rules = [holdRule('a', { rule: 'b' }), holdRule('b', { not: { rule: 'a' } })];
  expect(() => compileRules({ ...ofCore, rules, parameters: [] }, '2026-11-06')).toThrow(
    /RULE_REFERENCE_CYCLE.*a > b > a/,
  );
  const lost = [holdRule('a', { rule: 'c' })];
  expect(() => compileRules({ ...ofCore, rules: lost, parameters: [] }, '2026-11-06')).toThrow(
    'RULE_REFERENCE_MISSING',
  );
});
