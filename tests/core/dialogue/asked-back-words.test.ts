import { describe, expect, test } from 'vitest';
import { glossaryIn, headWord, sentencesIn, termsIn } from '../../../src/core/dialogue/terms.ts';
import { ruleViews } from '../../../src/core/dialogue/view-rules.ts';
import { ruleText, wordReason } from '../../../src/core/dialogue/worded-reason.ts';
import type { GlossaryTerm, Pack } from '../../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { heard, listener } from './listener.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { fieldOf, lines, morning, pressed, requested, said, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));
const last = (...told: Told[]) => lines(talk(told, world), pack).at(-1);
const [dry, moist] = [pressed('soil-feel', 'dry'), pressed('soil-feel', 'moist')];
const over = started(pack, fieldOf({ 'field.country': 'FR' }));

describe('whoever asks back', () => {
  test.each<[string, Told[], string]>([
    [
      'why not, of a spray today',
      [begin, moist, requested('why-not')],
      'Nothing that is known stands in the way: spray today.',
    ],
    [
      'why not, with something unknown',
      [begin, requested('why-not')],
      'Not known yet, and unknown is never approval: soil saturated and soil too dry.',
    ],
    [
      'why not, of a soil too warm: the sentence and how far off',
      [started(pack, fieldLess({ ...fitMorning, 'soil.temperature30cmC': 12 })), requested('why-not')],
      'The soil at 30 cm is 12.0 C; the limit is 10 C. 2.0 C too warm. Not known yet, and unknown is never approval: soil warming up.',
    ],
    ['when, of a spray today', [begin, moist, requested('when')], 'Today, until 09:50.'],
    ['when, of a stop of the season', [over, requested('when')], 'Not this season on this field.'],
    [
      'when, with questions open',
      [begin, requested('when')],
      'That cannot be told before the open questions are answered.',
    ],
    ['what is needed, of a spray today', [begin, moist, requested('needs')], 'Nothing more: the answer is sure.'],
  ])('%s', (_, told, text) => {
    expect(last(...told)).toBe(`- ${text}`);
  });

  test('when, of a wait: what must lift, each once', () => {
    expect(last(begin, dry, requested('when'))).toMatchInlineSnapshot(
      `"- When that has lifted: Wait for gentle rain, then feel the soil again. Heavy rain on dry soil carries the active to water."`,
    );
  });

  test('what is needed, of a wait that time lifts: what to wait for', () => {
    expect(last(begin, dry, requested('needs'))).toMatchInlineSnapshot(
      `"- Wait for gentle rain, then feel the soil again. Heavy rain on dry soil carries the active to water."`,
    );
  });

  test('when, beside a forecast: the paragraph of the coming days and the least that would have to change', () => {
    const home = started(pack, fieldLess({ ...fitMorning, 'field.latitude': 54, 'field.longitude': -2 }, 'soil.feel'));
    const conversation = talk([home, dry, requested('when')], { pack, forecast: inventedForecast(morning) });
    expect(lines(conversation, pack).at(-1)).toMatchInlineSnapshot(
      `"- It may come right on Saturday 7 November, 10:00, until Monday 9 November, 14:00 (52 h), but only if what is in the way now has gone (soil too dry); a fresh look finds the soil surface, the feel of the soil, the air (inversion) and 2 more fit. Chance that the soil at 30 cm is below 10 C then: more than 9 in 10. Surest in daylight: Sunday 8 November, 08:00 to 16:00; hour by hour the weather is very likely to hold (more than 9 in 10). Ask again on the day itself. The least that would turn today's answer, as far as it is known: feel of the soil in the hand."`,
    );
  });

  test('before the start is told that nothing is open', () => {
    expect(lines(talk([requested('why-not')], world), pack)).toEqual([]);
  });
});

describe('what would be, supposing', () => {
  const understand = listener({
    'the soil is 12': heard('soil.temperature30cmC', 12),
    'the soil is 7': heard('soil.temperature30cmC', 7),
    'the feel is moist': heard('soil.feel', 'moist'),
    'wind 30, gusts 50, soil 12, feel dry': {
      readings: [
        ...heard('wind.boomKmh', 30).readings,
        ...heard('wind.gustKmh', 50).readings,
        ...heard('soil.temperature30cmC', 12).readings,
        ...heard('soil.feel', 'dry').readings,
      ],
    },
  });
  const supposing = (text: string, ...before: Told[]) =>
    lines(talk([begin, ...before, said(`what if ${text}`)], { ...world, understand }), pack).at(-1);

  test.each<[string, Told[], string]>([
    ['the soil is 12', [moist], 'soil at 30 cm 12 C: wait, because of soil too warm'],
    ['the soil is 7', [moist], 'soil at 30 cm 7 C: spray today, as far as what you told and the forecast go'],
    [
      'the soil is 7',
      [],
      'soil at 30 cm 7 C: wait, since this would still not be known: soil saturated and soil too dry',
    ],
    ['the feel is moist', [], 'soil feels moist: spray today, as far as what you told and the forecast go'],
    [
      'wind 30, gusts 50, soil 12, feel dry',
      [],
      'wind at the boom 30 km/h; gusts at the boom 50 km/h; soil at 30 cm 12 C; soil feels dry: wait, because of gusty, soil too dry and soil too warm',
    ],
  ])('%s', (text, before, answer) => {
    expect(supposing(text, ...before)).toBe(`- Supposing ${answer}. This is no answer; what you told stays as it is.`);
  });
});

