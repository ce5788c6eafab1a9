import { describe, expect, test } from 'vitest';
import { pieces, places } from './pieces.ts';

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

describe('ranges, and how far a number may be out', () => {
  test.each([
    ['9 to 10', '{9.5[9..10]±1}'],
    ['9 or 10', '{9.5[9..10]±1}'],
    ['9 to 9', '{9±0.5} to {9±0.5}'],
    ['10 to 9', '{10±1} to {9±0.5}'],
    ['9 to cracked', '{9±0.5} to cracked'],
    ['9 and 10', '{9±0.5} and {10±1}'],
    ['between 9 and 10', '{9.5[9..10]±1}'],
    ['between 9 and 10 degrees', '{9.5[9..10]±1 deg}'],
    ['from 9 to 10', '{9.5[9..10]±1}'],
    ['from 9 and 10', '{9±0.5} and {10±1}'],
    ['from 9', '{9±0.5}'],
    ['9 C to 10', '{9.5[9..10]±1 C}'],
    ['9 to 10 C', '{9.5[9..10]±1 C}'],
    ['9 C to 10 C', '{9.5[9..10]±1 C}'],
    ['9 C to 10 F', '{9±0.5 C} to {10±1 F}'],
    ['9-10 to 11', '{9.5[9..10]±1} to {11±0.5}'],
    ['9 to 10-11', '{9±0.5} to {10.5[10..11]±0.5}'],
    ['9 plus or minus 1', '{9[8..10]±0.5}'],
    ['9.2 plus or minus 0.1', '{9.2[9.1..9.3]±0.05}'],
    ['9 C plus or minus 1', '{9[8..10]±0.5 C}'],
    ['9 plus or minus 1 C', '{9[8..10]±0.5 C}'],
    ['9 C plus or minus 1 C', '{9[8..10]±0.5 C}'],
    ['9 C plus or minus 1 F', '{9±0.5 C least} or {-1±0.5 F}'],
    ['9 ± 0.3', '{9[8.7..9.3]±0.5}'],
    ['9 +/- 1', '{9[8..10]±0.5}'],
    ['9 give or take 1', '{9[8..10]±0.5}'],
    ['9 give or take half a degree', '{9[8.5..9.5]±0.5 deg}'],
    ['9-10 plus or minus 1', '{9.5[9..10]±1 least} or {-1±0.5}'],
    ['9 plus or minus 1-2', '{9±0.5 least} or minus {1.5[1..2]±0.5}'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});

describe('what stands before and after a number', () => {
  test.each([
    ['about 9', '{9±0.5 near}'],
    ['at least 9', '{9±0.5 least}'],
    ['more than 9', '{9±0.5 above}'],
    ['less than 9', '{9±0.5 below}'],
    ['up to 9', '{9±0.5 most}'],
    ['about at least 9', '{9±0.5 least}'],
    ['at least about 9', 'at least {9±0.5 near}'],
    ['about from 9 to 10', '{9.5[9..10]±1 near}'],
    ['about cracked', 'about cracked'],
    ['9 or more', '{9±0.5 least}'],
    ['9 or less', '{9±0.5 most}'],
    ['9 or so', '{9±0.5 near}'],
    ['about 9 or more', '{9±0.5 near}'],
    ['9 or so degrees', '{9±0.5 deg near}'],
    ['9 C or more degrees', '{9±0.5 C least} degrees'],
    ['9 below zero', '{-9±0.5}'],
    ['9 below 0', '{-9±0.5}'],
    ['9 C below', '{-9±0.5 C}'],
    ['9 below zero C', '{-9±0.5 C}'],
    ['9-10 below', '{-9.5[-10..-9]±1}'],
    ['9 below 5', '{9±0.5} {5±0.5 below}'],
    ['0 below', '{0±0.5}'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});

describe('units', () => {
  test.each([
    ['9m', '{9±0.5 m}'],
    ['9 plants/m2', '{9±0.5 plants/m2}'],
    ['9 m2', '{9±0.5} m2'],
    ['9%', '{9±0.5 %}'],
    ['9°C', '{9±0.5 C}'],
    ['9 deg F', '{9±0.5 F}'],
    ["9'", '{9±0.5 ft}'],
    ['9"', '{9±0.5 in}'],
    ["9 '", '{9±0.5}'],
    ["dogs' 9", 'dogs {9±0.5}'],
    ['force three', '{3±0.5 force}'],
    ['force 3 to 4', '{3.5[3..4]±0.5 force}'],
    ['force', 'force'],
    ['growth stage 15', '{15±0.5 bbch}'],
    ['half a mile', '{0.5±0.05 mile}'],
    ['half a pint', 'half a pint'],
    ['half an hour', 'half an hour'],
    ['half cracked', 'half cracked'],
    ['a couple of metres', '{2±0.2 m}'],
    ['a foot', '{1±0.05 ft}'],
    ['9 minutes', '{9±0.5 time}'],
    ['1 in 20', '{20±2 1 in}'],
    ['2 in 20', '{10±2.5 % slope}'],
    ['1 in the', '{1±0.5} in the'],
    ['3 in 100', '{3±0.5 % slope}'],
    ['3 m in 100', '{3±0.5 % slope}'],
    ['3 in 100 m deep', '{3±0.5 % slope} deep'],
    ['3 metres in a hundred metres wide', '{3±0.5 % slope} wide'],
    ['3 cm in 100', '{3±0.5 cm} in {100±10}'],
    ['3 in 100 cm', '{3±0.5} in {100±10 cm}'],
    ['5 in 10', '{50±5 % slope}'],
    ['6 in 10', '{6±0.5} in {10±1}'],
    ['3 in 15', '{3±0.5} in {15±0.5}'],
    ['2 in 5', '{2±0.5} in {5±0.5}'],
    ['1-3 m in 100', '{2[1..3]±0.5 m} in {100±10}'],
    ['12in', '{12±0.5 in}'],
    ['12 in', '{12±0.5} in'],
    ['at 12 in', 'at {12±0.5 in}'],
    ['at 12 in, 9', 'at {12±0.5 in} |, {9±0.5}'],
    ['at 12 in the soil', 'at {12±0.5} in the soil'],
    ['12 in deep', '{12±0.5 in} deep'],
    ['12 in the', '{12±0.5} in the'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});

describe('words and signs', () => {
  test.each([
    ["it's", 'its'],
    ["farmer's", 'farmer'],
    ["don't", 'dont'],
    ["drains'll run", 'drains will run'],
    ["'ll", 'll'],
    ['approx. wet', 'approx wet'],
    ['wet. approx', 'wet |. approx'],
    ['. wet', '|. wet'],
    ['wet & dry', 'wet and dry'],
    ['~ wet @ all', 'about wet at all'],
    ['wet + dry', 'wet and dry'],
    ['a_b a=b a:b a*b', 'a b a b a b a b'],
    ['wet – dry', 'wet |- dry'],
    ['wet - dry', 'wet |- dry'],
    ['wet -dry', 'wet dry'],
    ['wet-dry', 'wet dry'],
    ['wet\ndry', 'wet |\\n dry'],
    ['wet… dry', 'wet |… dry'],
    ['wet; dry! (damp) ok?', 'wet |; dry |! |( damp |) ok |?'],
    ['^', '{?}'],
    ['5\u00a0m', '{5±0.5 m}'],
    ['\u201cwet\u201d \u2018dry\u2019', 'wet dry'],
    ['don\u2019t don\u02bct don`t don\u00b4t', 'dont dont dont dont'],
    ['5\u2032 5\u2033', '{5±0.5 ft} {5±0.5 in}'],
    ['\u22125 9\u201310 9\u201110 \u20105', '{-5±0.5} {9.5[9..10]±1} {9.5[9..10]±1} {-5±0.5}'],
    ['5\u202f\u00baC 5/m\u00b2 \u22485', '{5±0.5 C} {5±0.5 plants/m2} {5±0.5 near}'],
    ['\u0130stanbul WET', '\u0130stanbul wet'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text)).toBe(cut);
  });
});

describe('in German', () => {
  test.each([
    ['9,2 Grad', '{9.2±0.05 deg}'],
    ['1.000 Meter', '{1000±100 m}'],
    ['10,25', '{10.25±0.005}'],
    ['neun Komma zwei', '{9.2±0.05}'],
    ['neunkommafünf', '{9.5±0.05}'],
    ['minus ein Grad', '{-1±0.5 deg}'],
    ['ein Komma fünf', '{1.5±0.05}'],
    ['achteinhalb', '{8.5±0.05}'],
    ['acht einhalb', '{8.5±0.05}'],
    ['hundertzwanzig', '{120±5}'],
    ['drei tausend', '{3000±300}'],
    ['zwischen acht und neun Grad', '{8.5[8..9]±0.5 deg}'],
    ['8 und 9', '{8±0.5} und {9±0.5}'],
    ['von 8 bis 9', '{8.5[8..9]±0.5}'],
    ['5 Grad unter null', '{-5±0.5 deg}'],
    ['unter null', 'unternull'],
    ['weder nass noch klebrig', 'weder nass weder klebrig'],
    ['weder nass, noch klebrig. noch', 'weder nass |, weder klebrig |. noch'],
    ['9 plus minus 1', '{9[8..10]±0.5}'],
    ['9 plus oder minus 1', '{9[8..10]±0.5}'],
    ['9 +/- 1', '{9[8..10]±0.5}'],
    ['Windstärke 3', '{3±0.5 force}'],
    ['1 zu 20', '{20±2 1 in}'],
    ['Nummer eins', 'nummer eins'],
    ['eins von', 'eins von'],
    ['ca. 9', '{9±0.5 near}'],
    ['9 Uhr', '{?} uhr'],
    ['ein halber Meter', '{0.5±0.05 m}'],
    ['12 in 30', '{12±0.5} in {30±3}'],
  ])('"%s" is %s', (text, cut) => {
    expect(pieces(text, 'de')).toBe(cut);
  });
});

test('each piece knows the part of the text that it stands for', () => {
  expect(places('  Soil: about 9-10 C or so,\ndrains\u2019ll run 1 in 20, 9 plus or minus 1 at £5')).toEqual([
    'soil < Soil',
    '{9.5[9..10]±1 C near} < about 9-10 C or so',
    '|, < ,',
    '|\\n < \n',
    'drains < drains',
    'will < \u2019ll',
    'run < run',
    '{20±2 1 in} < 1 in 20',
    '|, < ,',
    '{9[8..10]±0.5} < 9 plus or minus 1',
    'at < at',
    '{?} < £',
    '{?} < 5',
  ]);
});
