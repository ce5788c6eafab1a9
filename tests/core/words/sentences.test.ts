import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Known, Resolved } from '../../../src/core/facts/types.ts';
import type { Lifts } from '../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import type { Dose, Reason, VerdictWord } from '../../../src/core/verdict/types.ts';
import { catalogueOf, catalogues } from '../../../src/core/words/catalogue.ts';
import { describeDose } from '../../../src/core/words/dose.ts';
import { describeForecast, describePack, describeValidUntil } from '../../../src/core/words/forecast.ts';
import { headlineOf } from '../../../src/core/words/headline.ts';
import { phraseOf } from '../../../src/core/words/phrases.ts';
import { describeSource } from '../../../src/core/words/sources.ts';
import { showAgo, showTime } from '../../../src/core/words/times.ts';
import { describeValue } from '../../../src/core/words/values.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

const words = catalogueOf('en');
const noon = epochSeconds(Date.UTC(2026, 10, 6, 12) / 1000);
const origin = { known: true, source: 'said', at: epochSeconds(noon - 7200), goodUntil: null } as const;
const number = (value: number, low = value, high = value): Known => ({ ...origin, type: 'number', value, low, high });
const choice = (...possible: string[]): Known => ({ ...origin, type: 'choice', possible });
const signs = (present: string[], possible = present): Known => ({ ...origin, type: 'signs', present, possible });

describe('a value', () => {
  test.each<[FactId, Resolved, string]>([
    ['soil.temperature30cmC', number(9.2, 9, 9.4), '9.2 C (9.0 to 9.4)'],
    ['soil.temperature30cmC', number(9), '9.0 C'],
    ['soil.temperature30cmC', number(9.2, 9.04, 9.36), '9.2 C (9.0 to 9.4)'],
    ['crop.trueLeaves', number(1), '1 leaf'],
    ['weed.plantsPerM2', number(40), '40 plants per m2'],
    ['soil.feel', choice('moist', 'wet'), 'moist or wet'],
    ['soil.surface', signs(['cracked', 'sticky']), 'cracked and sticky'],
    ['soil.surface', signs(['cracked'], ['cracked', 'frozen', 'snow']), 'cracked, perhaps frozen or under snow'],
    ['soil.surface', signs([]), 'none of the signs looked for'],
    ['field.country', choice('GB-ENG'), 'England'],
    ['date', { ...origin, type: 'date', iso: '2026-11-06' }, '6 November 2026'],
    ['soil.feel', { known: false, reason: 'not-asked' }, 'not known: not asked'],
    ['soil.feel', { known: false, reason: 'person-does-not-know' }, 'not known: you could not say'],
  ])('of %s is told with its unit, band and doubt', (id, resolved, text) => {
    expect(describeValue(factDefinition(id), resolved, words)).toBe(text);
  });

  test('is never rounded onto or across a limit that it is not at', () => {
    const definition = factDefinition('soil.temperature30cmC');
    expect(describeValue(definition, number(10.04), words, [10])).toBe('10.04 C');
    expect(describeValue(definition, number(9.96), words, [10])).toBe('9.96 C');
    expect(describeValue(definition, number(10), words, [10])).toBe('10.0 C');
  });

  test.each<[FactId, Parameters<typeof phraseOf>[1], string]>([
    ['soil.drainsRunning', { type: 'choice', possible: ['no'] }, 'drains not running'],
    ['soil.temperature30cmC', { type: 'number', value: 9.25 }, 'soil at 30 cm 9.25 C'],
    ['field.waterDistanceM', { type: 'number', value: 12.5 }, 'nearest water 12.5 m'],
    ['field.texture', { type: 'choice', possible: ['clay-loam'] }, 'soil clay loam'],
    ['soil.temperatureTrendCPerDay', { type: 'number', value: -0.1 }, 'soil at 30 cm, change -0.1 C a day'],
    [
      'soil.temperatureTrendCPerDay',
      { type: 'number', value: -0.2, low: -1, high: -0.08 },
      'soil at 30 cm colder than a week ago',
    ],
    [
      'soil.temperatureTrendCPerDay',
      { type: 'number', value: 0, low: -0.07, high: 0.07 },
      'soil at 30 cm about as a week ago',
    ],
    [
      'soil.surface',
      { type: 'signs', present: ['cracked'], absent: ['sticky'], complete: false },
      'surface cracked; not sticky',
    ],
    [
      'soil.surface',
      { type: 'signs', present: ['friable'], absent: ['cracked', 'sticky', 'ponded'], complete: false },
      'surface crumbly; none of: cracked, sticky, ponded',
    ],
    ['soil.feel', { type: 'does-not-know' }, 'feel of the soil in the hand: you cannot say'],
  ])('of %s is said back as it was given', (id, reading, text) => {
    expect(phraseOf(id, reading, factDefinition, words)).toBe(text);
  });

  test.each([
    ['en', ['no'], 'crop under stress: no'],
    ['de', ['yes'], 'Kultur unter Stress: ja'],
    ['en', ['yes', 'no'], 'crop under stress yes or no'],
  ])(
    'of a yes or no that a pack brings is said back with its name, a colon between (%s)',
    (language, possible, text) => {
      const labels = { en: 'crop under stress', de: 'Kultur unter Stress' };
      const definition = { ...factDefinition('soil.drainsRunning'), labels };
      const said = phraseOf('crop.stressed', { type: 'choice', possible }, () => definition, catalogueOf(language));
      expect(said).toBe(text);
    },
  );
});

