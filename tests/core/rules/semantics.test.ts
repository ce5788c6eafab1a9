import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateChecked, requireAgreement } from '../../../src/core/rules/evaluate-checked.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { Outcome } from '../../../src/core/rules/trace-types.ts';
import type { Condition } from '../../../src/core/rules/types.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { choice, day, holdRule, number, signsSeen } from '../../generators/small.ts';

async function judge(when: Condition, facts: ResolvedFacts) {
  const compiled = compileRules(
    { ...ofCore, rules: [holdRule('a', when)], parameters: generatedParameters },
    '2026-11-06',
  );
  return (await evaluateChecked(compiled, facts))[0]!;
}

const limit = 9.6;
const order: [string, Known, Record<'above' | 'atLeast' | 'below' | 'atMost', Outcome>][] = [
  ['below the limit', number(9.59), { above: 'not-met', atLeast: 'not-met', below: 'met', atMost: 'met' }],
  ['at the limit', number(limit), { above: 'not-met', atLeast: 'met', below: 'not-met', atMost: 'met' }],
  ['above the limit', number(9.61), { above: 'met', atLeast: 'met', below: 'not-met', atMost: 'not-met' }],
  [
    'a band up to the limit',
    number(9, 8, limit),
    { above: 'not-met', atLeast: 'unknown', below: 'unknown', atMost: 'met' },
  ],
  [
    'a band from the limit',
    number(10, limit, 11),
    { above: 'unknown', atLeast: 'met', below: 'not-met', atMost: 'unknown' },
  ],
  [
    'a band over the limit',
    number(9, 8, 11),
    { above: 'unknown', atLeast: 'unknown', below: 'unknown', atMost: 'unknown' },
  ],
];

describe('a number', () => {
  test.each(
    order.flatMap(([name, fact, out]) =>
      Object.entries(out).map(([op, outcome]) => [name, op, outcome, fact] as const),
    ),
  )('%s is, for %s, %s', async (_name, op, outcome, fact) => {
    const when = { fact: 'wind.boomKmh', [op]: 'n0l1' } as unknown as Condition;
    expect((await judge(when, { 'wind.boomKmh': fact })).outcome).toBe(outcome);
    expect((await judge(when, {})).outcome).toBe('unknown');
  });
});

describe('a choice', () => {
  test.each<[object, Known, Outcome]>([
    [{ is: 'dry' }, choice('dry'), 'met'],
    [{ is: 'dry' }, choice('wet'), 'not-met'],
    [{ is: 'dry' }, choice('dry', 'wet'), 'unknown'],
    [{ isNot: 'dry' }, choice('dry'), 'not-met'],
    [{ isNot: 'dry' }, choice('wet', 'moist'), 'met'],
    [{ isNot: 'dry' }, choice('dry', 'wet'), 'unknown'],
    [{ oneOf: ['dry', 'wet'] }, choice('dry', 'wet'), 'met'],
    [{ oneOf: ['dry', 'wet'] }, choice('dry', 'moist'), 'unknown'],
    [{ noneOf: ['dry', 'wet'] }, choice('moist', 'saturated'), 'met'],
    [{ noneOf: ['dry', 'wet'] }, choice('dry', 'wet'), 'not-met'],
    [{ noneOf: ['dry', 'wet'] }, choice('dry', 'moist'), 'unknown'],
  ])('compared by %j, %j', async (op, fact, outcome) => {
    const when = { fact: 'soil.feel', ...op } as unknown as Condition;
    expect((await judge(when, { 'soil.feel': fact })).outcome).toBe(outcome);
  });

  test.each<[Known, Outcome]>([
    [choice('GB-ENG'), 'not-met'],
    [choice('FR'), 'met'],
    [choice('FR', 'GB-ENG'), 'unknown'],
  ])('is compared with a list parameter: %j', async (fact, outcome) => {
    const when: Condition = { fact: 'field.country', noneOf: { parameter: 'countries' } };
    const rule = await judge(when, { 'field.country': fact });
    expect(rule).toMatchObject({ outcome, parameters: ['countries'] });
  });
});

describe('signs and dates', () => {
  test.each<[Known, Outcome]>([
    [signsSeen(['cracked', 'sticky']), 'met'],
    [signsSeen(['sticky']), 'not-met'],
    [signsSeen([]), 'not-met'],
    [signsSeen(['sticky'], ['cracked']), 'unknown'],
  ])('%j has cracked', async (fact, outcome) => {
    expect((await judge({ fact: 'soil.surface', has: 'cracked' }, { 'soil.surface': fact })).outcome).toBe(outcome);
  });

  test.each<[string, Outcome, number]>([
    ['2026-07-31', 'not-met', 1],
    ['2026-08-01', 'met', 0],
    ['2026-12-31', 'met', -152],
    ['2026-01-01', 'not-met', 212],
    ['2028-01-01', 'not-met', 213],
  ])('%s is, from 1 August on, %s with %i days of room', async (iso, outcome, margin) => {
    const rule = await judge({ fact: 'date', atLeast: 'day2' }, { date: day(iso) });
    expect(rule.outcome).toBe(outcome);
    expect(rule.margins).toEqual([
      { fact: 'date', parameter: 'day2', limit: '08-01', unit: 'days', margin, worst: margin },
    ]);
  });
});

