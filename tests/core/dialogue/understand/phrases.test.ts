import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { phraseBook, words } from '../../../../src/core/dialogue/understand/phrases.ts';

type Entries = readonly (readonly [pattern: string, value: string])[];

/** What is found at a word of a text, as `value/length`; null where nothing is. */
function foundIn(entries: Entries, text: string, { at = 0, gaps = '' } = {}): string | null {
  const said = text.split(' ');
  const book = phraseBook(entries, (a, b) => `${a}+${b}`, new Set(gaps.split(' ')));
  const found = book.longestAt((place) => said[place] ?? '', at);
  return found && `${found.value}/${found.length}`;
}

describe('a book of phrases', () => {
  test.each([
    ['drain|drains is|are? running', 'drains are running', 'v/3'],
    ['drain|drains is|are? running', 'drain running now', 'v/2'],
    ['drain|drains is|are? running', 'drains are', null],
    ['drain|drains is|are? running', 'are running', null],
    ['very? wet', 'wet', 'v/1'],
    ['wet through? and? through?', 'wet and dry', 'v/2'],
    ['wet through? and? through?', 'wet', 'v/1'],
    ['at? all?', 'all', 'v/1'],
    ['at? all?', 'none', null],
    ['', '', null],
    ['a|', 'a', 'v/1'],
  ])('of "%s" finds in "%s" %j', (pattern, text, found) => {
    expect(foundIn([[pattern, 'v']], text)).toBe(found);
  });

  test('finds the longest phrase, not the first; at the place asked for, not before it', () => {
    const entries: Entries = [
      ['not', 'no'],
      ['not sure', 'unsure'],
      ['sure', 'yes'],
    ];
    expect(foundIn(entries, 'not sure')).toBe('unsure/2');
    expect(foundIn(entries, 'not surely')).toBe('no/1');
    expect(foundIn(entries, 'not sure', { at: 1 })).toBe('yes/1');
    expect(foundIn(entries, 'not sure', { at: 2 })).toBeNull();
  });

  test('joins what several patterns give the same phrase, in the order of the patterns; without a way to join, the last stands', () => {
    const entries: Entries = [
      ['dry|wet', 'first'],
      ['very? wet', 'second'],
      ['dry', 'third'],
    ];
    expect([foundIn(entries, 'dry'), foundIn(entries, 'wet'), foundIn(entries, 'very wet')]).toEqual([
      'first+third/1',
      'first+second/1',
      'second/2',
    ]);
    expect(phraseBook(entries).longestAt((place) => (place === 0 ? 'dry' : ''), 0)?.value).toBe('third');
  });

  test.each([
    ['sticks to your boots', 'v/4'],
    ['sticks right to your boots', 'v/5'],
    ['sticks right to your very boots', 'v/6'],
    ['sticks right to your very own boots', null],
    ['sticks quickly to your boots', null],
    ['right sticks to your boots', null],
    ['sticks to your boots right', 'v/4'],
  ])('with words that may stand between: "%s" is %j', (text, found) => {
    const gaps = { gaps: 'right very own' };
    expect(foundIn([['sticks to your boots', 'v']], text, gaps)).toBe(found);
  });

  test('a first word of fewer than four letters belongs to what stands next to it', () => {
    const entries: Entries = [
      ['not sticky', 'v'],
      ['isnt sticky', 'v'],
      ['not sticky now', 'longer'],
    ];
    expect(foundIn(entries, 'not very sticky', { gaps: 'very' })).toBeNull();
    expect(foundIn(entries, 'isnt very sticky', { gaps: 'very' })).toBe('v/3');
    expect(foundIn(entries, 'not sticky very now', { gaps: 'very' })).toBe('longer/4');
  });

  test('of a pattern that stands for a hundred million phrases is made, and finds one', () => {
    const part = Array.from({ length: 10 }, (_, at) => `w${at}`).join('|');
    expect(foundIn([[Array.from({ length: 8 }, () => part).join(' '), 'v']], 'w0 w1 w2 w3 w4 w5 w6 w9')).toBe('v/8');
  });
});

/** Every phrase of a pattern, written out. */
function writtenOut(pattern: string): readonly string[] {
  let phrases = [''];
  for (const part of pattern.split(' ')) {
    const either = part.replace('?', '').split('|');
    const longer = phrases.flatMap((phrase) => either.map((word) => `${phrase} ${word}`.trim()));
    phrases = part.endsWith('?') ? [...phrases, ...longer] : longer;
  }
  return phrases;
}

test('what is found is the longest beginning of the text that is one of the phrases written out', () => {
  const word = fc.constantFrom('a', 'b', 'c');
  const part = fc
    .tuple(fc.uniqueArray(word, { minLength: 1, maxLength: 2 }), fc.boolean())
    .map(([either, isOptional]) => `${either.join('|')}${isOptional ? '?' : ''}`);
  const pattern = fc.array(part, { minLength: 1, maxLength: 4 }).map((parts) => parts.join(' '));
  fc.assert(
    fc.property(
      fc.array(pattern, { maxLength: 4 }),
      fc.array(word, { minLength: 1, maxLength: 6 }),
      (patterns, said) => {
        const beginnings = said.map((_, at) => said.slice(0, at + 1).join(' '));
        const longest = beginnings.findLast((one) => patterns.some((each) => writtenOut(each).includes(one)));
        const values = patterns.flatMap((each, at) => (writtenOut(each).includes(longest ?? '') ? [String(at)] : []));
        const entries = patterns.map((each, at) => [each, String(at)] as const);
        expect(foundIn(entries, said.join(' '))).toBe(
          longest === undefined ? null : `${values.join('+')}/${longest.split(' ').length}`,
        );
      },
    ),
    { numRuns: 500 },
  );
});

test('patterns written one after another are parted by commas, over several lines, with what is put in', () => {
  const often = 'always|often';
  expect(words`wet,  very
     wet , ${often} wet,${'drenched'}`).toEqual(['wet', 'very wet', 'always|often wet', 'drenched']);
});
