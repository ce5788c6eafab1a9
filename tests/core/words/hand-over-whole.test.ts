import { describe, expect, test } from 'vitest';
import type { ConversationView, VerdictView } from '../../../src/core/dialogue/view-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { handOverOf, handOverText } from '../../../src/core/words/hand-over.ts';
import { emptyView, plainVerdict } from '../../web/views.ts';
import { reason } from './reason-of.ts';

const words = catalogueOf('en');

function viewWith(verdict: Partial<VerdictView>, more: Partial<ConversationView> = {}): ConversationView {
  return { ...emptyView, ...more, verdict: { ...plainVerdict, ...verdict } };
}

const full = viewWith(
  {
    verdict: 'wait',
    headline: 'Wait.',
    why: 'The beck is near.',
    reasons: [
      reason('a', { marginText: '0.4 C too warm' }),
      reason('b', { outcome: 'unknown', text: 'Find it out', lift: null, authority: 'label' }),
    ],
    advice: [reason('c', { text: 'Is it so?', lift: 'never said' })],
    jobs: ['Mark it.'],
    cautions: [{ id: 'x', text: 'Wear gloves.', authority: 'label' }],
    forecastText: 'A forecast.',
    packText: 'A pack.',
    doseText: '1.87 L/ha.',
  },
  {
    said: [
      { fact: 'soil.feel', label: 'soil feel', value: 'moist', from: 'you said', undo: 'a', canChange: true },
      { fact: 'soil.surface', label: 'surface', value: 'cracked', from: 'you said', undo: 'b', canChange: true },
    ],
  },
);

describe('an answer handed over', () => {
  test('is, as text, this', () => {
    expect(handOverText(handOverOf(full, words)!)).toBe(
      [
        'A pack, Mill Piece: does today suit?',
        'INVENTED: farm, day and weather are made up. Nothing here is about a real field.',
        '',
        'Wait.',
        'The beck is near.',
        'Given at 10:00.',
        words.verdict.safety,
        '',
        'Reasons',
        '- Title a: Text a. 0.4 C too warm. Lift a. (common practice, no source)',
        '- Not known: Title b: Find it out. (label: check the label in hand)',
        '',
        'To do, or to find out',
        '- Mark it.',
        '',
        'Worth knowing',
        '- Title c: Is it so? (common practice, no source)',
        '',
        'Dose',
        '- 1.87 L/ha.',
        '',
        'What was told and known',
        '- Soil feel: moist (you said)',
        '- Surface: cracked (you said)',
        '',
        'Cautions, always',
        '- Wear gloves. (label: check the label in hand)',
        '',
        'What this rests on',
        '- A forecast.',
        '- A pack.',
        '',
        words.handOver.copy,
        '',
      ].join('\n'),
    );
  });

  test('of a real field that has no name, by a stop: no label of what is invented, no dose', () => {
    const stopped = handOverOf(viewWith({ verdict: 'do-not-spray' }, { field: null }), words)!;
    expect(stopped.title).toBe('A pack, a field without a name: does today suit?');
    expect(stopped.invented).toBeNull();
    expect(stopped.parts.map(({ id }) => id)).toEqual(['basis']);
  });

  test.each([
    ['spray-today', '2026-11-12T11:00:00Z'],
    ['wait', null],
    ['do-not-spray', null],
  ] as const)('of %s is withdrawn at %s', (verdict, validUntil) => {
    const made = handOverOf(viewWith({ verdict }), words)!;
    expect(made).toMatchObject({ verdict, validUntil, madeAt: '2026-11-12T10:00:00Z', language: 'en' });
  });

  test('explains the terms that it says, in the why or in a line, and no others', () => {
    const term = (id: string, ...said: string[]) => ({ id, term: id, said, text: 'A text.', source: 's', origin: 's' });
    const terms = [term('beck', 'beck'), term('gloves', 'gloves'), term('weir', 'weir')];
    const made = handOverOf({ ...full, terms } as ConversationView, words)!;
    expect(made.terms.map(({ id }) => id)).toEqual(['beck', 'gloves']);
  });
});
