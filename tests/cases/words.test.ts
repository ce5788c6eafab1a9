import { describe, expect, test } from 'vitest';
import { sourceIn } from '../../src/core/units/texts.ts';
import { packTable, shipped } from './shipped-pack.ts';

/** Words that nobody on a phone wants, and one that a lift sentence must not hold: a hold that will lift is no "never". */
const heavy = /\b(utilise|utilize|optimal|parameters?|threshold|evaluate|respectively|e\.g\.|i\.e\.)\b/i;

/** What its own treatment needs beside them. */
const ofTheFirst = {
  'up-and-down tramlines': /tramlines.*up and down/,
  'more than one mode of action': /mode of action/,
  'slow death': /slowly.*Look again/,
};

describe.each(packTable)('%s', (_, { pack }) => {
  const { rules, questions, cautions } = pack;

  describe('sentences for a tired reader on a phone', () => {
    const sentences = [
      ...rules.flatMap(({ id, text }) => Object.entries(text['en']!).map(([key, value]) => [`${id} ${key}`, value])),
      ...questions.flatMap(({ id, text }) =>
        Object.entries(text['en']!).map(([key, value]) => [`${id} ${key}`, value]),
      ),
      ...cautions.map(({ id, text }) => [id, text['en']!]),
    ] as [string, string][];

    test.each(sentences)('%s is short and plain', (__, sentence) => {
      expect(sentence.length).toBeLessThanOrEqual(260);
      expect(sentence).not.toMatch(heavy);
      expect(sentence.trim()).toBe(sentence);
    });

    test.each(questions.map(({ id, text }) => [id, text['en']!.ask]))('%s asks one question', (__, ask) => {
      expect(ask).toMatch(/^[A-Z][^?]{1,75}\?$/);
    });

    test.each(rules.map(({ id, text }) => [id, text['en']!.title]))('%s has a short title', (__, title) => {
      expect(title.length).toBeLessThanOrEqual(45);
      expect(title).not.toMatch(/[.!?]$/);
    });
  });

  test.each(rules.filter(({ lifts }) => lifts).map(({ id, text }) => [id, text['en']!.lift!]))(
    '%s says what lifts it, and never "never"',
    (__, lift) => {
      expect(lift).toMatch(/\.$/);
      expect(lift).not.toMatch(/\bnever\b/i);
    },
  );

  test.each(
    rules
      .filter(({ id, authority }) => authority === 'label' && id !== 'outside-region')
      .map(({ id, text }) => [id, text['en']!.met]),
  )('%s stands behind a label and defers to the label in hand', (__, met) => {
    expect(met).toMatch(/label in hand/);
  });

  describe('cautions always at hand', () => {
    /** The usual ones for work with plant protection products; common practice, no source. */
    const subjects = {
      'the label in hand': /label in hand/,
      'the local regulator': /regulator/,
      'a qualified adviser': /qualified adviser/,
      'operator certificate and tested sprayer': /certificate.*tested/,
      'protective clothing and hand washing': /protective clothing.*Wash hands/,
      're-entry, livestock, neighbours, bees, people on paths': /livestock.*neighbours.*paths.*bees/,
      'filling and washing away from drains and water': /Fill and wash.*drains/,
      'the no-spray strip': /Do not overspray/,
      'drift and nozzle': /nozzle.*drift|drift.*nozzle/,
      'following crops and harvest': /following crops.*harvest/,
      ...(pack.id === shipped.pack.id ? ofTheFirst : {}),
    };
    const all = cautions.map(({ text }) => text['en']!);
    test.each(Object.entries(subjects))('%s', (__, words) => {
      expect(all.filter((text) => words.test(text))).not.toEqual([]);
    });
  });

  test('every limit says where it comes from and why', () => {
    const { parameters, languages } = pack;
    const vague = languages.flatMap((language) =>
      parameters.filter(
        ({ source, why }) => sourceIn(source, language).length < 10 || !/^[A-ZÄÖÜ].*\.$/.test(why[language] ?? ''),
      ),
    );
    expect(vague.map(({ id }) => id)).toEqual([]);
  });

  test('a source that says that it has none, or is from memory, says so in every language', () => {
    const { parameters, rules, glossary, languages } = pack;
    const prose = /\b(?:no source|our choice|from memory|second-hand|check the label)\b/;
    const left = [...parameters, ...rules, ...glossary].filter(({ source }) => {
      if (typeof source === 'string') return prose.test(source);
      return languages.some((language) => language !== 'en' && prose.test(sourceIn(source, language)));
    });
    expect(left.map(({ id }) => id)).toEqual([]);
  });
});
