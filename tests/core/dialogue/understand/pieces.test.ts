import { describe, expect, test } from 'vitest';
import { pieces, places } from './pieces.ts';

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