describe('where a value came from', () => {
  const times = { now: noon, forecastFetchedAt: epochSeconds(noon - 3 * 3600) };
  test.each<[string, Resolved, string]>([
    ['said', number(1), 'you said, 2 h ago'],
    ['told', { ...number(1), source: 'told' }, 'the forecast as you told it, 2 h ago'],
    ['profile', { ...number(1), source: 'profile' }, 'field profile'],
    ['forecast', { ...number(1), source: 'forecast' }, 'forecast, fetched 3 h ago'],
    [
      'derived',
      { ...number(1), source: 'derived', note: 'the field is not drained' },
      'worked out: the field is not drained',
    ],
  ])('is told for what was %s', (_, resolved, text) => {
    expect(describeSource(resolved, times, words)).toBe(text);
  });

  test.each([
    [60, 'just now'],
    [25 * 60, '25 min ago'],
    [47.9 * 3600, '47 h ago'],
    [48 * 3600, '2 days ago'],
  ])('%d seconds ago is told in words', (seconds, text) => {
    expect(showAgo(epochSeconds(noon - seconds), noon, words)).toBe(text);
  });
});

describe('the headline', () => {
  const reason = (lifts: Lifts, outcome: Reason['outcome'] = 'met'): Reason =>
    ({ rule: 'a', effect: 'hold', authority: 'practice', lifts, outcome, margin: null, marginUnit: null }) as const;
  const headline = (verdict: VerdictWord, slowest: Exclude<Lifts, 'person'> | null, ...reasons: Reason[]) =>
    headlineOf({ verdict, slowest, reasons }, words);

  test('follows the slowest of what lifts it, and jobs only where nothing else is in the way', () => {
    expect([
      headline('spray-today', null),
      headline('wait', 'hours', reason('hours')),
      headline('wait', 'days', reason('days'), reason('hours'), reason('person')),
      headline('wait', null, reason('person')),
      headline('wait', null, reason('person'), reason('person')),
      headline('wait', null, reason('days', 'unknown')),
      headline('do-not-spray', 'hours', reason('hours')),
      headline('do-not-spray', 'days', reason('days')),
      headline('do-not-spray', 'season', reason('season')),
    ]).toMatchInlineSnapshot(`
      [
        "Spray today: nothing that was checked speaks against it.",
        "Wait: the weather is against it for now. Look again in some hours.",
        "Wait: it will take days, not hours.",
        "Wait until the job below is done.",
        "Wait until the jobs below are done.",
        "Wait: something that matters is not known. Find it out first.",
        "Do not spray now: look again in some hours, when the weather has changed.",
        "Do not spray now: it will take days before this lifts.",
        "Do not spray this field this season.",
      ]
    `);
  });

  test('never says never', () => {
    expect(JSON.stringify(Object.values(catalogues).map(({ verdict }) => verdict))).not.toMatch(/\bnever\b/i);
  });
});