describe('an eitherOf', () => {
  const when: Condition = {
    eitherOf: [
      { fact: 'soil.feel', oneOf: ['dry', 'slightly-moist'] },
      { fact: 'soil.fieldCapacityPercent', below: 'n3l0' },
    ],
  };
  test.each<[string, ResolvedFacts, Outcome]>([
    ['of which nothing is known is unknown', {}, 'unknown'],
    ['follows the one way that is known, met', { 'soil.feel': choice('dry') }, 'met'],
    ['follows the one way that is known, not met', { 'soil.feel': choice('wet') }, 'not-met'],
    [
      'counts the cautious way where two disagree',
      { 'soil.feel': choice('wet'), 'soil.fieldCapacityPercent': number(70) },
      'met',
    ],
    [
      'is unknown where one straddles',
      { 'soil.feel': choice('wet'), 'soil.fieldCapacityPercent': number(80, 75, 85) },
      'unknown',
    ],
    ['is unknown where the only known one straddles', { 'soil.feel': choice('dry', 'moist') }, 'unknown'],
  ])('%s', async (_name, facts, outcome) => {
    expect((await judge(when, facts)).outcome).toBe(outcome);
    const negated = await judge({ not: when }, facts);
    expect(negated.outcome).toBe({ met: 'not-met', 'not-met': 'met', unknown: 'unknown' }[outcome]);
  });

  test('marks in the trace which ways were left out', async () => {
    const { condition } = await judge(when, { 'soil.feel': choice('wet') });
    expect(condition).toMatchObject({
      kind: 'eitherOf',
      members: [{ present: true }, { present: false, outcome: 'unknown' }],
    });
  });
});

describe('the trace', () => {
  test('names comparisons by rule and path, through references, and keeps all members though the first settles', async () => {
    const rules = [
      holdRule('a', { all: [{ rule: 'b' }, { not: { fact: 'wind.boomKmh', above: 'n0l1' } }] }),
      holdRule('b', { any: [{ fact: 'soil.temperature30cmC', below: 'n1l0' }] }),
    ];
    const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
    const [trace] = await evaluateChecked(compiled, { 'soil.temperature30cmC': number(5) });
    expect(trace).toMatchObject({
      rule: 'a',
      outcome: 'not-met',
      facts: ['soil.temperature30cmC', 'wind.boomKmh'],
      parameters: ['n1l0', 'n0l1'],
      condition: {
        members: [
          { kind: 'rule', rule: 'b', member: { members: [{ name: 'a/all/0/rule/any/0' }] } },
          {
            kind: 'not',
            outcome: 'unknown',
            member: { name: 'a/all/1/not', value: { known: false, reason: 'not-asked' } },
          },
        ],
      },
    });
  });

  test.each<[string, Condition, number, number]>([
    ['above', { fact: 'wind.boomKmh', above: 'n0l1' }, 0.5, -0.4],
    ['not above', { not: { fact: 'wind.boomKmh', above: 'n0l1' } }, -0.5, -1.1],
    ['below', { fact: 'wind.boomKmh', below: 'n0l1' }, -0.5, -1.1],
    ['not below', { not: { fact: 'wind.boomKmh', atMost: 'n0l1' } }, 0.5, -0.4],
  ])('tells the room left before %s is met, and from the worse end of the band', async (_name, when, margin, worst) => {
    const { margins } = await judge(when, { 'wind.boomKmh': number(9.1, 8.5, 10) });
    expect(margins).toEqual([{ fact: 'wind.boomKmh', parameter: 'n0l1', limit, unit: 'km/h', margin, worst }]);
  });

  test('takes the limit in force on the day', () => {
    const later = { ...generatedParameters.find(({ id }) => id === 'n0l1')!, value: 8, validFrom: '2027-01-01' };
    const pack = {
      ...ofCore,
      rules: [holdRule('a', { fact: 'wind.boomKmh', above: 'n0l1' })],
      parameters: [...generatedParameters, later],
    };
    const facts = { 'wind.boomKmh': number(9) };
    expect(evaluateReference(compileRules(pack, '2026-12-31'), facts)[0]!.outcome).toBe('not-met');
    expect(evaluateReference(compileRules(pack, '2027-01-01'), facts)[0]!.outcome).toBe('met');
    expect(() => compileRules(pack, '2019-12-31')).toThrow('PARAMETER_MISSING');
  });
});

test('two evaluators that differ give no trace but a coded error that names the rules', () => {
  const compiled = compileRules(
    { ...ofCore, rules: [holdRule('a', { fact: 'soil.feel', is: 'dry' })], parameters: [] },
    '2026-11-06',
  );
  const trace = evaluateReference(compiled, {});
  expect(() => requireAgreement(trace, new Map([['a', 'met']]))).toThrow(/EVALUATORS_DISAGREE.*a: unknown against met/);
  expect(() => requireAgreement(trace, new Map())).toThrow('EVALUATORS_DISAGREE');
  expect(() => requireAgreement([], new Map([['a', 'met']]))).toThrow('EVALUATORS_DISAGREE');
});
