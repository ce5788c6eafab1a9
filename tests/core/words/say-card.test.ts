import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { FieldCard } from '../../../src/core/tour/field-card.ts';
import { cardWordsOf } from '../../../src/core/words/card-words.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { cardText, type SaidCard, sayCard } from '../../../src/core/words/say-card.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

const { pack } = shipped;
const days = { limits: '2026-11-06', printed: '2026-11-07' };

/** A card with four rules, the hand test in two classes and the question about water areas. */
function said(language: string, more: Partial<FieldCard> = {}): SaidCard {
  const { rules } = compileRules(pack, '2026-11-06');
  const named = (...ids: string[]) => ids.map((id) => rules.find(({ rule }) => rule.id === id)!);
  const asking = (id: string) => pack.questions.find((one) => one.id === id)!;
  const card: FieldCard = {
    parts: [
      { part: 'season', rules: named('season-not-open') },
      { part: 'soil', rules: named('rain-on-unfit-soil', 'soil-too-warm', 'soil-cracked') },
    ],
    hand: {
      question: asking('soil-feel'),
      classes: [
        { choice: 'dry', met: ['soil-too-dry', 'soil-cracked'] },
        { choice: 'moist', met: [] },
      ],
    },
    waterArea: asking('protected-area'),
    ...more,
  };
  const words = { catalogue: catalogueOf(language), card: cardWordsOf(language), definitionOf: factDefinition };
  return sayCard(card, pack, days, words);
}

describe('the card in words', () => {
  test('tells each rule by its limits, without names of parameters or ids of rules', () => {
    const rows = said('en').parts.flatMap(({ rows: own }) =>
      own.map(({ mark, title, when }) => `${mark} ${title}: ${when}`),
    );
    expect(rows.slice(2)).toEqual([
      'WAIT Soil too warm: soil temperature at 30 cm is above 10 C',
      'WAIT Cracks in the soil: soil surface shows “cracked”',
    ]);
    expect(rows[0]).toMatch(/^WAIT Season not open yet: .*date is before 1 October/);
    expect(rows[1]).toMatch(/^STOP Heavy rain on unfit soil: heavy rain coming, and \(cracks in the soil, or /);
    expect(rows.join()).not.toMatch(/\([a-zA-Z]+\)|[a-z]-[a-z]+-/);
  });

  test('has its headings, and what it is', () => {
    const card = said('en');
    expect(card).toMatchObject({
      title: `Card for the cab: ${pack.title['en']}`,
      scope: pack.scope['en'],
      lead: 'Limits in the order in which you meet them. Not known counts as wait.',
      label: 'Check the label in hand: where it is stricter, it holds.',
      safety: catalogueOf('en').verdict.safety,
      made: `Rules ${pack.version}, ${pack.hash.slice(0, 12)}. Limits of 6 November 2026. Printed 7 November 2026. Throw it away when the rules change.`,
    });
    expect(card.parts.map(({ heading }) => heading)).toEqual(['Before you go: season and papers', 'Soil and drains']);
    expect(card.parts[1]!.rows[0]).toMatchObject({ rule: 'rain-on-unfit-soil', effect: 'stop' });
    expect(card.cautions).toEqual({ heading: 'Cautions, always', lines: pack.cautions.map(({ text }) => text['en']) });
  });

  test('tells the hand test class by class, and where water areas are looked up', () => {
    const label = (choice: string) =>
      pack.questions.find(({ id }) => id === 'soil-feel')!.choices!.find(({ id }) => id === choice)!.label['en'];
    expect(said('en').lines).toEqual([
      { heading: 'Hand test', text: `${label('dry')}: soil too dry and cracks in the soil; ${label('moist')}: fine.` },
      { heading: 'Where to look up water areas', text: said('en').lines[1]!.text },
    ]);
    expect(said('en').lines[1]!.text).toBe(pack.questions.find(({ id }) => id === 'protected-area')!.text['en']!.how);
    expect(said('en', { hand: null }).lines.map(({ heading }) => heading)).toEqual(['Where to look up water areas']);
    expect(said('en', { hand: null, waterArea: null }).lines).toEqual([]);
  });

  test('is in German where that is the language, and in English where a pack has no other words', () => {
    const german = said('de');
    expect(german.parts[1]!.rows[1]!.when).toBe('Bodentemperatur in 30 cm über 10 °C');
    expect(german.title).toContain(pack.title['de']);
    const water = pack.questions.find(({ id }) => id === 'protected-area')!;
    expect(german.lines[1]!.text).toBe(water.text['de']!.how);
    const { de: _, ...english } = water.text;
    expect(said('de', { waterArea: { ...water, text: english } }).lines[1]!.text).toBe(water.text['en']!.how);
  });
});

test('as plain text the marks stand in a column, and each part under its heading', () => {
  const row = (mark: string, title: string) => ({ rule: 'r', effect: 'stop' as const, mark, title, when: 'always' });
  const card: SaidCard = {
    title: 'Card',
    scope: 'Scope',
    lead: 'Lead',
    label: 'Label',
    effectsTold: 'Effects',
    parts: [
      { heading: 'One', rows: [row('NO', 'First'), row('STOP', 'Second')] },
      { heading: 'Two', rows: [row('A', 'Third')] },
    ],
    lines: [{ heading: 'Hand', text: 'Feel it.' }],
    cautions: { heading: 'Cautions', lines: ['Gloves.', 'Boots.'] },
    safety: 'Safety',
    made: 'Made',
  };
  expect(cardText(card)).toBe(
    [
      ...['Card', 'Scope', '', 'Label', 'Lead', 'Effects', ''],
      ...['One', '  NO    First: always', '  STOP  Second: always', '', 'Two', '  A     Third: always', ''],
      ...['Hand', '  Feel it.', '', 'Cautions', '  - Gloves.', '  - Boots.', '', 'Safety', 'Made', ''],
    ].join('\n'),
  );
});
