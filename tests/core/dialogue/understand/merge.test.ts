import { describe, expect, test } from 'vitest';
import {
  isSameReading,
  mergeReadings,
  narrower,
  type Offered,
} from '../../../../src/core/dialogue/understand/merge.ts';
import type { FactId } from '../../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../../src/core/facts/types.ts';
import { inOneLine } from './told.ts';

const number = (value: number, low?: number, high?: number): Reading =>
  low === undefined || high === undefined ? { type: 'number', value } : { type: 'number', value, low, high };
const choice = (...possible: readonly string[]): Reading => ({ type: 'choice', possible });
const signs = (present: readonly string[], absent: readonly string[] = [], complete = false): Reading => ({
  type: 'signs',
  present,
  absent,
  complete,
});
const none = signs([], ['cracked', 'sticky', 'ponded'], true);

describe('of two readings of one fact', () => {
  test.each<[string, Reading, Reading, ReturnType<typeof narrower>]>([
    ['the same number', number(9), number(9), 'same'],
    ['the same band', number(9, 8, 10), number(9, 8, 10), 'same'],
    ['a number in a band', number(9), number(9, 8, 10), 'first'],
    ['a number at the low end of a band', number(8), number(9, 8, 10), 'first'],
    ['a number at the high end of a band', number(10), number(9, 8, 10), 'first'],
    ['a band around a number', number(9, 8, 10), number(8), 'second'],
    ['a band from the same low end', number(9, 8, 10), number(8.5, 8, 9), 'second'],
    ['a band to the same high end', number(9, 8, 10), number(9.5, 9, 10), 'second'],
    ['bands that overlap', number(9, 8, 10), number(10, 9, 11), 'conflict'],
    ['bands that overlap, the other way round', number(10, 9, 11), number(9, 8, 10), 'conflict'],
    ['two numbers', number(9), number(9.1), 'conflict'],
    ['the same choice', choice('clay'), choice('clay'), 'same'],
    ['the same choices in another order', choice('clay', 'loam'), choice('loam', 'clay'), 'same'],
    ['one of several choices', choice('clay'), choice('clay', 'loam'), 'first'],
    ['several choices with that one', choice('clay', 'loam'), choice('clay'), 'second'],
    ['choices with one in common', choice('clay', 'loam'), choice('clay', 'silt'), 'conflict'],
    ['a number and a choice', number(9), choice('clay'), 'conflict'],
    ['a choice and a number', choice('clay'), number(9), 'conflict'],
    ['signs and a choice', signs(['cracked']), choice('cracked'), 'conflict'],
    ['a choice and signs', choice('cracked'), signs(['cracked']), 'conflict'],
    ['the same sign', signs(['cracked']), signs(['cracked']), 'same'],
    ['different signs', signs(['cracked']), signs(['sticky']), 'apart'],
    ['a sign there and another not', signs(['cracked']), signs([], ['sticky']), 'apart'],
    ['a sign there and the same not', signs(['cracked']), signs([], ['cracked']), 'conflict'],
    ['a sign not there and the same there', signs([], ['cracked']), signs(['cracked']), 'conflict'],
    ['a sign and none at all', signs(['cracked']), none, 'conflict'],
    ['none at all and a sign', none, signs(['cracked']), 'conflict'],
    ['a sign and that one alone', signs(['cracked']), signs(['cracked'], [], true), 'apart'],
    ['a sign not there and none at all', signs([], ['cracked']), none, 'apart'],
    ['none at all, twice', none, none, 'same'],
  ])('%s', (_, a, b, which) => {
    expect(narrower(a, b)).toBe(which);
    expect(isSameReading(a, b)).toBe(which === 'same');
  });
});

const temperature: FactId = 'soil.temperature30cmC';

function offered(fact: FactId, reading: Reading, quote: string, more: Partial<Offered> = {}): Offered {
  return { fact, reading, quote, doubtful: false, replaces: false, ...more };
}
const soil = (value: number, more: Partial<Offered> = {}) => offered(temperature, number(value), `soil ${value}`, more);
const surface = (reading: Reading, quote: string, more: Partial<Offered> = {}) =>
  offered('soil.surface', reading, quote, more);
