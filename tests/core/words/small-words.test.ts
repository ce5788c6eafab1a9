import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { benchWordsOf } from '../../../src/core/words/bench-words.ts';
import { cardWordsOf } from '../../../src/core/words/card-words.ts';
import { catalogueOf, languageCodes } from '../../../src/core/words/catalogue.ts';
import { compareWordsOf } from '../../../src/core/words/compare-words.ts';
import { fillText } from '../../../src/core/words/fill.ts';
import { describeAuthority, describeOutcome } from '../../../src/core/words/labels.ts';
import { marked, showHigh, showLow, showNumber, showWhole } from '../../../src/core/words/numbers.ts';
import { describeDue, describeNext } from '../../../src/core/words/practice-due.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { secondsOf, showAgo, showDay, showDayOfYear, showMonthDay, showTime } from '../../../src/core/words/times.ts';
import { capital, joinWords, unitSuffix } from '../../../src/core/words/units.ts';

const en = catalogueOf('en');
const de = catalogueOf('de');

describe('the words of a language', () => {
  const parts = [catalogueOf, benchWordsOf, cardWordsOf, compareWordsOf, practiceWordsOf];
  test.each(['xx', '', 'toString', '__proto__', 'constructor'])(
    'that there is none of ("%s") are English',
    (language) => {
      for (const part of parts) expect(part(language)).toBe(part('en'));
    },
  );

  test('are those of the language itself, English first', () => {
    expect(languageCodes.slice(0, 2)).toEqual(['en', 'de']);
    for (const part of parts) expect(part('de')).not.toBe(part('en'));
    expect([catalogueOf('de').language, catalogueOf('en').language]).toEqual(['de', 'en']);
  });
});

describe('a number', () => {
  test.each([
    [9.25, 1, [], '9.3'],
    [9.25, 0, [], '9'],
    [9, 1, [], '9.0'],
    [-0.04, 1, [0], '-0.04'],
    [10.04, 1, [10], '10.04'],
    [10.04, 1, [10, 12], '10.04'],
    [10.04, 1, [12, 10], '10.04'],
    [9.96, 1, [10], '9.96'],
    [10.004, 1, [10], '10.004'],
    [10, 1, [10], '10.0'],
    // Never more than four decimals, even where that puts it on the limit.
    [10.00001, 1, [10], '10.0000'],
    [10.00001, 4, [10], '10.0000'],
    [1.23456, 4, [], '1.2346'],
  ])('%d to %i places beside %j is shown as %s', (value, places, limits, shown) => {
    expect(showNumber(en, value, places, limits)).toBe(shown);
    expect(showNumber(de, value, places, limits)).toBe(shown.replace('.', ','));
  });

  test('may be told without limits', () => {
    expect(showNumber(en, 10.04, 1)).toBe('10.0');
  });

  test.each([
    [1.26, 1, '1.2', '1.3'],
    [-1.26, 1, '-1.3', '-1.2'],
    [2, 0, '2', '2'],
  ])('%d as the end of a band is rounded away from the middle', (value, places, low, high) => {
    expect([showLow(en, value, places), showHigh(en, value, places)]).toEqual([low, high]);
    expect([showLow(de, value, places), showHigh(de, value, places)]).toEqual([
      low.replace('.', ','),
      high.replace('.', ','),
    ]);
  });

  test.each([
    [5, 0, '5'],
    [5, 2, '5.00'],
    [5.25, 0, '5.25'],
    [5.25, 1, '5.25'],
    [5.123456, 0, '5.1235'],
    [0.00001, 0, '0'],
  ])('%d with at least %i decimals keeps those that it has: %s', (value, least, shown) => {
    expect(showWhole(en, value, least)).toBe(shown);
    if (least === 0) expect(showWhole(en, value)).toBe(shown);
  });

  test('as a program writes it gets the mark of the language', () => {
    expect([marked(en, '1.5'), marked(de, '1.5'), marked(de, '15')]).toEqual(['1.5', '1,5', '15']);
  });

  test.each<[string | null, string, string]>([
    [null, '5', ''],
    ['C', '5', ' C'],
    ['days', '1', ' day'],
    ['days', '1.0', ' days'],
    ['days', '', ' days'],
    ['C', '1', ' C'],
    ['list', '', ''],
    ['km/h', '3', ' km/h'],
  ])('of unit %s, written "%s", is followed by "%s"', (unit, number, suffix) => {
    expect(unitSuffix(unit, en, number)).toBe(suffix);
    if (number === '') expect(unitSuffix(unit, en)).toBe(suffix);
  });
});

test.each([
  [[], ''],
  [['a'], 'a'],
  [['a', 'b'], 'a and b'],
  [['a', 'b', 'c'], 'a, b and c'],
])('%j in a row', (items, text) => {
  expect(joinWords(items, 'and')).toBe(text);
});

test.each([
  ['soil', 'Soil'],
  ['', ''],
  ['ÄB', 'ÄB'],
  ['übers', 'Übers'],
])('"%s" at the start of a sentence is "%s"', (text, shown) => {
  expect(capital(text)).toBe(shown);
});

