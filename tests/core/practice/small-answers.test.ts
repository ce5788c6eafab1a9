import { describe, expect, test } from 'vitest';
import type { Known } from '../../../src/core/facts/types.ts';
import type { ReplayDay } from '../../../src/core/outlook/replay/index.ts';
import { checkAnswer, resultOf } from '../../../src/core/practice/check-answer.ts';
import { tellDay } from '../../../src/core/practice/tell-day.ts';
import type { PracticeDay } from '../../../src/core/practice/types.ts';
import { daysOfWeather } from '../../../src/core/practice/weather-days.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { choice, number, signsSeen } from '../../generators/small.ts';
import { good, smallPack } from '../compare/small-pack.ts';
import { smallAt as at, smallWorld as world } from './small-world.ts';

describe('an answer', () => {
  test.each([
    ['wait', 'wait', 'a', { rules: ['a', 'b'], nothing: false }, 'right'],
    ['wait', 'wait', 'b', { rules: ['a', 'b'], nothing: false }, 'right'],
    ['wait', 'wait', 'c', { rules: ['a', 'b'], nothing: false }, 'reason-wrong'],
    ['wait', 'wait', null, { rules: ['a'], nothing: false }, 'reason-wrong'],
    ['wait', 'spray-today', 'a', { rules: ['a'], nothing: true }, 'wrong'],
    ['spray-today', 'spray-today', null, { rules: [], nothing: true }, 'right'],
    ['spray-today', 'spray-today', 'a', { rules: ['a'], nothing: true }, 'right'],
    ['spray-today', 'spray-today', 'b', { rules: ['a'], nothing: true }, 'reason-wrong'],
  ] as const)('of %s on a day of %s because of %s, of %j, is %s', (verdict, is, rule, deciding, result) => {
    expect(resultOf({ verdict, rule }, is, deciding)).toBe(result);
  });

  const words = catalogueOf('en');
  test('comes with title, sentence, margin and why of what decided', async () => {
    const day: PracticeDay = {
      id: 'd',
      rule: 'too-windy',
      kind: 'weather',
      facts: { ...good, 'wind.boomKmh': 12 },
      at,
    };
    const checked = await checkAnswer(day, { verdict: 'wait', rule: 'too-windy' }, world(), words);
    expect(checked).toMatchObject({ result: 'right', nothing: false });
    expect(checked.deciding).toEqual([
      {
        rule: 'too-windy',
        title: 'Wind',
        text: 'Wind 12.0 km/h above 9.6 km/h.',
        margin: '2.4 km/h too windy',
        why: 'a test needs it',
        sentence: 'Holds (lifts in hours): when wind at boom height is above 9.6 km/h (windMostKmh).',
      },
    ]);
    expect(checked.trace).toHaveLength(5);
  });

  test('on a day without anything in the way tells what the day is about, and the advice that is met', async () => {
    const day: PracticeDay = { id: 'd', rule: 'too-windy', kind: 'outside', facts: good, at };
    const checked = await checkAnswer(day, { verdict: 'spray-today', rule: null }, world(), words);
    expect(checked).toMatchObject({ result: 'right', nothing: true });
    expect(checked.deciding.map(({ rule, text, margin }) => [rule, text, margin])).toEqual([
      ['late', 'M', expect.anything()],
      ['too-windy', null, '4.6 km/h room left'],
    ]);
    const gone = await checkAnswer({ ...day, rule: 'gone' }, { verdict: 'wait', rule: null }, world(), words);
    expect(gone.deciding.map(({ rule }) => rule)).toEqual(['late']);
  });

  test('on a day near the limit of a rule that does not decide tells that one too', async () => {
    const facts = { ...good, 'wind.boomKmh': 12 };
    const day: PracticeDay = { id: 'd', rule: 'too-dry', kind: 'outside', facts, at };
    const told = async (more: Partial<PracticeDay>) =>
      (await checkAnswer({ ...day, ...more }, { verdict: 'wait', rule: null }, world(), words)).deciding.map(
        ({ rule }) => rule,
      );
    expect(await told({})).toEqual(['too-windy']);
    expect(await told({ near: { fact: 'soil.feel', within: null } })).toEqual(['too-windy', 'too-dry']);
  });
});

