import { describe, expect, test } from 'vitest';
import { jobsFor } from '../../../src/core/dialogue/find-out.ts';
import { stampOf } from '../../../src/core/dialogue/pack-stamp.ts';
import { standingVerdict } from '../../../src/core/dialogue/standing-verdict.ts';
import { verdictView } from '../../../src/core/dialogue/view-verdict.ts';
import type { AppliedOverlay, Pack } from '../../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, fieldOf, look, morning, pressed, requested, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel'));
const verdictOf = (...told: Told[]) => look(talk(told, world), pack).verdict;
const given = (...told: Told[]) => talk(told, world).state.verdicts.at(-1)!;

describe('a verdict as shown', () => {
  test('of spray today says until when it stands and that it is withdrawn after', () => {
    expect(verdictOf(begin, pressed('soil-feel', 'moist'))).toMatchObject({
      verdict: 'spray-today',
      at: '2026-11-06T09:01:00Z',
      validUntil: '2026-11-06T09:50:00Z',
      validUntilText: 'This answer stands until 09:50 at the latest. After that, look again.',
      givenText: expect.stringContaining('6 November 2026'),
      goodUntilText: expect.stringContaining('09:50'),
      doseNeeds: true,
      canCheckRest: false,
      change: null,
      jobs: [],
    });
  });

  test('of wait has no such time, tells its jobs and whether the rest can be checked', () => {
    const dry = verdictOf(
      started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface')),
      pressed('soil-feel', 'dry'),
    );
    expect(dry).toMatchObject({
      verdict: 'wait',
      validUntilText: null,
      goodUntilText: null,
      doseNeeds: true,
      canCheckRest: true,
    });
    expect(dry?.validUntil).not.toBeNull();
    expect(dry?.jobs).toEqual(dry?.reasons.flatMap(({ lift, lifts }) => (lifts === 'person' ? [lift] : [])));
  });

  test('of do not spray asks nothing for a dose and offers no checking past a stop of the season', () => {
    const stop = verdictOf(started(pack, fieldOf({ 'field.country': 'FR' })));
    expect(stop).toMatchObject({ verdict: 'do-not-spray', doseNeeds: false, canCheckRest: false });
  });

  test('whose dose is told needs nothing more for it', () => {
    const label = { 'product.activeGPerL': 500, 'product.labelMaxGPerHa': 840, 'weed.plantsPerM2': 10 };
    const field = started(pack, fieldLess({ ...fitMorning, ...label }));
    expect(verdictOf(field)?.doseNeeds).toBe(false);
  });

  test('is shown in the log by its sentences alone, and with its rules where it stands', () => {
    const conversation = talk([begin, pressed('soil-feel', 'dry')], world);
    const { entries, verdict } = look(conversation, pack);
    const logged = entries.find((entry) => entry.kind === 'verdict');
    expect(logged?.kind === 'verdict' ? [logged.verdict.rules, logged.verdict.canCheckRest] : null).toEqual([
      [],
      false,
    ]);
    expect(verdict?.rules).toHaveLength(pack.rules.length);
  });

  test('says what changed since the one before, in the order in which they were given', () => {
    const { state } = talk(
      [begin, pressed('soil-feel', 'dry'), pressed('soil-feel', 'moist'), pressed('soil-feel', 'dry')],
      world,
    );
    const changes = state.verdicts.map(
      (one) => verdictView(one, state, { pack, now: morning, words: catalogueOf('en') }, null).change,
    );
    expect(changes).toEqual([
      null,
      'It was wait; now spray today, because no longer in the way: soil too dry.',
      'It was spray today; now wait, because new in the way: soil too dry.',
    ]);
  });

  test('has each rule with its source, reason, facts, limits and margins in words', () => {
    const rules = verdictOf(begin, pressed('soil-feel', 'moist'))?.rules ?? [];
    const windy = rules.find(({ rule }) => rule === 'too-windy');
    const written = pack.rules.find(({ id }) => id === 'too-windy')!;
    expect(windy).toMatchObject({
      title: written.text['en']?.title,
      outcome: 'not-met',
      effect: written.effect,
      authority: written.authority,
      why: written.why['en'],
    });
    expect(windy?.facts).toContainEqual({
      fact: 'wind.boomKmh',
      label: 'wind at boom height',
      value: '5.0 km/h',
      from: 'field profile',
    });
    expect(windy?.limits).toMatchInlineSnapshot(`
      [
        {
          "parameter": "windMostKmh",
          "source": "UK Code of practice for using plant protection products, wind table (Beaufort forces at boom height; figure from memory)",
          "value": "9.6 km/h",
        },
      ]
    `);
    expect(windy?.margins).toMatchInlineSnapshot(`
      [
        "wind at boom height: 4.6 km/h room left",
      ]
    `);
    expect(windy?.outcomeText).toMatchInlineSnapshot(`"does not apply"`);
  });
});

