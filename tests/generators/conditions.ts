import fc from 'fast-check';
import type { FactId } from '../../src/core/facts/registry/index.ts';
import type { Condition, Effect, Lifts, Rule } from '../../src/core/rules/types.ts';
import type { Parameter } from '../../src/core/units/parameter.ts';
import { choiceFacts, countries, numberFacts, signs } from './fact-pool.ts';

/** Parameters that generated rules compare with: a few limits of each number fact, days of the year and a list. */
export const generatedParameters: readonly Parameter[] = [
  ...numberFacts.flatMap(({ limits }, fact) =>
    limits.map((value, index) => parameter(`n${fact}l${index}`, value, 'any')),
  ),
  ...['01-31', '02-29', '08-01', '10-20', '12-10'].map((value, index) => parameter(`day${index}`, value, 'month-day')),
  parameter('countries', countries.slice(0, 2), 'list'),
];

function parameter(id: string, value: Parameter['value'], unit: string): Parameter {
  return { id, value, unit, source: 'invented', why: { en: 'test' }, validFrom: '2020-01-01', tighter: 'neither' };
}

const orderOperator = fc.constantFrom('below', 'atMost', 'above', 'atLeast');

const numberComparison = fc
  .tuple(fc.nat(numberFacts.length - 1), fc.nat(2), orderOperator)
  .map(([fact, limit, op]) => ({ fact: numberFacts[fact]!.fact, [op]: `n${fact}l${limit}` }));

const dateComparison = fc.tuple(orderOperator, fc.nat(4)).map(([op, day]) => ({ fact: 'date', [op]: `day${day}` }));

const choiceComparison = fc.constantFrom(...choiceFacts).chain(({ fact, choices }) =>
  fc.oneof(
    fc
      .tuple(fc.constantFrom('is', 'isNot'), fc.constantFrom(...choices))
      .map(([op, choice]) => ({ fact, [op]: choice })),
    fc
      .tuple(fc.constantFrom('oneOf', 'noneOf'), fc.subarray([...choices], { minLength: 1 }))
      .map(([op, some]) => ({ fact, [op]: some })),
  ),
);

const countryComparison = fc
  .constantFrom('oneOf', 'noneOf')
  .map((op) => ({ fact: 'field.country', [op]: { parameter: 'countries' } }));

const signComparison = fc.constantFrom(...signs).map((sign) => ({ fact: 'soil.surface', has: sign }));

/** A comparison of any kind. */
export const comparison = fc.oneof(
  { weight: 4, arbitrary: numberComparison },
  { weight: 3, arbitrary: choiceComparison },
  { weight: 1, arbitrary: dateComparison },
  { weight: 1, arbitrary: countryComparison },
  { weight: 2, arbitrary: signComparison },
) as unknown as fc.Arbitrary<Condition & { readonly fact: FactId }>;

const eitherOf = fc
  .uniqueArray(comparison, { minLength: 2, maxLength: 3, selector: ({ fact }) => fact })
  .map((members): Condition => ({ eitherOf: members }));

function condition(levels: number, earlierRules: readonly string[]): fc.Arbitrary<Condition> {
  const leaves: fc.Arbitrary<Condition>[] = [comparison, comparison];
  if (earlierRules.length > 0) leaves.push(fc.constantFrom(...earlierRules).map((rule) => ({ rule })));
  const leaf = fc.oneof(...leaves);
  if (levels === 0) return leaf;
  const inner = condition(levels - 1, earlierRules);
  const members = fc.array(inner, { minLength: 1, maxLength: 4 });
  return fc.oneof(
    { weight: 1, arbitrary: leaf },
    { weight: 3, arbitrary: members.map((all): Condition => ({ all })) },
    { weight: 3, arbitrary: members.map((any): Condition => ({ any })) },
    { weight: 2, arbitrary: inner.map((not): Condition => ({ not })) },
    { weight: 2, arbitrary: eitherOf },
  );
}

const effects = fc.constantFrom<readonly [Effect, Lifts | null]>(
  ['stop', 'season'],
  ['stop', 'days'],
  ['hold', 'hours'],
  ['hold', 'days'],
  ['hold', 'person'],
  ['advise', null],
);

function rule(index: number): fc.Arbitrary<Rule> {
  const earlier = Array.from({ length: Math.min(index, 12) }, (_, back) => ruleId(index - 1 - back));
  return fc
    .tuple(condition(2, earlier), effects, fc.constantFrom('law', 'label', 'water', 'practice'))
    .map(([when, [effect, lifts], authority]) => ({
      id: ruleId(index),
      topic: 'generated',
      effect,
      authority,
      lifts,
      protectedByPractice: false,
      source: 'invented',
      why: { en: 'test' },
      when,
      text: {},
    }));
}

function ruleId(index: number): string {
  return `r${String(index).padStart(3, '0')}`;
}

/** A rule set of this many rules; each may name up to twelve before it, so that there is no circle. */
export function ruleSet(size: number): fc.Arbitrary<readonly Rule[]> {
  return fc.tuple(...Array.from({ length: size }, (_, index) => rule(index)));
}
