import { describe, expect, test } from 'vitest';
import type { FactDefinition } from '../../../../src/core/facts/types.ts';
import { cellsOf } from '../../../../src/core/rules/mutate/cells.ts';
import { choicePoints, dayPoints, numberPoints, signPoints } from '../../../../src/core/rules/mutate/points.ts';
import type { CompiledComparison, Limit } from '../../../../src/core/rules/types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';

const at = (...values: number[]): Limit[] => values.map((value) => ({ kind: 'number', value }));
const onDays = (...values: number[]): Limit[] => values.map((value) => ({ kind: 'month-day', value }));
const listed = (...values: string[]): Limit[] => [{ kind: 'choices', values }];
const percent: FactDefinition = {
  ...{ label: 'share', type: 'number', unit: '%', range: [0, 100], precision: 0.1 },
  ...{ obtained: ['asked'], goodFor: { kind: 'season' } },
};
const { range: _range, ...open } = percent;
const { precision: _precision, ...whole } = percent;

describe('values that can make a difference', () => {
  test.each<readonly [string, readonly Limit[], FactDefinition, readonly number[]]>([
    ['at a limit and one step either side', at(20), percent, [20, 19.9, 20.1]],
    ['of two limits, those that they share once', at(20, 20.1), percent, [20, 19.9, 20.1, 20.2]],
    ['within the range alone, both ends of it too', at(0, 100), percent, [0, 0.1, 100, 99.9]],
    ['below any limit where there is no range', at(0), open, [0, -0.1, 0.1]],
    ['in whole steps where no precision is told', at(20), whole, [20, 19, 21]],
    ['none of another kind of limit', onDays(1001), percent, []],
  ])('are numbers %s, cheapest first', (_, limits, definition, values) => {
    const plain = numberPoints(limits, definition).filter(({ cost }) => cost === 0);
    expect(plain.map(({ given }) => given)).toEqual(values);
    expect(plain.map(({ value }) => value)).toEqual(
      values.map((value) => ({ type: 'number', value, low: value, high: value })),
    );
  });

  test('are bands between any two of these numbers, dearer than a number alone', () => {
    const bands = numberPoints(at(20), percent).filter(({ cost }) => cost !== 0);
    const given = [
      { value: 20, low: 20, high: 20.1 },
      { value: 19.9, low: 19.9, high: 20 },
      { value: 19.9, low: 19.9, high: 20.1 },
    ];
    expect(bands).toEqual(given.map((band) => ({ value: { type: 'number', ...band }, given: band, cost: 2 })));
  });

  test.each<readonly [string, readonly Limit[], number, readonly string[]]>([
    [
      'the day of a limit, the one before and the one after',
      onDays(1001),
      2026,
      ['2026-10-01', '2026-09-30', '2026-10-02'],
    ],
    [
      'of the first day of the year, the last of the same year',
      onDays(101),
      2026,
      ['2026-01-01', '2026-12-31', '2026-01-02'],
    ],
    ['of the last, the first', onDays(1231), 2026, ['2026-12-31', '2026-12-30', '2026-01-01']],
    [
      'near the end of February, 29 February of the next leap year too',
      onDays(228),
      2026,
      ['2026-02-28', '2026-02-27', '2026-03-01', '2028-02-29'],
    ],
    ['of 1 March, the same', onDays(301), 2027, ['2027-03-01', '2027-02-28', '2027-03-02', '2028-02-29']],
    ['of 27 February, not', onDays(227), 2026, ['2026-02-27', '2026-02-26', '2026-02-28']],
    ['of 2 March, not', onDays(302), 2026, ['2026-03-02', '2026-03-01', '2026-03-03']],
    ['but not of a year that is none, as 2100', onDays(228), 2098, ['2098-02-28', '2098-02-27', '2098-03-01']],
    ['in a leap year, its own', onDays(228), 2028, ['2028-02-28', '2028-02-27', '2028-02-29']],
    ['each once', onDays(1001, 1002), 2026, ['2026-10-01', '2026-09-30', '2026-10-02', '2026-10-03']],
    ['none of another kind of limit', at(20), 2026, []],
  ])('are days: %s', (_, limits, year, days) => {
    expect(dayPoints(limits, year)).toEqual(days.map((iso) => ({ value: { type: 'date', iso }, given: iso, cost: 0 })));
  });

  test('are choices alone, every two, and all; of countries those that are named and another', () => {
    const given = (limits: readonly Limit[], fact: string) =>
      choicePoints(limits, factDefinition(fact)).map(({ given: one, cost }) => [one, cost]);
    expect(given(listed('dry'), 'field.drained')).toEqual([
      ['yes', 0],
      ['no', 0],
      [['yes', 'no'], 2],
      [['yes', 'no'], 2],
    ]);
    expect(given([...listed('GB-ENG', 'FR'), ...listed('FR')], 'field.country')).toEqual([
      ['GB-ENG', 0],
      ['FR', 0],
      ['ZZ', 0],
      [['GB-ENG', 'FR'], 2],
      [['GB-ENG', 'ZZ'], 2],
      [['FR', 'ZZ'], 2],
      [['GB-ENG', 'FR', 'ZZ'], 2],
    ]);
    expect(choicePoints(listed('no'), factDefinition('field.drained'))[0]).toEqual({
      value: { type: 'choice', possible: ['yes'] },
      given: 'yes',
      cost: 0,
    });
  });

  test('are signs there, perhaps and not, in every combination of those that are read', () => {
    expect(signPoints([...listed('cracked'), ...listed('cracked'), ...at(2)])).toEqual([
      { value: { type: 'signs', present: [], possible: [] }, given: [], cost: 0 },
      { value: { type: 'signs', present: ['cracked'], possible: ['cracked'] }, given: ['cracked'], cost: 0 },
      {
        value: { type: 'signs', present: [], possible: ['cracked'] },
        given: { value: [], possible: ['cracked'] },
        cost: 2,
      },
    ]);
    const two = signPoints(listed('cracked', 'sticky'));
    expect(two).toHaveLength(9);
    expect(two.map(({ given }) => given)).toContainEqual({ value: ['cracked'], possible: ['cracked', 'sticky'] });
  });
});

