import { expect, test } from 'vitest';
import type { FactDefinition, Known } from '../../../../src/core/facts/types.ts';
import { knownCellsOf } from '../../../../src/core/rules/analyse/known-cells.ts';
import type { CompiledComparison, Limit } from '../../../../src/core/rules/types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';

const compared = (op: CompiledComparison['op'], limit: Limit): CompiledComparison => ({
  ...{ kind: 'comparison', name: 'c', fact: 'any.fact', parameter: 'p', unit: null },
  op,
  limit,
});
const number = (op: CompiledComparison['op'], value: number) => compared(op, { kind: 'number', value });
const day = (op: CompiledComparison['op'], value: number) => compared(op, { kind: 'month-day', value });
const choices = (op: CompiledComparison['op'], ...values: string[]) => compared(op, { kind: 'choices', values });

/** What a cell stands for, short. */
function short(cell: Known): unknown {
  if (cell.type === 'number') return cell.value;
  if (cell.type === 'date') return cell.iso.slice(5);
  return cell.type === 'signs' ? cell.present : cell.possible;
}

const cells = (definition: FactDefinition, ...comparisons: CompiledComparison[]) =>
  knownCellsOf(definition, comparisons)?.map(short) ?? null;

const percent: FactDefinition = {
  ...{ label: 'share', type: 'number', unit: '%', range: [0, 100], precision: 0.1 },
  ...{ obtained: ['asked'], goodFor: { kind: 'season' } },
};
const { range: _range, ...open } = percent;
const { precision: _precision, ...whole } = percent;

test.each<readonly [string, FactDefinition, readonly CompiledComparison[], readonly number[]]>([
  ['two at a limit that is left out', percent, [number('above', 20)], [0, 20.1]],
  ['two at a limit that is taken', percent, [number('atLeast', 20)], [0, 20]],
  ['three of two limits', percent, [number('above', 20), number('below', 30)], [0, 20.1, 30]],
  ['one where the limit is past the range', percent, [number('above', 100)], [0]],
  ['one where the whole range is below it', percent, [number('below', 100.1)], [0]],
  ['two where the end of the range alone is at the limit', percent, [number('atLeast', 100)], [0, 100]],
  [
    'values beyond the limits where there is no range',
    open,
    [number('above', 20), number('below', 10)],
    [9.8, 19.9, 20.1],
  ],
  ['whole steps where there is no precision', whole, [number('above', 20)], [0, 21]],
])('a number has %s', (_, definition, comparisons, values) => {
  expect(cells(definition, ...comparisons)).toEqual(values);
});

test.each<readonly [string, readonly CompiledComparison[], readonly string[]]>([
  ['from 1 October', [day('atLeast', 1001)], ['01-01', '10-01']],
  ['after the last of February', [day('above', 229)], ['01-01', '03-01']],
  ['from 29 February to 1 March', [day('atLeast', 229), day('atMost', 301)], ['01-01', '02-29', '03-02']],
  ['before the first day of the year', [day('below', 101)], ['01-01']],
  ['up to the first day of the year', [day('atMost', 101)], ['01-01', '01-02']],
  ['from the last day of the year', [day('atLeast', 1231)], ['01-01', '12-31']],
])('a day has a cell for each way in which it comes out %s', (_, comparisons, days) => {
  expect(cells(factDefinition('date'), ...comparisons)).toEqual(days);
});

test('a choice has a cell for those that come out alike, a country one that nobody named too', () => {
  const feel = factDefinition('soil.feel');
  expect(cells(feel, choices('oneOf', 'dry', 'moist'))).toEqual([['dry'], ['slightly-moist']]);
  expect(cells(feel, choices('is', 'dry'), choices('isNot', 'wet'))).toEqual([['dry'], ['slightly-moist'], ['wet']]);
  const country = factDefinition('field.country');
  expect(cells(country, choices('noneOf', 'GB-ENG', 'XZ'))).toEqual([['GB-ENG'], ['XY']]);
  expect(cells(country, choices('is', 'FR'), choices('is', 'GB-ENG'))).toEqual([['FR'], ['GB-ENG'], ['XZ']]);
});

test('signs have a cell for every set of those asked for, up to ten of them', () => {
  const surface = factDefinition('soil.surface');
  expect(cells(surface, choices('has', 'cracked'))).toEqual([[], ['cracked']]);
  expect(cells(surface, choices('has', 'cracked'), choices('has', 'sticky'))).toEqual([
    [],
    ['sticky'],
    ['cracked'],
    ['cracked', 'sticky'],
  ]);
  const many = (count: number) => Array.from({ length: count }, (_, at) => choices('has', `sign${at}`));
  expect(cells(surface, ...many(10))).toHaveLength(1024);
  expect(cells(surface, ...many(11))).toBeNull();
  expect(cells(surface, ...many(10), ...many(10))).toHaveLength(1024);
});
