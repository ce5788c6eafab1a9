import { describe, expect, test } from 'vitest';
import { askedField, askedTerm } from '../../../src/core/dialogue/understand/wishes.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, pressed, said, started, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));
const lastText = (...told: Parameters<typeof talk>[0]) => {
  const entry = look(talk([begin, ...told], world), pack).entries.findLast(({ kind }) => kind === 'said');
  return entry?.kind === 'said' ? entry.text : '';
};

describe('whoever asks back is answered from the rules', () => {
  test('why not: what stands in the way, with its margin', () => {
    const view = look(talk([begin, pressed('soil-feel', 'dry'), said('why not?')], world), pack);
    const met = view.verdict?.reasons.filter(({ outcome }) => outcome === 'met') ?? [];
    expect(met.length).toBeGreaterThan(0);
    expect(lastText(pressed('soil-feel', 'dry'), said('why not?'))).toContain(met[0]?.text);
  });

  test('why not, with a question open: what is not known is no approval', () => {
    expect(lastText(said('why not?'))).toMatch(/^Not known yet, and unknown is never approval: /);
  });

  test('why not, with something in the way and something not known: both, and the known first', () => {
    const open = started(pack, fieldLess(fitMorning, 'soil.feel', 'wind.boomKmh', 'wind.gustKmh'));
    const view = look(talk([open, pressed('soil-feel', 'dry'), said('why not?')], world), pack);
    const entry = view.entries.findLast(({ kind }) => kind === 'said');
    const text = entry?.kind === 'said' ? entry.text : '';
    const unknown = view.verdict?.reasons.filter(({ outcome }) => outcome === 'unknown') ?? [];
    const met = view.verdict?.reasons.filter(({ outcome }) => outcome === 'met') ?? [];
    expect(unknown.length * met.length).toBeGreaterThan(0);
    expect(text.indexOf(met[0]!.text)).toBe(0);
    expect(text).toMatch(/\. Not known yet, and unknown is never approval: .*wind/i);
  });

  test.each(['why?', 'what for', 'how come?'])('%s, with no question open: why the answer is so', (text) => {
    for (const feel of ['dry', 'moist'] as const) {
      const because = lastText(pressed('soil-feel', feel), said('why not?'));
      expect(lastText(pressed('soil-feel', feel), said(text))).toBe(because);
    }
  });

  test('why not, where it is spray today', () => {
    expect(lastText(pressed('soil-feel', 'moist'), said('why not?'))).toMatch(/^Nothing that is known stands in/);
  });

  test('what would you need: the open question and how to find out', () => {
    const { ask = '', how = '' } = pack.questions.find(({ id }) => id === 'soil-feel')?.text['en'] ?? {};
    expect(lastText(said('what would you need?'))).toBe(`${ask} ${how}`);
  });

  test('when: until when it stands, what must lift, or that the questions come first', () => {
    expect(lastText(pressed('soil-feel', 'moist'), said('when?'))).toMatch(/^Today, until /);
    expect(lastText(pressed('soil-feel', 'dry'), said('when?'))).toMatch(/^When that has lifted: /);
    expect(lastText(said('when?'))).toMatch(/^That cannot be told before/);
  });

  test.each([
    'what does field capacity mean?',
    'What is field capacity',
    'explain field capacity',
    'was bedeutet Feldkapazität?',
  ])('%s: the glossary with its source', (text) => {
    expect(lastText(said(text))).toMatch(/^The most water that a soil holds.*\(FAO Irrigation/);
  });

  test('a word that nobody explains is said to be none of the glossary', () => {
    expect(lastText(said('what does flibbertigibbet mean?'))).toBe('I have no explanation of "flibbertigibbet".');
  });
});

describe('wishes in words', () => {
  const fields = [
    { id: 'long-ing', name: 'Long Ing' },
    { id: 'top-brow', name: 'Top Brow' },
  ];

  test.each([
    ['do the same for Top Brow', 'top-brow'],
    ['the same for top brow please', 'top-brow'],
    ['now Long Ing', 'long-ing'],
    ['next field', null],
    ['do the same for the next one', null],
    ['the same for Nowhere', null],
    ['now 9', undefined],
    ['now it is raining', undefined],
  ])('%s', (text, field) => {
    expect(askedField(text, fields)).toBe(field);
  });

  test.each(['what is the dose', 'what do you mean', 'what does that mean', '9.2 at 30 cm', 'explain'])(
    '%s asks for no term',
    (text) => {
      expect(askedTerm(text, pack.glossary)).toBeNull();
    },
  );
});

test('every term of the glossary has a source and is found by each of its words, in each language', () => {
  for (const term of pack.glossary) {
    expect(term.source).not.toBe('');
    for (const words of Object.values(term.words).flat()) {
      expect(askedTerm(`what does ${words} mean`, pack.glossary)).toMatchObject({ term: { id: expect.any(String) } });
    }
  }
});
