import { expect, test } from 'vitest';
import { supposedText } from '../../../../src/core/dialogue/understand/supposed.ts';

test.each([
  ['what if the soil were 9 at 30 cm?', 'the soil is 9 at 30 cm'],
  ['What if it was 9?', 'no, it was 9'],
  ['if it\u2019s cracked', 'no, it was cracked'],
  ['suppose it is 9 at 30 cm', 'no, it was 9 at 30 cm'],
  ['Suppose that the drains are running', 'the drains are running'],
  ['imagine 12 mm of rain coming', '12 mm of rain coming'],
  ['I suppose so', null],
  ['suppose so', null],
  ['suppose not', null],
  ['if it rains they will', null],
  ['if it rains will it be ok', 'it rains will it be ok'],
  ['if it rains they will?', 'it rains they will'],
  ['what', null],
  ['what if', null],
  ['9 at 30 cm', null],
  ['a stiff clay, iffy drains', null],
  ['what if the soil were 9 and the air were 5', 'the soil is 9 and the air were 5'],
  ['What If The Soil WERE 9 ?! ', 'The Soil is 9'],
  ['what if cracked.', 'cracked'],
  ['so what if it were 9', 'no, it was 9'],
  ['what if it were the drains were running', 'no, it was the drains is running'],
  ['suppose so then', null],
  ['suppose not today', null],
  ['suppose something', 'something'],
  ['suppose nothing', 'nothing'],
  ['IF IT RAINS THEY WILL', null],
])('"%s" supposes %j', (text, supposed) => {
  expect(supposedText(text)).toBe(supposed);
});