describe('a day told', () => {
  const told = (facts: Readonly<Record<string, unknown>>, change: Partial<Pack> = {}) => {
    const speech = { words: catalogueOf('en'), practice: practiceWordsOf('en') };
    const day: PracticeDay = { id: 'd', rule: 'too-windy', kind: 'weather', facts, at };
    return tellDay(day, world(change), speech).map(
      ({ title, facts: own }) =>
        `${title}: ${own.map(({ label, value, isKnown }) => `${label} ${isKnown ? value : `(${value})`}`).join('; ')}`,
    );
  };

  test('is grouped by where things are looked for, in the order of the questions', () => {
    const { 'soil.feel': _, ...facts } = good;
    expect(told(facts)).toMatchInlineSnapshot(`
      [
        "Season: Date 6 November 2026",
        "Field: Country of the field England",
        "Soil: Soil surface crumbly; Feel of the soil in the hand (not known); Water held, as a share of that held at field capacity 90 % of field capacity; Soil temperature at 30 cm 8.0 C",
        "Weather: Wind at boom height 5.0 km/h",
      ]
    `);
  });

  test('tells a country that is none of those told as another, and a number finely enough beside its limit', () => {
    expect(told({ ...good, 'field.country': 'ZZ', 'wind.boomKmh': 9.64 }).join()).toMatch(
      /another country.*9\.64 km\/h|9\.64 km\/h.*another country/,
    );
  });

  test('puts what a question of the dose asks for last, under its own heading', () => {
    const questions = smallPack().questions.map((one) =>
      one.id === 'wind' ? { ...one, group: 'dose' as const } : one,
    );
    expect(told(good, { questions }).at(-1)).toBe(`${practiceWordsOf('en').groups.rest}: Wind at boom height 5.0 km/h`);
  });

  test('puts what no question asks for and no place is known of last as well', () => {
    const rule = { ...smallPack().rules[0]!, when: { fact: 'treatment.partnerInTank', is: 'yes' } as const };
    const last = told({ 'treatment.partnerInTank': 'no' }, { rules: [...smallPack().rules.slice(1), rule] }).at(-1);
    expect(last?.startsWith(`${practiceWordsOf('en').groups.rest}: `)).toBe(true);
  });

  test('is nothing where its facts cannot be read', () => {
    expect(told({ 'wind.boomKmh': 'much' })).toEqual([]);
  });
});

describe('days of a replayed season', () => {
  const known = (wind: number, more: Partial<Record<string, Known>> = {}) => ({
    'field.country': choice('GB-ENG'),
    'wind.boomKmh': number(wind),
    'soil.feel': choice('moist'),
    'soil.fieldCapacityPercent': number(90),
    'soil.temperature30cmC': number(3),
    'soil.surface': signsSeen(['friable']),
    ...more,
  });
  const day = (iso: string, verdict: ReplayDay['verdict'], wind: number, more: Partial<ReplayDay> = {}): ReplayDay => {
    return { season: 2026, iso, facts: known(wind), verdict, outcomes: [], assumed: [], ...more };
  };
  const chosen = (days: readonly ReplayDay[], most = 9) =>
    daysOfWeather(days, world(), most).map(({ rule, facts, kind }) => `${facts['date']} ${rule} ${kind}`);

  test('are those on which the verdict changes and those near a limit, oldest first', () => {
    const days = [
      day('2026-11-01', 'spray-today', 2),
      day('2026-11-02', 'wait', 12),
      day('2026-11-03', 'wait', 30),
      day('2026-11-04', 'spray-today', 9.5),
    ];
    expect(chosen(days)).toHaveLength(4);
    expect(chosen(days, 2)).toMatchInlineSnapshot(`
      [
        "2026-11-01 too-dry weather",
        "2026-11-04 too-windy weather",
      ]
    `);
    expect(chosen(days, 3)).toMatchInlineSnapshot(`
      [
        "2026-11-01 too-dry weather",
        "2026-11-02 too-windy weather",
        "2026-11-04 too-windy weather",
      ]
    `);
    expect(chosen(days, 0)).toEqual([]);
    expect(chosen([])).toEqual([]);
  });

  test('leave out a day that comes out otherwise by its rounded facts', () => {
    expect(chosen([day('2026-11-01', 'wait', 5)])).toEqual([]);
  });

  test('keep each fact as a facts file has it: bands, several choices, signs in doubt', () => {
    const facts = known(5.04, {
      'soil.feel': choice('moist', 'wet'),
      'soil.fieldCapacityPercent': number(90, 85, 95),
      'soil.surface': signsSeen(['friable'], ['cracked']),
    });
    const lost = { ...facts, 'soil.temperature30cmC': { known: false, reason: 'not-asked' } as const };
    const [found] = daysOfWeather([day('2026-11-01', 'wait', 5, { facts: lost })], world(), 1);
    expect(found?.facts).toMatchInlineSnapshot(`
      {
        "date": "2026-11-01",
        "field.country": "GB-ENG",
        "soil.feel": [
          "moist",
          "wet",
        ],
        "soil.fieldCapacityPercent": {
          "high": 95,
          "low": 85,
          "value": 90,
        },
        "soil.surface": {
          "possible": [
            "friable",
            "cracked",
          ],
          "value": [
            "friable",
          ],
        },
        "wind.boomKmh": 5.04,
      }
    `);
  });
});