const weed = (is: 'yes' | 'no', quote: string, more: Partial<Offered> = {}) =>
  offered('weed.present', choice(is), quote, more);

/** What is left of all that a text offers, in one line; after `-` what was left out, by its words. */
function merged(...all: readonly Offered[]): string {
  const { readings, dropped } = mergeReadings(all);
  const line = inOneLine({ readings, intents: [], correction: false, notUnderstood: [], refused: [], remarks: [] });
  return [line, ...(dropped.length > 0 ? [`- ${dropped.join(', ')}`] : [])].join(' ').trim();
}

const doubtful = { doubtful: true };
const replaces = { replaces: true };

describe('of all that one text says', () => {
  test.each<[string, readonly Offered[], string]>([
    ['one reading stands', [soil(9)], 'soil.temperature30cmC=9'],
    [
      'readings of different facts stand',
      [soil(9), weed('yes', 'black-grass')],
      'soil.temperature30cmC=9; weed.present=yes',
    ],
    [
      'readings of different days stand beside each other',
      [soil(9), soil(11, { agoHours: 24 })],
      'soil.temperature30cmC=9; soil.temperature30cmC=11@24',
    ],
    [
      'readings of different depths stand beside each other',
      [soil(9), soil(7, { depthCm: 10 })],
      'soil.temperature30cmC=9; soil.temperature30cmC=7',
    ],
    [
      'no hours ago are now, no depth is 30 cm',
      [soil(9), soil(9, { agoHours: 0, depthCm: 30 })],
      'soil.temperature30cmC=9',
    ],
    ['what is said twice stands once', [soil(9), soil(9)], 'soil.temperature30cmC=9'],
    ['said with doubt and then surely, it is sure', [soil(9, doubtful), soil(9)], 'soil.temperature30cmC=9'],
    ['said surely and then with doubt, it is sure', [soil(9), soil(9, doubtful)], 'soil.temperature30cmC=9'],
    [
      'what says more stands: after',
      [offered(temperature, number(9, 8, 10), '8 to 10'), soil(9)],
      'soil.temperature30cmC=9',
    ],
    [
      'what says more stands: before',
      [soil(9), offered(temperature, number(9, 8, 10), '8 to 10')],
      'soil.temperature30cmC=9',
    ],
    ['two that contradict are both left out', [soil(9), soil(12)], '- soil 9, soil 12'],
    ['and so is a third of the same fact', [soil(9), soil(12), soil(9)], '- soil 9, soil 12, soil 9'],
    ['but not of another fact', [soil(9), soil(12), weed('yes', 'black-grass')], 'weed.present=yes - soil 9, soil 12'],
    ['what puts it right stands', [soil(9), soil(12, replaces)], 'soil.temperature30cmC=12'],
    [
      'even after a contradiction',
      [soil(9), soil(12), soil(11, replaces)],
      'soil.temperature30cmC=11 - soil 9, soil 12',
    ],
    [
      'it puts nothing else right',
      [weed('yes', 'black-grass'), soil(12, replaces)],
      'weed.present=yes; soil.temperature30cmC=12',
    ],
    [
      'what puts one sign right leaves the others',
      [surface(signs(['cracked']), 'cracked'), surface(signs(['sticky']), 'sticky', replaces)],
      'soil.surface=+cracked; soil.surface=+sticky',
    ],
    [
      'and the sign itself gives way',
      [surface(signs(['cracked']), 'cracked'), surface(signs([], ['cracked']), 'no cracks', replaces)],
      'soil.surface=-cracked',
    ],
    [
      'signs that contradict are left out; another one stands, and one said later',
      [
        surface(signs(['sticky']), 'sticky'),
        surface(signs(['cracked']), 'cracked'),
        surface(signs([], ['cracked']), 'no cracks'),
        surface(signs(['ponded']), 'puddles'),
      ],
      'soil.surface=+sticky; soil.surface=+ponded - cracked, no cracks',
    ],
  ])('%s', (_, all, left) => {
    expect(merged(...all)).toBe(left);
  });
});

