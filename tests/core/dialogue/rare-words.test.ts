import { describe, expect, test } from 'vitest';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { shipped, shippedPacks } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { filled, lines, morning, pressed, requested, said, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const foliar = shippedPacks.find((one) => one.pack.id === 'fluroxypyr-winter-wheat')!.pack;
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));

describe('the dose', () => {
  test('of rules that tell none stands on the label in hand', () => {
    const shown = lines(talk([started(foliar), requested('dose')], { pack: foliar, forecast: null }), foliar);
    expect(shown).toContain('- These rules tell no dose: it stands on the label in hand.');
  });

  test('once told is told again to whoever asks', () => {
    const label = { 'product.activeGPerL': 500, 'product.labelMaxGPerHa': 840, 'weed.plantsPerM2': 10 };
    const told = talk([started(pack, fieldLess({ ...fitMorning, ...label })), requested('dose')], world);
    expect(told.state.verdicts[0]?.decision.doseText).toMatch(/^\d+ g\/ha of active: /);
    expect(lines(told, pack)).toContain(`- ${told.state.verdicts[0]?.decision.doseText}`);
  });
});

describe('help', () => {
  test('names a term of the glossary as an example, the first; without a glossary none', () => {
    const first = pack.glossary[0]?.words['en']?.[0];
    const helped = (rules: typeof pack) =>
      lines(talk([started(rules), said('help')], { pack: rules, forecast: null }), rules).find((one) =>
        one.startsWith('- Say what you see'),
      );
    expect(helped(pack)).toContain(`what would you need, what does ${first} mean, the same for the next field`);
    const none = helped({ ...pack, glossary: [] });
    expect(none).toMatch(/what would you need, the same for the next field, .* another field\.$/);
  });

  test('names the words of the question with those beside it, its buttons and the answer given', () => {
    const words = (...told: Told[]) =>
      lines(talk([...told, said('help')], world), pack)
        .find((one) => one.startsWith('- Say what you see'))
        ?.match(/explained: (.*)\. Ask/)?.[1];
    expect(words(started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface')))).toMatchInlineSnapshot(
      `"saturated soil, active ingredient, friable, wheelings, loam"`,
    );
    expect(words(begin)).toMatchInlineSnapshot(`"saturated soil, active ingredient, loam"`);
    expect(words(begin, pressed('soil-feel', 'dry'))).toMatchInlineSnapshot(`"field capacity, active ingredient"`);
    expect(words(begin, pressed('soil-feel', 'moist'))).toBeUndefined();
    expect(words(started(pack, fieldLess(fitMorning, 'soil.temperature30cmC')))).toMatchInlineSnapshot(
      `"active ingredient"`,
    );
  });
});

describe('what is rarely said', () => {
  test('a clock ahead on an invented day is told the time of that day', () => {
    const shifted = {
      ...started(pack, fieldLess(fitMorning, 'soil.feel')),
      shiftSeconds: 3600,
      ...stamp(0, -60),
    } as ConversationEvent;
    const now = { ...world, now: morning };
    const ahead = { ...pressed('soil-feel', 'moist'), ...stamp(1, 90) } as ConversationEvent;
    const after = take(take(talk([], world), shifted, now), ahead, now);
    expect(lines(after, pack)).toContain('- The clock of this device is ahead; this counts as said at 10:00.');
  });

  test('something noticed but not used is told by its words, and a reading that differs by what is made of it', () => {
    const understand = listener({
      'and the cat': { remarks: [{ code: 'no-such', quote: 'the cat' }] },
      ten: heard('soil.temperature30cmC', 10, { quote: 'ten' }),
    });
    const told = [
      started(pack, fieldLess(fitMorning, 'soil.temperature30cmC')),
      filled('soil-temperature', { 'soil.temperature30cmC': 9 }),
    ];
    const shown = lines(talk([...told, said('and the cat'), said('ten')], { ...world, understand }), pack);
    expect(shown).toContain('- Noticed, but not used: "the cat".');
    expect(shown).toContain(
      '- "ten" differs from what you said within the last hour, so I reckon with all between the two. If one was a slip, say "no, it was" and the right one; else read again.',
    );
  });

  test('several pieces that were not understood are told together', () => {
    const understand = listener({ ab: { notUnderstood: ['a', 'b'] } });
    expect(lines(talk([begin, said('ab')], { ...world, understand }), pack)).toContain(
      '- I did not understand "a" and "b". Nothing was taken from it.',
    );
  });

  test('a term that is asked about but that the glossary lacks, and a text that asks about none', () => {
    const understand = listener({
      'what does flibbertigibbet mean?': { intents: ['define'] },
      hm: { intents: ['define'] },
    });
    const shown = (text: string) => lines(talk([begin, said(text)], { ...world, understand }), pack).at(-1);
    expect(shown('what does flibbertigibbet mean?')).toBe('- I have no explanation of "flibbertigibbet".');
    expect(shown('hm')).toBe('- I found nothing to take from that. Say it in other words, or choose an answer.');
  });

  test('a wish in words is carried out in the order in which it was said', () => {
    const understand = listener({ all: { intents: ['fields', 'what-said', 'verdict', 'why'] } });
    const { state } = talk([begin, said('all')], { ...world, understand });
    expect(state.notes.filter(({ event }) => event === 'phone-1').map(({ kind }) => kind)).toEqual([
      'typed',
      'fields',
      'said-so-far',
      'verdict-asked',
      'why',
    ]);
  });
});