describe('the verdict that stands', () => {
  const stands = (...told: Told[]) => {
    const { state } = talk(told, world);
    return (now: number) => standingVerdict(state, pack, epochSeconds(now))?.is ?? null;
  };
  const until = morning + 50 * 60;

  test('is none before the first', () => {
    expect(stands(begin)(morning)).toBeNull();
  });

  test('grows old at the very second where it is spray today; a wait does not', () => {
    const spray = stands(begin, pressed('soil-feel', 'moist'));
    expect([spray(until - 1), spray(until)]).toEqual(['standing', 'old']);
    const wait = stands(begin, pressed('soil-feel', 'dry'));
    expect([wait(until - 1), wait(until + 9999)]).toEqual(['standing', 'standing']);
  });

  test.each<[string, Told[], string]>([
    [
      'wait, with another thing that is no matter said since',
      [pressed('soil-feel', 'dry'), pressed('partner', 'yes')],
      'standing',
    ],
    ['wait, with what held it taken back', [pressed('soil-feel', 'dry'), { kind: 'undone', of: 'phone-1' }], 'stale'],
    [
      'spray today, with what it rested on taken back',
      [pressed('soil-feel', 'moist'), { kind: 'undone', of: 'phone-1' }],
      'stale',
    ],
    [
      'spray today, with a thing said since that no rule reads otherwise',
      [pressed('soil-feel', 'moist'), pressed('texture', 'heavy')],
      'standing',
    ],
  ])('%s: %s %s', (_, told, is) => {
    expect(stands(begin, ...told)(morning + 600)).toBe(is);
  });
});

describe('what there is to do', () => {
  const jobs = (...told: Told[]) => jobsFor(given(...told).decision, pack, 'en');

  test('is nothing for a spray today', () => {
    expect(jobs(begin, pressed('soil-feel', 'moist'))).toEqual([]);
  });

  test('is to find out what is not known, by its questions in their order, each with how', () => {
    const open = started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface', 'field.latitude'));
    const ask = (id: string) => {
      const text = pack.questions.find((one) => one.id === id)?.text['en'];
      return `${text?.ask} ${text?.how}`;
    };
    expect(jobs(open, requested('verdict-now'))).toEqual([ask('surface'), ask('soil-feel')]);
  });

  test('is what the rules say where no question asks for it', () => {
    const none: Pack = { ...pack, questions: [] };
    const { decision } = given(begin, doesNotKnow('soil-feel'));
    expect(jobsFor(decision, none, 'en')).toEqual([...new Set(decision.reasons.map(({ text }) => text))]);
    expect(jobsFor(decision, none, 'en').length).toBeGreaterThan(0);
  });

  test('is told in English where the question has no other language, and never as an empty line', () => {
    const { decision } = given(begin, doesNotKnow('soil-feel'));
    const worded = (text: Pack['questions'][number]['text']): Pack => ({
      ...pack,
      questions: pack.questions.map((one) => (one.id === 'soil-feel' ? { ...one, text } : one)),
    });
    expect(jobsFor(decision, worded({ en: { ask: 'Feel?', why: '', how: '' } }), 'de')).toContain('Feel?');
    expect(jobsFor(decision, worded({ en: { ask: '', why: '', how: 'Squeeze.' } }), 'en')).toContain('Squeeze.');
  });
});

describe('which rules judged', () => {
  const overlay = (changed: Partial<AppliedOverlay['changed']>): AppliedOverlay => ({
    id: 'local',
    title: { en: 'Local', de: 'Örtlich' },
    author: 'A. Dviser',
    place: 'Here',
    reason: 'invented for tests',
    layer: 'area',
    validFrom: '2026-01-01',
    hash: 'h',
    changed: { rules: [], parameters: [], questions: [], cautions: [], glossary: [], ...changed },
    fixed: [],
  });
  const changedRules = (changed: Partial<AppliedOverlay['changed']>, language = 'en') =>
    stampOf({ ...pack, overlays: [overlay(changed)] }, language).overlays?.[0]?.changedRules;

  test('is told by the pack alone where nothing is laid over it', () => {
    expect(stampOf(pack, 'de')).toEqual({
      id: pack.id,
      version: pack.version,
      hash: pack.hash,
      title: pack.title['de'],
    });
  });

  test('is told with each overlay and the rules that it changed, by their titles', () => {
    expect(stampOf({ ...pack, overlays: [overlay({ rules: ['too-windy'] })] }, 'de').overlays).toEqual([
      {
        id: 'local',
        title: 'Örtlich',
        author: 'A. Dviser',
        place: 'Here',
        hash: 'h',
        changedRules: [pack.rules.find(({ id }) => id === 'too-windy')?.text['de']?.title],
      },
    ]);
  });

  test('names a rule whose limit was changed, one that was taken out by its id, and no other', () => {
    expect(changedRules({ parameters: ['soilTemperatureMaxC'] })).toEqual(['Soil too warm']);
    expect(changedRules({ rules: ['gone-now', 'too-windy'] })).toEqual(['Too windy', 'gone-now']);
    expect(changedRules({})).toEqual([]);
  });
});