describe('one cell for each way in which comparisons come out, the plainest, unknown last', () => {
  const compared = (op: CompiledComparison['op'], limit: Limit): CompiledComparison => ({
    ...{ kind: 'comparison', name: 'c', fact: 'any.fact', parameter: 'p', unit: null },
    ...{ op, limit },
  });
  const cells = (definition: FactDefinition, ...comparisons: CompiledComparison[]) =>
    cellsOf(comparisons, definition, 2026).map(({ given, cost }) => [given, cost]);

  test('of a number: not, yes, a band across, and unknown', () => {
    expect(cells(percent, compared('above', { kind: 'number', value: 20 }))).toEqual([
      [20, 0],
      [20.1, 0],
      [{ value: 20, low: 20, high: 20.1 }, 2],
      [null, 3],
    ]);
  });

  test('of a day, which is always known', () => {
    expect(cells(factDefinition('date'), compared('atLeast', { kind: 'month-day', value: 1001 }))).toEqual([
      ['2026-10-01', 0],
      ['2026-09-30', 0],
    ]);
  });

  test('of a choice and of signs', () => {
    expect(cells(factDefinition('soil.feel'), compared('is', { kind: 'choices', values: ['moist'] }))).toEqual([
      ['dry', 0],
      ['moist', 0],
      [['dry', 'moist'], 2],
      [null, 3],
    ]);
    expect(cells(factDefinition('soil.surface'), compared('has', { kind: 'choices', values: ['sticky'] }))).toEqual([
      [[], 0],
      [['sticky'], 0],
      [{ value: [], possible: ['sticky'] }, 2],
      [null, 3],
    ]);
  });

  test('a cell is known as one that somebody said', () => {
    const [first] = cellsOf([compared('above', { kind: 'number', value: 20 })], percent, 2026);
    expect(first?.resolved).toEqual({
      ...{ known: true, source: 'said', at: 0, goodUntil: null },
      ...{ type: 'number', value: 20, low: 20, high: 20 },
    });
  });
});