test.each([
  ['{a} and {b}', 'x and {b}'],
  ['{a}{a}', 'xx'],
  ['{} {a b} {{a}}', '{} {a b} {x}'],
])('"%s" is filled with what is given', (template, text) => {
  expect(fillText(template, { a: 'x' })).toBe(text);
});

test('what a rule comes to and who stands behind it have their words', () => {
  expect((['stop', 'hold', 'advise'] as const).map((effect) => describeOutcome(effect, 'met', en))).toEqual([
    'stops it',
    'holds it',
    'worth knowing',
  ]);
  expect(describeOutcome('hold', 'not-met', en)).toBe('does not apply');
  expect(describeOutcome('hold', 'unknown', en)).toBe('not known');
  expect(describeAuthority('label', en)).toBe('label: check the label in hand');
});

describe('a day', () => {
  test.each([
    ['2026-11-06', '6 November 2026', '6. November 2026'],
    ['2026-01-31', '31 January 2026', '31. Januar 2026'],
    ['2026-12-01', '1 December 2026', '1. Dezember 2026'],
    ['2026-13-06', '2026-13-06', '2026-13-06'],
    ['2026-00-06', '2026-00-06', '2026-00-06'],
    ['2026-11', '2026-11', '2026-11'],
    ['2026-11-', '2026-11-', '2026-11-'],
    ['soon', 'soon', 'soon'],
    ['', '', ''],
  ])('%s is told', (iso, english, german) => {
    expect([showDay(iso, en), showDay(iso, de)]).toEqual([english, german]);
    const [inEnglish, inGerman] = [english, german].map((day) => day.replace(' 2026', ''));
    expect([showDayOfYear(iso, en), showDayOfYear(iso, de)]).toEqual([inEnglish, inGerman]);
  });

  test.each([
    ['10-01', '1 October'],
    ['02-29', '29 February'],
    ['13-01', '13-01'],
    ['10', '10'],
  ])('of every year, %s, is told', (monthDay, text) => {
    expect(showMonthDay(monthDay, en)).toBe(text);
  });
});

describe('a moment', () => {
  const noon = secondsOf('2026-11-06T12:00:00Z');
  test('is that of its instant', () => {
    expect(noon).toBe(Date.UTC(2026, 10, 6, 12) / 1000);
    expect(secondsOf('2026-11-06T13:00:00+01:00')).toBe(noon);
  });

  test.each([
    ['Europe/London', noon, '12:00'],
    ['Europe/Berlin', noon, '13:00'],
    ['Europe/London', null, '12:00 on 6 November 2026'],
    ['Europe/London', epochSeconds(noon - 13 * 3600), '12:00 on 6 November 2026'],
    ['Europe/London', epochSeconds(noon + 11 * 3600), '12:00'],
    ['Europe/Berlin', epochSeconds(noon + 11 * 3600), '13:00 on 6 November 2026'],
    ['Europe/London', epochSeconds(noon + 365 * 86_400), '12:00 on 6 November 2026'],
  ])('in %s, read at %s, is told as %s', (zone, now, text) => {
    expect(showTime(noon, zone, now, en)).toBe(text);
  });

  test.each([
    [0, 'just now'],
    [299, 'just now'],
    [300, '5 min ago'],
    [3599, '59 min ago'],
    [3600, '1 h ago'],
    [7199, '1 h ago'],
    [48 * 3600 - 1, '47 h ago'],
    [48 * 3600, '2 days ago'],
    [72 * 3600 - 1, '2 days ago'],
    [72 * 3600, '3 days ago'],
  ])('%i seconds ago is "%s"', (seconds, text) => {
    expect(showAgo(epochSeconds(noon - seconds), noon, en)).toBe(text);
  });
});

describe('when a practice day comes again', () => {
  test.each([
    [-5, 'due now', 'due now'],
    [0, 'due now', 'due now'],
    [1, 'in a minute', 'next in a minute'],
    [60, 'in a minute', 'next in a minute'],
    [61, 'in 2 minutes', 'next in 2 minutes'],
    [59 * 60, 'in 59 minutes', 'next in 59 minutes'],
    [59 * 60 + 1, 'in an hour', 'next in an hour'],
    [89 * 60, 'in an hour', 'next in an hour'],
    [90 * 60, 'in 2 hours', 'next in 2 hours'],
    [23 * 3600, 'in 23 hours', 'next in 23 hours'],
    [23.5 * 3600, 'tomorrow', 'next tomorrow'],
    [35 * 3600, 'tomorrow', 'next tomorrow'],
    [36 * 3600, 'in 2 days', 'next in 2 days'],
  ])('%d seconds from now is "%s", in a list "%s"', (seconds, text, inList) => {
    expect([describeDue(seconds, practiceWordsOf('en')), describeNext(seconds, practiceWordsOf('en'))]).toEqual([
      text,
      inList,
    ]);
  });
});
