import { describe, expect, test } from 'vitest';
import { checkAnswer } from '../../../src/core/practice/check-answer.ts';
import { decidingOf, reasonChoices } from '../../../src/core/practice/deciding.ts';
import { judgeDay } from '../../../src/core/practice/judge-day.ts';
import { makeDay } from '../../../src/core/practice/make-day.ts';
import { matchReason } from '../../../src/core/practice/match-reason.ts';
import { tellDay } from '../../../src/core/practice/tell-day.ts';
import { type DayKind, madeKinds, type PracticeDay } from '../../../src/core/practice/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';
import { world } from './world.ts';

const { pack } = world;
const english = catalogueOf('en');
const speech = (language: string) => ({ words: catalogueOf(language), practice: practiceWordsOf(language) });

function day(rule: string, kind: DayKind, seed = 'a'): PracticeDay {
  const made = makeDay(world, { rule, kind }, seed);
  if (!('day' in made)) throw new Error(made.none);
  return made.day;
}

/** Made in the test that needs them, so that it is seen to reach how they are made. */
function allDays(): PracticeDay[] {
  return pack.rules.flatMap(({ id: rule }) =>
    madeKinds.flatMap((kind) => {
      const made = makeDay(world, { rule, kind }, 'a');
      return 'day' in made ? [made.day] : [];
    }),
  );
}

describe('a day as it is told', () => {
  test('tells every fact that the rules read, known or not, in both languages', () => {
    const one = day('too-windy', 'unknown-matters');
    for (const language of ['en', 'de']) {
      const told = tellDay(one, world, speech(language)).flatMap(({ facts }) => facts);
      const read = new Set(judgeDay(one, pack)!.trace.flatMap(({ facts }) => facts));
      expect(new Set(told.map(({ fact }) => fact))).toEqual(read);
      expect(told.find(({ fact }) => fact === 'wind.boomKmh')).toMatchObject({
        isKnown: false,
        value: language === 'en' ? 'not known' : 'nicht bekannt',
      });
    }
    expect(tellDay(day('soil-too-warm', 'inside'), world, speech('de')).flatMap(({ facts }) => facts)).toContainEqual(
      expect.objectContaining({ label: 'Bodentemperatur in 30 cm', value: expect.stringMatching(/^10,\d °C$/) }),
    );
  });

  test('gives no answer away: neither a title, nor a sentence of a rule, nor a verdict stands in it', () => {
    for (const one of allDays()) {
      const told = tellDay(one, world, speech('en')).flatMap(({ facts }) => facts);
      const values = told.map(({ value }) => value.toLowerCase());
      for (const { text: own } of pack.rules) expect(values).not.toContain(own['en']!.title.toLowerCase());
      const text = JSON.stringify(told).toLowerCase();
      expect(text).not.toMatch(/do not spray|spray today|"wait"|stops it|holds it/);
    }
  });
});

describe('reasons to choose from', () => {
  test('hold one that decides wherever one does, and others beside it', () => {
    for (const one of allDays()) {
      const judged = judgeDay(one, pack)!;
      const { rules, nothing } = decidingOf(judged);
      const offered = reasonChoices(one, judged, pack, 's');
      expect(offered.length).toBeGreaterThanOrEqual(5);
      expect(new Set(offered).size).toBe(offered.length);
      if (!nothing) expect(offered.some((id) => rules.includes(id))).toBe(true);
      expect(offered.some((id) => !rules.includes(id))).toBe(true);
    }
  });
});

describe('an answer', () => {
  test.each([
    ['too-windy', 'inside', 'wait', 'too-windy', 'right'],
    ['too-windy', 'inside', 'wait', 'gusty', 'reason-wrong'],
    ['too-windy', 'inside', 'spray-today', null, 'wrong'],
    ['too-windy', 'outside', 'spray-today', null, 'right'],
    ['too-windy', 'outside', 'wait', 'too-windy', 'wrong'],
    ['rain-on-unfit-soil', 'inside', 'do-not-spray', 'rain-on-unfit-soil', 'right'],
    ['rain-on-unfit-soil', 'inside', 'do-not-spray', 'heavy-rain-coming', 'reason-wrong'],
    ['soil-too-dry', 'unknown-matters', 'wait', 'soil-too-dry', 'right'],
    ['soil-too-dry', 'unknown-matters', 'wait', null, 'reason-wrong'],
    ['outside-region', 'unknown-spared', 'do-not-spray', 'outside-region', 'right'],
  ] as const)('on a day of %s, %s: %s because of %s is %s', async (rule, kind, verdict, reason, result) => {
    const checked = await checkAnswer(day(rule, kind), { verdict, rule: reason }, world, english);
    expect(checked.result).toBe(result);
    expect(checked.trace).toHaveLength(pack.rules.length);
    expect(checked.deciding.map((one) => one.rule)).toContain(rule);
    for (const { why, sentence } of checked.deciding) expect(why.length * sentence.length).toBeGreaterThan(0);
  });

  test('comes with the margin that decided it, also where it is on the safe side', async () => {
    const marginOf = async (kind: DayKind) => {
      const { deciding } = await checkAnswer(
        day('soil-too-warm', kind),
        { verdict: 'wait', rule: null },
        world,
        english,
      );
      return deciding.find(({ rule }) => rule === 'soil-too-warm')?.margin;
    };
    expect(await marginOf('inside')).toMatch(/^0\.[1-3] C too warm$/);
    expect(await marginOf('outside')).toMatch(/^(0\.[1-3] C room left|at the limit|exactly at the limit)/);
  });
});

describe('a typed reason', () => {
  test.each([
    ['en', 'too windy', { rule: 'too-windy' }],
    ['en', 'the soil is too warm', { rule: 'soil-too-warm' }],
    ['en', 'the crop is too small', { rule: 'crop-too-small' }],
    ['en', 'frost', { rule: 'frost-on-leaves' }],
    ['en', 'gusts', { rule: 'gusty' }],
    ['en', 'inversion', { rule: 'inversion' }],
    ['en', 'cracks in the soil', { rule: 'soil-cracked' }],
    ['en', 'nothing', { nothing: true }],
    ['en', 'all fine', { nothing: true }],
    ['en', 'bananas', { none: true }],
    ['en', '?!', { none: true }],
    ['de', 'Boden zu warm', { rule: 'soil-too-warm' }],
    ['de', 'nichts', { nothing: true }],
    ['de', 'Frost', { rule: 'frost-on-leaves' }],
  ] as const)('in %s: "%s"', (language, text, expected) => {
    expect(matchReason(text, pack, world.definitionOf, catalogueOf(language), practiceWordsOf(language))).toEqual(
      expected,
    );
  });

  test('that fits several is asked about', () => {
    const found = matchReason('soil', pack, world.definitionOf, english, practiceWordsOf('en'));
    expect(found).toHaveProperty('perhaps');
  });

  test('every title means its own rule, in both languages', () => {
    for (const language of ['en', 'de']) {
      for (const { id, text } of pack.rules) {
        const found = matchReason(
          text[language]!.title,
          pack,
          world.definitionOf,
          catalogueOf(language),
          practiceWordsOf(language),
        );
        const rules = 'rule' in found ? [found.rule] : 'perhaps' in found ? found.perhaps : [];
        expect(rules, `${language}: ${text[language]!.title}`).toContain(id);
      }
    }
  });
});
