import { describe, expect, test } from 'vitest';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { lines, look, said, started, talk } from './talk.ts';

const { pack } = shipped;
const begin = started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.temperature30cmC'));

const talked = (table: Parameters<typeof listener>[0], ...texts: [string, string | null][]) =>
  talk([begin, ...texts.map(([text, asked]) => said(text, asked))], {
    pack,
    forecast: null,
    understand: listener(table),
  });

describe('free text', () => {
  test('is understood against the question that stood open when it was said', () => {
    const asked: (string | null)[] = [];
    const understand = (text: string, context: { asked: { id: string } | null }) => {
      asked.push(context.asked?.id ?? null);
      return listener({})(text, context as never);
    };
    talk([begin, said('a', 'soil-temperature'), said('b', null), said('c', 'confirm:soil.temperature30cmC')], {
      pack,
      forecast: null,
      understand,
    });
    expect(asked).toEqual(['soil-temperature', 'soil-feel', 'soil-temperature']);
  });

  test('may tell several things at once; each is said back, what is not understood too, and what is refused with why', () => {
    const depth = reportOf('FACT_OUT_OF_RANGE', { expected: 'a reading at 30 cm', came: '11 C at 10 cm' });
    const table = {
      'moist, 8.1, blue, and 11 at 10 cm': {
        readings: [...heard('soil.feel', 'moist').readings, ...heard('soil.temperature30cmC', 8.1).readings],
        notUnderstood: ['blue'],
        refused: [depth],
        remarks: [{ code: 'no-such-remark', quote: 'and' }],
      },
    };
    const conversation = talked(table, ['moist, 8.1, blue, and 11 at 10 cm', null]);
    expect(lines(conversation, pack).slice(2)).toMatchInlineSnapshot(`
      [
        "> moist, 8.1, blue, and 11 at 10 cm",
        "= Understood: soil feels moist; soil at 30 cm 8.1 C.",
        "x The value cannot be. Expected: a reading at 30 cm. Came: 11 C at 10 cm. Check the number and its unit, and give it again.",
        "- Noticed, but not used: "and".",
        "- I did not understand "blue". Nothing was taken from it.",
        "! Spray today: nothing that was checked speaks against it. None of the 27 reasons to stop or wait applies. Nearest to its limit: soil temperature at 30 cm, 1.9 C room left.",
      ]
    `);
  });

  test('that gives the answer and says "don\'t know" of something else keeps the answer', () => {
    const both = { ...heard('soil.feel', 'moist'), intents: ['dont-know'] as const };
    const conversation = talked({ 'moist, the rest I do not know': both }, [
      'moist, the rest I do not know',
      'soil-feel',
    ]);
    expect(look(conversation, pack).said.find(({ fact }) => fact === 'soil.feel')?.value).toBe('moist');
  });

  test('"don\'t know" answers the open question, and what is told unasked to be unknown is not asked', () => {
    const table = {
      'no idea': { intents: ['dont-know'] as const },
      'I cannot tell the temperature': {
        readings: [
          { fact: 'soil.temperature30cmC', reading: { type: 'does-not-know' }, quote: '', doubtful: false },
        ] as const,
      },
    };
    const conversation = talked(table, ['I cannot tell the temperature', null], ['no idea', 'soil-feel']);
    expect(look(conversation, pack).question).toBeNull();
    expect(look(conversation, pack).verdict?.reasons.map(({ outcome }) => outcome)).toEqual(Array(4).fill('unknown'));
  });

  test('with a time ago holds for that time', () => {
    const conversation = talked({ 'it was 8 yesterday morning': heard('soil.temperature30cmC', 8, { agoHours: 23 }) }, [
      'it was 8 yesterday morning',
      null,
    ]);
    expect(look(conversation, pack).said.find(({ fact }) => fact === 'soil.temperature30cmC')?.from).toBe(
      'you said, 23 h ago',
    );
  });
});