describe('the dose', () => {
  const dose: Dose = {
    activeGPerHa: 750,
    productLPerHa: 1.5,
    activeInProductGPerHa: 750,
    labelMaxGPerHa: 840,
    basis: 'usual',
    cutToLabel: false,
  };
  const say = (more: Partial<typeof dose>, strength = 500) =>
    describeDose({ ...dose, ...more }, strength, factDefinition, words);

  test('is told with its rounding and what the label allows, or what is needed for it', () => {
    expect([
      say({}),
      say({ activeGPerHa: 840, productLPerHa: 2.09, activeInProductGPerHa: 836, basis: 'severe' }, 400),
      say({ activeGPerHa: 700, productLPerHa: 1.4, activeInProductGPerHa: 700, labelMaxGPerHa: 700, cutToLabel: true }),
      describeDose({ needs: ['product.activeGPerL', 'product.labelMaxGPerHa'] }, null, factDefinition, words),
    ]).toMatchInlineSnapshot(`
      [
        "750 g/ha of active: 1.50 L/ha of a 500 g/L product (rounded down); the label in hand allows 840 g/ha at most. For a solid product read kg/ha and g/kg.",
        "840 g/ha of active: 2.09 L/ha of a 400 g/L product (rounded down); the label in hand allows 840 g/ha at most. With the product rounded down that is 836 g/ha. This is the higher dose, for severe infestations only. For a solid product read kg/ha and g/kg.",
        "700 g/ha of active: 1.40 L/ha of a 500 g/L product (rounded down); the label in hand allows 700 g/ha at most. The label's maximum cuts the usual dose. For a solid product read kg/ha and g/kg.",
        "No dose yet. Needed from the label in hand: active in the product and most active per hectare that the label allows.",
      ]
    `);
  });
});

describe('the small print', () => {
  const moment = { now: noon, zone: 'Europe/London' };
  test("tells the forecast with its age, reach, point and source, the time in the field's zone, and the rules", () => {
    const forecast = {
      attribution: 'Invented weather.',
      invented: true,
      fetchedAt: '2026-11-06T10:00:00Z',
      ageHours: 2,
      reachesTo: '2026-11-12T23:00:00Z',
      unused: null,
      note: null,
      rainChance: { courses: 20, share: 0.8, atMostMm: 2.4 },
      latitude: 54,
      longitude: -2,
      distanceKm: 3.24,
    };
    expect([
      describeForecast(forecast, moment, words),
      describeForecast(null, moment, words),
      describeValidUntil('2026-11-06T12:40:00Z', moment, words),
      describeValidUntil('2026-11-07T00:00:00Z', moment, words),
      describeValidUntil(null, moment, words),
      describePack({ id: 'p', version: '1.2.0', hash: 'ab'.repeat(32), title: 'Propyzamide' }, words),
    ]).toMatchInlineSnapshot(`
      [
        "Forecast fetched 10:00 (2 h ago); it reaches to 23:00 on 12 November 2026. Chance that at most 2.4 mm of rain falls in the next 48 hours: about 8 in 10 (20 courses of the weather). Its point lies 3.2 km from the field. Invented weather.",
        "No forecast was used: the weather is as you told it.",
        "This answer stands until 12:40 at the latest. After that, look again.",
        "This answer stands until 00:00 on 7 November 2026 at the latest. After that, look again.",
        "Nothing in this answer grows old today.",
        "Rules: Propyzamide, version 1.2.0, content abababababab.",
      ]
    `);
  });

  test.each([
    ['summer time in London', Date.UTC(2026, 9, 24, 12), 'Europe/London', '13:00 on 24 October 2026'],
    ['after the clock change', Date.UTC(2026, 9, 25, 12), 'Europe/London', '12:00 on 25 October 2026'],
    ['a zone with a half hour', Date.UTC(2026, 9, 25, 12), 'Asia/Kolkata', '17:30 on 25 October 2026'],
  ])('tells the time of %s', (_, ms, zone, text) => {
    expect(showTime(epochSeconds(ms / 1000), zone, null, words)).toBe(text);
  });
});
