import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeGiven, describeGoodUntil } from '../../../src/core/words/forecast.ts';
import { handOverOf, handOverText } from '../../../src/core/words/hand-over.ts';
import { emptyView, plainVerdict } from '../../web/views.ts';

const words = catalogueOf('en');
const view = {
  ...emptyView,
  verdict: {
    ...plainVerdict,
    goodUntilText: 'Good until 11:00.',
    forecastText: 'Forecast, 2 h old.',
    doseText: '1.87 L/ha.',
  },
  said: [
    { fact: 'soil.feel', label: 'soil feel', value: 'moist', from: 'you said, 09:10', undo: 'a', canChange: true },
  ],
};

const noon = Date.UTC(2026, 10, 6, 12) / 1000;

test.each([
  [0, 'Given at 12:00 on 6 November 2026.'],
  [
    2400,
    'Given at 12:00 on 6 November 2026. Handed over at 12:40 on 6 November 2026: what is said below of how old things are holds then.',
  ],
])('%i s after it was given, it says when, with the day', (later, text) => {
  const moment = { now: epochSeconds(noon + later), zone: 'Europe/London' };
  expect(describeGiven('2026-11-06T12:00:00Z', moment, words)).toBe(text);
});

test('until when it is good stands there with the day, and that it is withdrawn after', () => {
  expect(describeGoodUntil('2026-11-06T13:00:00Z', 'Europe/London', words)).toMatch(
    /^Good until 13:00 on 6 November 2026 .*withdrawn/,
  );
  expect(describeGoodUntil(null, 'Europe/London', words)).toBeNull();
});

describe('an answer for somebody else', () => {
  test('there is none before a verdict', () => {
    expect(handOverOf(emptyView, words)).toBeNull();
  });

  test('as text it holds verdict, until when, answers, dose, forecast, rules, what is invented and whom to heed', () => {
    const text = handOverText(handOverOf(view, words)!);
    for (const part of [
      'Mill Piece',
      'INVENTED',
      'Spray today.',
      'Because.',
      'Good until 11:00.',
      '- Soil feel: moist (you said, 09:10)',
      '- 1.87 L/ha.',
      '- Forecast, 2 h old.',
      '- A pack.',
      words.verdict.safety,
      words.handOver.copy,
    ]) {
      expect(text).toContain(part);
    }
    expect(text.split('\n').some((line) => line === 'null' || line === 'undefined')).toBe(false);
  });

  test('a real field carries no such label, and what is no spray-today never ends', () => {
    const real = handOverOf(
      {
        ...view,
        field: { ...emptyView.field!, invented: false },
        verdict: { ...view.verdict, verdict: 'do-not-spray', goodUntilText: null },
      },
      words,
    )!;
    expect(real).toMatchObject({ invented: null, validUntil: null, goodUntil: null });
    expect(real.parts.map(({ id }) => id)).toEqual(['answers', 'basis']);
  });

  test('a part without lines is left out', () => {
    expect(handOverOf(view, words)!.parts.map(({ id }) => id)).toEqual(['dose', 'answers', 'basis']);
  });
});