describe('trade terms', () => {
  const words = catalogueOf('en');
  const term = (id: string, more: Partial<GlossaryTerm> = {}): GlossaryTerm => ({
    id,
    words: { en: [id, `${id}s`] },
    text: { en: `What ${id} means.` },
    source: 'invented for tests',
    ...more,
  });
  const having = (...glossary: GlossaryTerm[]): Pack => ({ ...pack, glossary });

  test('are found in sentences however deep they stand, in the order of the glossary', () => {
    expect(sentencesIn({ a: 'one', b: ['two', { c: 'three', d: 4, e: null, f: undefined, g: true }] })).toEqual([
      'one',
      'two',
      'three',
    ]);
    expect(sentencesIn('alone')).toEqual(['alone']);
    expect(sentencesIn(null)).toEqual([]);
    const some = having(term('tilth'), term('boom'), term('drift'));
    expect(termsIn(['Drift and tilth.'], some, words).map(({ id }) => id)).toEqual(['tilth', 'drift']);
    expect(termsIn([], some, words)).toEqual([]);
  });

  test('are told with every form and their source, in English where they have no other language', () => {
    const forms = term('tilth', {
      words: { en: ['tilth'], de: ['Gare'] },
      forms: { de: ['Bodengare'] },
      text: { en: 'Fine soil.' },
    });
    expect(glossaryIn([forms], catalogueOf('de'))).toEqual([
      { id: 'tilth', said: ['Gare', 'Bodengare'], text: 'Fine soil. (invented for tests)' },
    ]);
    expect(glossaryIn([forms, term('x', { words: {} })], words).map(({ said: forms }) => forms)).toEqual([
      ['tilth'],
      [],
    ]);
  });

  test('are made once for each language', () => {
    const glossary = [term('tilth')];
    expect(glossaryIn(glossary, words)).toBe(glossaryIn(glossary, words));
    expect(glossaryIn(glossary, catalogueOf('de'))).not.toBe(glossaryIn(glossary, words));
    expect(glossaryIn(glossary, words)).toBe(glossaryIn(glossary, words));
  });

  test('are called by their first word, in English where there is no other, by their id where there is none', () => {
    expect(headWord(term('tilth', { words: { en: ['tilth'], de: ['Gare', 'Bodengare'] } }), 'de')).toBe('Gare');
    expect(headWord(term('tilth'), 'de')).toBe('tilth');
    expect(headWord(term('tilth', { words: {} }), 'de')).toBe('tilth');
  });
});

describe('a rule without sentences', () => {
  const reason = {
    rule: 'too-windy',
    effect: 'hold',
    authority: 'law',
    lifts: 'hours',
    outcome: 'met',
    margin: null,
    marginUnit: null,
  } as const;
  const worded = (text: Pack['rules'][number]['text'], language = 'en') => {
    const bare = { ...pack, rules: pack.rules.map((one) => (one.id === 'too-windy' ? { ...one, text } : one)) };
    return wordReason(reason, { pack: bare, rule: undefined, parameters: new Map() as never, language });
  };

  test('is called by its id and says nothing', () => {
    expect(worded({})).toMatchObject({ title: 'too-windy', text: '', lift: null, margins: [], marginText: null });
  });

  test('in a language speaks English there', () => {
    const text = { en: { title: 'Windy', met: 'Too much wind.', unknown: 'Measure it.', lift: 'Wait.' } };
    expect(worded(text, 'de')).toMatchObject({ title: 'Windy', text: 'Too much wind.', lift: 'Wait.' });
    expect(ruleText(pack, 'no-such', 'en')).toBeUndefined();
  });

  test('that a pack no longer has is shown by its id, without source and reason', () => {
    const { decision } = talk([begin, moist], world).state.verdicts[0]!;
    const none = { ...pack, rules: pack.rules.filter(({ id }) => id !== 'too-windy') };
    const views = ruleViews({ ...decision }, none, catalogueOf('en'));
    expect(views.find(({ rule }) => rule === 'too-windy')).toMatchObject({ title: 'too-windy', source: '', why: '' });
    expect(views.map(({ rule }) => rule)).toEqual(decision.trace.map(({ rule }) => rule));
  });

  test('is put into words once for each language', () => {
    const { decision } = talk([begin, moist], world).state.verdicts[0]!;
    const english = ruleViews(decision, pack, catalogueOf('en'));
    expect(ruleViews(decision, pack, catalogueOf('en'))).toBe(english);
    expect(ruleViews(decision, pack, catalogueOf('de'))[0]?.title).not.toBe(english[0]?.title);
  });
});
