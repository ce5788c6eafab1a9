import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../../src/core/facts/types.ts';
import { movedTighter } from '../../../../src/core/rules/overlay/protect/protect-parameters.ts';
import { liesWithin, splitAnswer } from '../../../../src/core/rules/overlay/protect/split-answers.ts';
import type { AnswerChoice } from '../../../../src/core/rules/pack-types.ts';
import type { Parameter, Tighter } from '../../../../src/core/units/parameter.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { parameter } from './overlay-of.ts';

const [wind, gust, feel] = ['wind.boomKmh', 'wind.gustKmh', 'soil.feel'] as const;
const band = (low: number, high: number): Reading => ({ type: 'number', value: low, low, high });
const answer = (gives: Readonly<Record<string, Reading>>): AnswerChoice => ({ id: 'a', label: {}, gives });
const dry: Reading = { type: 'choice', possible: ['dry'] };
const unsure: Reading = { type: 'choice', possible: ['dry', 'moist'] };
const facts = new Set([wind, gust, feel]);

describe('answers that share out the band of one', () => {
  const winds = (...bands: (readonly [number, number])[]) =>
    bands.map(([low, high]) => answer({ [wind]: band(low, high) }));
  const split = (whole: AnswerChoice, parts: readonly AnswerChoice[]) =>
    splitAnswer(whole, parts, facts, factDefinition);

  // Wind is kept to 0.01 km/h.
  test.each<readonly [string, readonly (readonly [number, number])[], boolean]>([
    [
      'two that meet one step apart',
      [
        [0, 5],
        [5.01, 10],
      ],
      true,
    ],
    [
      'in any order',
      [
        [5.01, 10],
        [0, 5],
      ],
      true,
    ],
    [
      'three',
      [
        [0, 2],
        [2.01, 4],
        [4.01, 10],
      ],
      true,
    ],
    [
      'two that lie over each other',
      [
        [0, 6],
        [5, 10],
      ],
      true,
    ],
    [
      'two that share a value',
      [
        [0, 5],
        [5, 10],
      ],
      true,
    ],
    [
      'two with a step between them left out',
      [
        [0, 5],
        [5.02, 10],
      ],
      false,
    ],
    [
      'two that begin late',
      [
        [0.01, 5],
        [5.01, 10],
      ],
      false,
    ],
    [
      'two that end early',
      [
        [0, 5],
        [5.01, 9.99],
      ],
      false,
    ],
    ['one alone, though it has the whole band', [[0, 10]], false],
    ['none', [], false],
    [
      'two that are both the whole: no number is shared out',
      [
        [0, 10],
        [0, 10],
      ],
      false,
    ],
  ])('%s: %s', (_, bands, isWhole) => {
    expect(split(answer({ [wind]: band(0, 10) }), winds(...bands))).toBe(isWhole);
  });

  const both = (low: number, high: number, from: number, to: number) =>
    answer({ [wind]: band(low, high), [gust]: band(from, to), [feel]: dry });
  const whole = both(0, 10, 0, 20);
  const corners = [both(0, 5, 0, 8), both(0, 5, 8.01, 20), both(5.01, 10, 0, 8), both(5.01, 10, 8.01, 20)];

  test('over two numbers hold every corner between them', () => {
    expect(split(whole, corners)).toBe(true);
    for (const left of corners)
      expect(
        split(
          whole,
          corners.filter((one) => one !== left),
        ),
      ).toBe(false);
    expect(split(whole, [both(0, 5, 0, 20), both(5.01, 10, 0, 20)])).toBe(true);
  });

  test('share out numbers alone: what is no number in one of them is no part', () => {
    expect(split(whole, [...corners.slice(0, 3), answer({ [wind]: band(5.01, 10), [gust]: dry, [feel]: dry })])).toBe(
      false,
    );
    expect(split(answer({ [feel]: unsure }), [answer({ [feel]: dry }), answer({ [feel]: dry })])).toBe(false);
  });
});

describe('a part of an answer lies within it', () => {
  const within = (part: Record<string, Reading>, whole: Record<string, Reading>) =>
    liesWithin(answer(part), answer(whole), facts);
  test.each<readonly [string, Record<string, Reading>, Record<string, Reading>, boolean]>([
    ['the same', { [wind]: band(0, 5), [feel]: dry }, { [feel]: dry, [wind]: band(0, 5) }, true],
    ['a part of a band', { [wind]: band(1, 4) }, { [wind]: band(0, 5) }, true],
    ['up to both ends', { [wind]: band(0, 4) }, { [wind]: band(0, 5) }, true],
    ['one value of a band', { [wind]: { type: 'number', value: 5 } }, { [wind]: band(0, 5) }, true],
    ['past the low end', { [wind]: band(-0.01, 4) }, { [wind]: band(0, 5) }, false],
    ['past the high end', { [wind]: band(1, 5.01) }, { [wind]: band(0, 5) }, false],
    ['fewer choices', { [feel]: dry }, { [feel]: unsure }, false],
    ['a fact that the whole does not give', { [wind]: band(0, 5), [gust]: band(0, 5) }, { [wind]: band(0, 5) }, false],
    ['without a fact that the whole gives', {}, { [wind]: band(0, 5) }, false],
    [
      'a part of one and past another',
      { [wind]: band(1, 2), [gust]: band(0, 9) },
      { [wind]: band(0, 5), [gust]: band(0, 8) },
      false,
    ],
    ['another in what nobody protects', { 'crop.rows': dry }, { 'crop.rows': unsure }, true],
    [
      'the same readings with keys in another order',
      { [feel]: { possible: ['dry'], type: 'choice' } as Reading },
      { [feel]: dry },
      true,
    ],
  ])('%s', (_, part, whole, lies) => {
    expect(within(part, whole)).toBe(lies);
  });
});

describe('a value moved the way that the pack calls tighter', () => {
  const version = (value: Parameter['value'], tighter: Tighter) =>
    ({ ...parameter('p', value), value, tighter, unit: 'u', validFrom: '2026-01-01' }) as Parameter;
  test.each<readonly [Tighter, Parameter['value'], Parameter['value'], boolean]>([
    ['lower', 10, 9, true],
    ['lower', 10, 10, true],
    ['lower', 10, 11, false],
    ['higher', 10, 11, true],
    ['higher', 10, 10, true],
    ['higher', 10, 9, false],
    ['lower', '10-01', '09-30', true],
    ['lower', '10-01', '10-02', false],
    ['higher', '10-01', '10-02', true],
    ['higher', '10-01', '09-30', false],
    ['neither', 10, 9, false],
    ['neither', 10, 11, false],
    ['fewer', ['a', 'b'], ['b'], true],
    ['fewer', ['a', 'b'], ['b', 'a'], true],
    ['fewer', ['a', 'b'], ['b', 'c'], false],
    ['more', ['a', 'b'], ['b', 'a', 'c'], true],
    ['more', ['a', 'b'], ['a'], false],
    ['neither', ['a', 'b'], ['a'], false],
    ['lower', 10, '09-30', false],
    ['higher', ['a'], 9, false],
    ['fewer', 10, 9, false],
  ])('%s: from %j to %j is tighter: %s', (tighter, from, to, isTighter) => {
    expect(movedTighter({ before: version(from, tighter), after: version(to, tighter) })).toBe(isTighter);
  });

  test('none that was not there or is gone', () => {
    expect(movedTighter({ before: null, after: version(9, 'lower') })).toBe(false);
    expect(movedTighter({ before: version(9, 'lower'), after: null })).toBe(false);
  });
});
