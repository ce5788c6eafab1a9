import { describe, expect, test } from 'vitest';
import { cellSpaceOf, someCell } from '../../../../src/core/rules/analyse/every-cell.ts';
import { placesIn, sayComparison, sayComparisons } from '../../../../src/core/rules/analyse/places.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { comparisonsIn } from '../../../../src/core/rules/reads.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { generatedParameters } from '../../../generators/conditions.ts';
import { holdRule } from '../../../generators/small.ts';

const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
const dry: Condition = { fact: 'soil.feel', oneOf: ['dry', 'moist'] };
const late: Condition = { fact: 'date', atLeast: 'day2' };
const compiled = (...conditions: Condition[]) => {
  const rules = conditions.map((when, at) => holdRule(`r${at}`, when));
  const named = holdRule('zz-named', { any: [windy, dry] });
  const pack = { ...ofCore, rules: [...rules, named], parameters: generatedParameters };
  return compileRules(pack, '2026-11-06').rules.slice(0, conditions.length);
};

describe('the place in the files', () => {
  const places = () =>
    placesIn(
      new Map<string, unknown>([
        ['a.rules.json', { rules: [{ id: 'r0' }, 'no rule', { id: 'other' }] }],
        [
          'b.rules.json',
          { rules: [{ id: 'later' }, { id: 'r0' }], parameters: [{ id: 'odd', validFrom: '2020-01-01' }] },
        ],
        [
          'parameters.json',
          {
            parameters: [
              { id: 'limit', validFrom: '2020-01-01' },
              { id: 'limit', validFrom: '2026-01-01' },
            ],
          },
        ],
        ['questions.json', { questions: [{ id: 'wind' }] }],
        ['list.json', ['rules']],
        ['odd.json', { rules: { id: 'no-list' } }],
        ['nothing.json', null],
      ]),
    );
  const nowhere = { file: 'pack.json', path: [] };

  test.each([
    ['a rule, the first of its id', () => places().rule('r0', 'when'), 'a.rules.json', ['rules', 0, 'when']],
    ['a rule behind what is no rule', () => places().rule('other'), 'a.rules.json', ['rules', 2]],
    ['a rule of another file', () => places().rule('later'), 'b.rules.json', ['rules', 0]],
    ['a version of a parameter', () => places().parameter('limit', '2026-01-01'), 'parameters.json', ['parameters', 1]],
    ['any of it', () => places().parameter('limit'), 'parameters.json', ['parameters', 0]],
    [
      'a version that there is none of',
      () => places().parameter('limit', '2030-01-01'),
      'parameters.json',
      ['parameters', 0],
    ],
    ['a question', () => places().question('wind'), 'questions.json', ['questions', 0]],
    ['a rule that there is none of', () => places().rule('no-list', 'when'), 'pack.json', ['when']],
  ])('of %s', (_, find, file, path) => {
    expect(find()).toEqual({ file, path });
  });

  test('of what is nowhere is the pack', () => {
    expect([places().question('rain'), places().parameter('none')]).toEqual([nowhere, nowhere]);
  });

  test.each<readonly [string, Condition, readonly (readonly (string | number)[])[]]>([
    ['alone', windy, [['above']]],
    [
      'in groups',
      { all: [dry, { any: [{ not: windy }, late] }] },
      [
        ['all', 0, 'oneOf'],
        ['all', 1, 'any', 0, 'not', 'above'],
        ['all', 1, 'any', 1, 'atLeast'],
      ],
    ],
    [
      'of a rule that is named, where it is named',
      { all: [late, { rule: 'zz-named' }] },
      [
        ['all', 0, 'atLeast'],
        ['all', 1, 'rule'],
        ['all', 1, 'rule'],
      ],
    ],
    ['of a rule that is named alone', { rule: 'zz-named' }, [['rule'], ['rule']]],
  ])('of a comparison %s', (_, when, paths) => {
    const [rule] = compiled(when);
    const found = comparisonsIn(rule!.condition).map((one) => places().comparison(rule!, one));
    expect(found).toEqual(paths.map((path) => ({ file: 'a.rules.json', path: ['rules', 0, 'when', ...path] })));
  });
});

test('comparisons are said with their limits: numbers, days, lists and choices', () => {
  const [rule] = compiled({
    all: [
      windy,
      dry,
      late,
      { fact: 'date', below: 'day0' },
      { fact: 'field.country', noneOf: { parameter: 'countries' } },
    ],
  });
  const [first] = comparisonsIn(rule!.condition);
  expect(sayComparison(first!)).toBe('wind.boomKmh above n0l1 = 9.6');
  expect(sayComparisons(rule!.condition)).toBe(
    'wind.boomKmh above n0l1 = 9.6, soil.feel oneOf dry/moist, date atLeast day2 = 08-01, date below day0 = 01-31, field.country noneOf countries = GB-ENG/GB-SCT',
  );
  expect(sayComparisons([first!, first!], ' and ')).toBe(
    'wind.boomKmh above n0l1 = 9.6 and wind.boomKmh above n0l1 = 9.6',
  );
});

describe('every combination of the cells of some rules', () => {
  const signs: Condition = { all: Array.from({ length: 11 }, (_, at) => ({ fact: 'soil.surface', has: `sign${at}` })) };
  test('is that of the facts of all of them, each told apart by all comparisons of it', () => {
    const { facts, cells, size } = cellSpaceOf(
      compiled(windy, { all: [dry, { fact: 'wind.boomKmh', above: 'n0l2' }] }),
      factDefinition,
    );
    expect([facts, cells.map((one) => one.length), size]).toEqual([['wind.boomKmh', 'soil.feel'], [3, 2], 6]);
  });

  test('is looked at once each, until the visitor has found what it looks for', () => {
    const space = cellSpaceOf(compiled({ all: [windy, dry] }), factDefinition);
    const seen: string[] = [];
    const visit = (stop: number) => (known: Readonly<Record<string, unknown>>) => {
      seen.push(JSON.stringify(Object.values(known)));
      return seen.length === stop;
    };
    expect(someCell(space, visit(9))).toBe(false);
    expect([seen.length, new Set(seen).size]).toEqual([4, 4]);
    seen.length = 0;
    expect(someCell(space, visit(3))).toBe(true);
    expect(seen).toHaveLength(3);
  });

  test('is without end where a fact alone has too many', () => {
    const { size, cells } = cellSpaceOf(compiled(signs), factDefinition);
    expect([size, cells]).toEqual([Number.POSITIVE_INFINITY, [[]]]);
  });
});