describe('two that contradict each other and yet are one', () => {
  test.each<[string, readonly Offered[], string]>([
    ['one weed there, the other not', [weed('yes', 'black-grass'), weed('no', 'no rye-grass')], 'weed.present=yes'],
    [
      'one weed not there, the other there',
      [weed('no', 'no black-grass'), weed('yes', 'rye-grass')],
      'weed.present=yes',
    ],
    ['put right, the last stands', [weed('yes', 'black-grass'), weed('no', 'none', replaces)], 'weed.present=no'],
    [
      'a drain is not a weed',
      [
        offered('soil.drainsRunning', choice('yes'), 'running'),
        offered('soil.drainsRunning', choice('no'), 'not running'),
      ],
      '- running, not running',
    ],
    [
      'choices of which neither is yes',
      [offered('weed.present', choice('no'), 'none'), offered('weed.present', choice('other'), 'other')],
      '- none, other',
    ],
    ['four, maybe five', [soil(4), soil(5, doubtful)], 'soil.temperature30cmC=4.5[4..5]'],
    ['four, maybe seven', [soil(4), soil(7, doubtful)], 'soil.temperature30cmC=5.5[4..7]'],
    ['four, maybe five, maybe six', [soil(4), soil(5, doubtful), soil(6, doubtful)], 'soil.temperature30cmC=5[4..6]'],
    [
      'three to six, maybe five and a half to seven',
      [offered(temperature, number(4.5, 3, 6), '3-6'), offered(temperature, number(5.5, 5, 7), '5-7', doubtful)],
      'soil.temperature30cmC=4.5[3..6]',
    ],
    ['four, maybe eight', [soil(4), soil(7.1, doubtful)], '- soil 4, soil 7.1'],
    ['four, maybe three', [soil(4), soil(3, doubtful)], '- soil 4, soil 3'],
    ['four, five', [soil(4), soil(5)], '- soil 4, soil 5'],
    ['four, no, maybe five', [soil(4), soil(5, { ...doubtful, ...replaces })], 'soil.temperature30cmC=5?'],
    [
      'what puts right is not put together with what follows',
      [soil(4, replaces), soil(5, doubtful)],
      '- soil 4, soil 5',
    ],
    [
      'none of those, just cracks',
      [surface(none, 'none'), surface(signs(['cracked']), 'cracks')],
      'soil.surface=only cracked',
    ],
    ['cracks, none of those', [surface(signs(['cracked']), 'cracks'), surface(none, 'none')], '- cracks, none'],
    [
      'only puddles, and cracks',
      [surface(signs(['ponded'], [], true), 'only puddles'), surface(signs(['cracked']), 'cracks')],
      '- only puddles, cracks',
    ],
    [
      'none, and only puddles',
      [surface(none, 'none'), surface(signs(['ponded'], [], true), 'only puddles')],
      '- none, only puddles',
    ],
  ])('%s', (_, all, left) => {
    expect(merged(...all)).toBe(left);
  });

  test('"none of those, just cracks" is cracks and nothing else, in the words of the second', () => {
    const { readings } = mergeReadings([surface(none, 'none'), surface(signs(['cracked'], ['sticky']), 'cracks')]);
    expect(readings).toEqual([
      { fact: 'soil.surface', reading: signs(['cracked'], [], true), quote: 'cracks', doubtful: false },
    ]);
  });

  test('"four, maybe five" keeps the words of both, and is no surer than the first', () => {
    expect(mergeReadings([soil(4), soil(5, doubtful)]).readings).toEqual([
      { fact: temperature, reading: number(4.5, 4, 5), quote: 'soil 4, soil 5', doubtful: false },
    ]);
  });

  test('where one of several signs agrees and another clashes, only what clashes is left out', () => {
    const some = [surface(signs(['cracked']), 'cracks'), surface(signs(['sticky']), 'sticky'), surface(none, 'none')];
    expect(merged(...some)).toBe('- cracks, sticky, none');
  });
});
