import { describe, expect, test } from 'vitest';
import { pieces } from './pieces.ts';

describe('numbers as written', () => {
  test.each([
    ['9', '{9±0.5}'],
    ['9.2', '{9.2±0.05}'],
    ['.5', '|. {0.5±0.05}'],
    ['120', '{120±5}'],
    ['100', '{100±10}'],
    ['1000', '{1000±100}'],
    ['999999', '{999999±0.5}'],
    ['1,000', '{1000±100}'],
    ['120,000', '{120000±5000}'],
    ['12,5', '{12.5±0.05}'],
    ['8,25', '{8.25±0.005}'],
    ['9-10', '{9.5[9..10]±1}'],
    ['½', '{0.5±0.05}'],
    ['8½', '{8.5±0.05}'],
    ['8 ½', '{8.5±0.05}'],
    ['1/2', '{0.5±0.05}'],
    ['1/8', '{0.125±0.05}'],
    ['8 1/2', '{8.5±0.05}'],
    ['9 0', '{9±0.5} {0±0.5}'],
    ['9 1', '{9±0.5} {1±0.5}'],
    ['9 0.25', '{9±0.5} {0.25±0.005}'],
    ['+5', '{5±0.5}'],
    ['-1', '{-1±0.5}'],
    ['(-1)', '|( {-1±0.5} |)'],
    ['at:-1', 'at {-1±0.5}'],
    ['@-1', 'at {-1±0.5}'],
    ['x -1', 'x {-1±0.5}'],
    ['a-1', 'a {1±0.5}'],
    ['- 1', '{1±0.5}'],
    ['9:', '{9±0.5}'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });

  test.each([
    '0700',
    '07700 900123',
    '1234,5',
    '1,00,000',
    '1000000',
    '1.23456',
    '12:30',
    '12.5.2019',
    '10-9',
    '9-9',
    '8-9-10',
    '3/2',
    '2/2',
    '1/9',
    '12/1',
  ])('"%s" is no quantity: a date, a telephone number, or written wrongly', (text) => {
    expect(pieces(text)).toMatch(/^\{\?\}( \{\?\}| \{900123±0.5\})*$/);
  });

  test.each([
    ['£9', '{?} {?}'],
    ['$9', '{?} {?}'],
    ['#9', '{?} {?}'],
    ['9th', '{?} th'],
    ['9 pm', '{?} pm'],
    ['nine june', '{?} june'],
    ['9 g', '{?} g'],
    ['9 g wide', '{?} g wide'],
    ['a9', 'a {?}'],
    ['row9', 'row {?}'],
  ])('"%s" counts money, a day, an hour or a name', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });

  test.each([
    ['9 g/l', '{9±0.5 g/L}'],
    ['9 g per l', '{9±0.5 g/L}'],
    ['9 g a litre', '{9±0.5 g/L}'],
    ['force9', '{9±0.5 force}'],
    ['gs15', '{15±0.5 bbch}'],
    ['at9', 'at {9±0.5}'],
  ])('"%s" is a quantity', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});

describe('numbers in words', () => {
  test.each([
    ['minus one', '{-1±0.5}'],
    ['minus nine and a half', '{-9.5±0.05}'],
    ['minus 9-10', 'minus {9.5[9..10]±1}'],
    ['minus cracked', 'minus cracked'],
    ['eight and a half', '{8.5±0.05}'],
    ['eight and a quarter', '{8.25±0.05}'],
    ['eight and three quarters', '{8.75±0.05}'],
    ['8.5 and a half', '{8.5±0.05} and a half'],
    ['8-9 and a half', '{8.5[8..9]±0.5} and a half'],
    ['nine point two', '{9.2±0.05}'],
    ['nine point two five', '{9.25±0.005}'],
    ['nine point one two three four five', '{9.1234±0.00005} {5±0.5}'],
    ['nine point twelve', '{9.12±0.005}'],
    ['9 point 99', '{9.99±0.005}'],
    ['9 point 100', '{9±0.5 foreign} {100±10}'],
    ['9 point 2.5', '{9±0.5 foreign} {2.5±0.05}'],
    ['nine point', '{9±0.5 foreign}'],
    ['twenty one', '{21±0.5}'],
    ['twenty zero', '{20±2} {0±0.5}'],
    ['twenty ten', '{20±2} {10±1}'],
    ['nine nine', '{9±0.5} {9±0.5}'],
    ['ten five', '{10±1} {5±0.5}'],
    ['hundred and ten', '{110±5}'],
    ['a hundred and ten metres', '{110±5 m}'],
    ['a hundred', '{100±50}'],
    ['a hundred and', '{100±50} and'],
    ['a hundred and cracked', '{100±50} and cracked'],
    ['a hundred 5', '{100±50} {5±0.5}'],
    ['a thousand', '{1000±500}'],
    ['two hundred', '{200±20}'],
    ['two hundred twenty five', '{225±0.5}'],
    ['two hundred and cracked', '{200±20} and cracked'],
    ['two thousand', '{2000±200}'],
    ['two hundred thousand', '{200000±20000}'],
    ['two thousand three hundred and five', '{2000±200} {305±0.5}'],
    ['thousand thousand', '{1000±100} {1000±100}'],
    ['ninety and five', '{90±5} and {5±0.5}'],
    ['3 hundred', '{300±30}'],
    ['3.5 thousand', '{3500±50}'],
    ['a couple of hundred', 'a {200[150..250]±50}'],
    ['couple thousand', '{2000[1500..2500]±500}'],
    ['a couple of', 'a couple of'],
    ['couple of cracks', 'couple of cracks'],
    ['one', '{1±0.5}'],
    ['one leaf', '{1±0.5 leaves}'],
    ['one or two', '{1.5[1..2]±0.5}'],
    ['one or more', 'one or more'],
    ['one in twenty', '{20±2 1 in}'],
    ['one in 20', '{20±2 1 in}'],
    ['one in the field', 'one in the field'],
    ['one of them', 'one of them'],
    ['this one', 'this one'],
    ['no one', 'no one'],
    ['the air one', 'the air one'],
    ['the air one 9', 'the air one {9±0.5}'],
    ['the air one is', 'the air one is'],
    ['near air one', 'near air {1±0.5}'],
    ['the air one metre', 'the air {1±0.5 m}'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});
