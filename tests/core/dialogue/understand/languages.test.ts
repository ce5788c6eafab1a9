import { describe, expect, test } from 'vitest';
import { choiceOfAnswer, choiceOfLabel } from '../../../../src/core/dialogue/understand/answers.ts';
import { isUnderstood, languageOf } from '../../../../src/core/dialogue/understand/languages.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { told } from './told.ts';

const question = (id: string) => shipped.pack.questions.find((one) => one.id === id)!;

describe('the language of a code', () => {
  test('is English for none and for a code that is not known', () => {
    expect(languageOf(undefined)).toBe(languageOf('en'));
    expect(languageOf('xx')).toBe(languageOf('en'));
    expect(languageOf('de')).not.toBe(languageOf('en'));
    expect(told(null, 'soil is moist', [], 'xx')).toBe('soil.feel=moist');
  });

  test.each([
    ['en', true],
    ['de', true],
    ['xx', false],
    ['toString', false],
    ['', false],
  ])('words typed in "%s" are understood: %s', (code, is) => {
    expect(isUnderstood(code)).toBe(is);
  });
});

describe('the choice that a short answer means', () => {
  test.each([
    ['drained', 'yes', 'no'],
    ['protected-area', 'inside', 'outside'],
    ['soil-trend', 'colder', null],
    ['rain-now', null, 'none'],
    ['soil-feel', null, null],
    ['area', null, null],
  ])('of %s: yes is %j, no is %j', (id, yes, no) => {
    expect([choiceOfAnswer(question(id), true), choiceOfAnswer(question(id), false)]).toEqual([yes, no]);
  });
});

describe('the choice whose words a text is', () => {
  test.each([
    ['soil-feel', 'slightly moist', 'slightly-moist'],
    ['soil-feel', 'it is just slightly moist', 'slightly-moist'],
    ['soil-feel', 'as wet as it can hold', 'at-capacity'],
    ['soil-feel', 'at capacity', 'at-capacity'],
    ['slope', 'gentle', 'gentle'],
    ['slope', 'gentle 2 % to under 5 %', 'gentle'],
    ['country', 'northern ireland', 'northern-ireland'],
    ['soil-feel', 'moist and wet', null],
    ['soil-feel', '', null],
    ['soil-feel', 'it is', null],
    ['area', 'moist', null],
  ])('with %s open, "%s": %j', (id, words, choice) => {
    expect(choiceOfLabel(question(id), words, languageOf('en'))).toBe(choice);
  });

  test('is none where two choices have the same words', () => {
    const feel = question('soil-feel');
    const twice = { ...feel, choices: [...feel.choices!, { ...feel.choices![0]!, id: 'parched' }] };
    expect(choiceOfLabel(twice, 'dry', languageOf('en'))).toBeNull();
    expect(choiceOfLabel(twice, 'parched', languageOf('en'))).toBe('parched');
  });
});

describe('a reading back', () => {
  test.each([
    ['drained', 'yes', '!yes'],
    ['drained', 'Yes', '!yes'],
    ['drained', 'no', '!no'],
    ['buffer', 'Not yet', '!no'],
    ['drains-expected', 'Likely', 'soil.drainsExpected7d=yes?'],
    ['soil-feel', 'moist', 'soil.feel=moist'],
    ['soil-temperature', 'yes', '!yes'],
    ['soil-temperature', 'probably', '"probably"'],
  ])('of %s, "%s" is %s', (asked, text, said) => {
    expect(told(asked, text, [], 'en', true)).toBe(said);
  });
});

test('a piece of sixty words is read; a longer one, which nobody says in a breath, is not', () => {
  expect(told(null, `soil is moist${' here'.repeat(57)}`)).toBe('soil.feel=moist');
  expect(told(null, `soil is moist${' here'.repeat(58)}`)).toBe(`"soil is moist${' here'.repeat(58)}"`);
});
