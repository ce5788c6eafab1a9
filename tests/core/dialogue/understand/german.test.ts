import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { supposedText } from '../../../../src/core/dialogue/understand/supposed.ts';
import { fitsFact } from '../../../../src/core/facts/reading-fits.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { german } from './corpus/german.ts';
import { against, told } from './told.ts';

const { pack } = shipped;

describe('each German utterance comes to exactly what the table says', () => {
  const named = german.map(([asked, say, meant, recent = []]) => ({ asked, say, meant, recent }));
  test.each(named)('with $asked open, "$say"', ({ asked, say, meant, recent }) => {
    expect(told(asked, say, recent, 'de')).toBe(meant);
  });

  test('umlauts and sharp s may be written out, in capitals too', () => {
    const plain = (say: string) =>
      say.replace(/[äöüß]/g, (letter) => ({ ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' })[letter] ?? letter);
    for (const [asked, say, meant, recent] of german.filter(([, , one]) => !one.includes('"'))) {
      expect(told(asked, plain(say), recent, 'de')).toBe(meant);
      expect(told(asked, plain(say).toUpperCase(), recent, 'de')).toBe(meant);
    }
  });
});

describe('numbers in German words', () => {
  const ones = ['', 'ein', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];
  const tens = ['', '', 'zwanzig', 'dreißig', 'vierzig', 'fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig'];
  const inWords = (value: number) => {
    const [ten, one] = [Math.floor(value / 10), value % 10];
    return one === 0 ? tens[ten]! : `${ones[one]}und${tens[ten]}`;
  };

  test('the ones stand before the tens, from twenty to ninety-nine', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 99 }), (value) => {
        expect(told('humidity', `${inWords(value)} Prozent`, [], 'de')).toBe(`air.relativeHumidityPercent=${value}`);
      }),
    );
  });
});

describe('whatever is said in German', () => {
  const parts = [...new Set(german.flatMap(([, say]) => say.split(' ')))];
  const text = fc.array(fc.constantFrom(...parts, ',', '?', '-5', 'und', 'nicht', 'bis'), { maxLength: 40 });
  const open = fc.option(fc.constantFrom(...pack.questions), { nil: null });

  test('it never throws, and every reading fits its fact', () => {
    fc.assert(
      fc.property(text, open, (words, asked) => {
        const { readings } = understand(words.join(' '), { asked, pack, recent: [], language: 'de' });
        expect(readings.filter(({ fact, reading }) => !fitsFact(fact, factDefinition(fact), reading))).toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });

  test.each(['klebrig ', 'neun ', 'weder noch ', 'nicht ', 'was heißt bitte ', '9 bis ', 'einundzwanzigkomma'])(
    'half a million characters of "%s" are read to their end: the work grows no faster than their number',
    (part) => {
      const say = part.repeat(500_000).slice(0, 500_000);
      expect(understand(say, against('soil-temperature', [], 'de')).readings.length).toBeLessThan(500_000);
    },
  );

  test('each German label of a choice is understood as that choice', () => {
    const missed = pack.questions
      .filter(({ form }) => form !== 'signs' && form !== 'place')
      .flatMap((question) =>
        (question.choices ?? [])
          .filter(({ label }) => {
            const { readings } = understand(label['de'] ?? '', { asked: question, pack, recent: [], language: 'de' });
            return !readings.some(({ fact }) => question.facts.includes(fact));
          })
          .map(({ id }) => `${question.id} ${id}`),
      );
    expect(missed).toEqual([]);
  });
});

test.each([
  ['Was wäre, wenn es 9 wären?', 'nein, es war 9 sind'],
  ['was wäre wenn der Boden 9 Grad hätte?', 'der Boden 9 Grad hat'],
  ['angenommen, die Dräne liefen', 'die Dräne laufen'],
  ['wenn der Boden 9 Grad haben würde', 'der Boden 9 Grad haben '],
  ['wenn wir reden, wird es gut?', 'wir reden, wird es gut'],
  ['9 Grad in 30 cm', null],
])('"%s" supposes "%s"', (text, supposed) => {
  expect(supposedText(text, 'de')).toBe(supposed);
});
