import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { understand } from '../../../../src/core/dialogue/understand/index.ts';
import { fitsFact } from '../../../../src/core/facts/reading-fits.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { factDefinition, factIds } from '../../../fixtures/core-facts.ts';
import { never } from './corpus/never.ts';
import { several } from './corpus/several.ts';
import { soil } from './corpus/soil.ts';
import { weather } from './corpus/weather.ts';
import { against, told } from './told.ts';

const { pack } = shipped;
const said = [...never, ...several, ...soil, ...weather].map(([, say]) => say).filter((say) => say.trim() !== '');
const vocabulary = [
  ...new Set(said.flatMap((say) => say.split(' '))),
  ',',
  ';',
  '.',
  '?',
  '-5',
  '1e9',
  'bbch',
  'force',
];
const text = fc.oneof(
  fc.string({ maxLength: 300, unit: 'binary' }),
  fc.array(fc.constantFrom(...vocabulary), { maxLength: 40 }).map((parts) => parts.join(' ')),
  fc.array(fc.constantFrom(...said), { maxLength: 6 }).map((parts) => parts.join(', ')),
);
const open = fc.option(fc.constantFrom(...pack.questions), { nil: null });
const recent = fc.array(fc.constantFrom(...factIds), { maxLength: 3 });

describe('whatever is said', () => {
  test('it never throws, and every reading fits its fact', () => {
    fc.assert(
      fc.property(text, open, recent, fc.boolean(), (say, asked, spoken, confirming) => {
        const { readings } = understand(say, { asked, pack, recent: spoken, confirming });
        expect(readings.filter(({ fact, reading }) => !fitsFact(fact, factDefinition(fact), reading))).toEqual([]);
      }),
      { numRuns: 3000 },
    );
  });

  test('it means the same each time', () => {
    fc.assert(
      fc.property(text, open, (say, asked) => {
        const context = { asked, pack, recent: [] };
        expect(understand(say, context)).toEqual(understand(say, context));
      }),
      { numRuns: 300 },
    );
  });

  test('case, outer blanks and typographic signs change nothing that is read', () => {
    const plain = said.filter((say) => /^[\x20-\x7e]+$/.test(say));
    const read = (say: string) => understand(say, against(null)).readings.map(({ quote: _, ...rest }) => rest);
    for (const say of plain) expect(read(`  ${say.toUpperCase().replaceAll("'", '\u2019')} `)).toEqual(read(say));
  });

  test.each([
    ['words', 'sticky '],
    ['numbers', '9 '],
    ['digits', '9'],
    ['commas', ','],
    ['ranges', '8-9 to '],
    ['negations', 'not '],
    ['joined', 'not cracked or '],
    ['hyphens', '9-'],
    ['apostrophes', "a'"],
    ['thousands', '1,000,'],
    ['between', 'between 8 and '],
  ])('half a million characters of %s are read to their end: the work grows no faster than their number', (_, part) => {
    const say = part.repeat(500_000).slice(0, 500_000);
    expect(understand(say, against('soil-temperature')).readings.length).toBeLessThan(500_000);
  });
});

describe('a reading back', () => {
  test.each([
    ['yes', ['yes']],
    ['yep', ['yes']],
    ["no, that's wrong", ['no']],
  ] as const)('"%s" answers it and gives no reading', (say, intents) => {
    const { readings, intents: wanted } = understand(say, { ...against('drained'), confirming: true });
    expect([readings, wanted]).toEqual([[], intents]);
  });

  test('the right value replaces it', () => {
    const context = { ...against('soil-temperature', ['soil.temperature30cmC']), confirming: true };
    expect(understand('no, 9.5', context)).toMatchObject({ correction: true, readings: [{ reading: { value: 9.5 } }] });
  });
});

test('a question of the pack that offers choices understands each of their labels', () => {
  const deaf = pack.questions
    .filter(({ form }) => form !== 'signs')
    .flatMap(({ id, choices = [] }) => choices.map(({ label }) => [id, label['en'] ?? ''] as const))
    .filter(([id, label]) => !told(id, label).includes('='));
  expect(deaf).toEqual([]);
});
