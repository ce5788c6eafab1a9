import { describe, expect, test } from 'vitest';
import { instantText } from '../../../src/core/dialogue/moment.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { look, said, stamp, started, type Told, take, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const shallow = { en: '7 at 10 cm', de: '7 Grad in 10 cm' } as const;
type Language = keyof typeof shallow;

/** Texts said one after another, so many minutes after nine in the morning of 6 November. */
function heard(language: Language, minutes: number, ...texts: string[]) {
  const begin = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
  const first = talk([{ ...begin, language } as Told], world);
  return texts.reduce((now, text, index) => {
    const told = { ...said(text, 'soil-temperature'), language, ...stamp(index + 1, minutes) };
    return take(now, told as Parameters<typeof take>[1], world);
  }, first);
}

function hoursAt(language: Language, minutes: number): readonly string[] {
  const { question } = look(heard(language, minutes, shallow[language]), pack, minutes);
  expect(question?.id).toBe('soil-temperature');
  return question?.hours ?? [];
}

describe('the hour of a reading at another depth can be pressed', () => {
  test.each([
    ['en', 1, ['just now', '8 am', '6 am', '4 am']],
    ['en', 9 * 60, ['just now', '6 pm', '4 pm', '2 pm', 'noon', '10 am', '8 am']],
    [
      'de',
      5 * 60,
      ['gerade eben', '14 Uhr', 'zu Mittag', '10 Uhr morgens', '8 Uhr morgens', '6 Uhr morgens', '4 Uhr morgens'],
    ],
    ['en', 15 * 60 + 10, ['just now']],
  ] as const)('in %s, %i min after nine: %j', (language, minutes, hours) => {
    expect(hoursAt(language, minutes)).toEqual(hours);
  });

  test.each(['en', 'de'] as const)(
    'and in %s each is understood as just that hour of today, whenever it is pressed',
    (language) => {
      for (const minutes of [1, 70, 200, 420, 610, 850]) {
        const [now = '', ...hours] = hoursAt(language, minutes);
        const readAt = (hour: string) => {
          const { observations } = heard(language, minutes, shallow[language], hour).state;
          return observations.findLast(({ quote }) => quote !== null)?.at ?? 0;
        };
        const newest = Math.floor((9 + minutes / 60) / 2) * 2;
        expect(instantText(readAt(now) as never)).toBe(instantText(stamp(2, minutes).at));
        expect(hours.map((hour) => instantText(readAt(hour) as never).slice(0, 16))).toEqual(
          hours.map((_, index) => `2026-11-06T${String(newest - 2 * index).padStart(2, '0')}:00`),
        );
      }
    },
  );

  test('only while it is missing', () => {
    expect(look(heard('en', 1), pack, 1).question?.hours).toEqual([]);
    expect(look(heard('en', 1, '7 at 10 cm', 'not cracked'), pack, 1).question?.hours).toEqual([]);
    expect(look(heard('en', 1, '7 at 10 cm', '8 am'), pack, 1).question?.hours ?? []).toEqual([]);
  });
});
