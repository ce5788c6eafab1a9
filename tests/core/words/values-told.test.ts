import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { FactDefinition, Reading, Resolved } from '../../../src/core/facts/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeDose } from '../../../src/core/words/dose.ts';
import { labelOf } from '../../../src/core/words/facts.ts';
import { phraseOf, shortName } from '../../../src/core/words/phrases.ts';
import { describeSource } from '../../../src/core/words/sources.ts';
import { describeReading, describeValue, showChoice } from '../../../src/core/words/values.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { choice, number, signsSeen } from '../../generators/small.ts';

const en = catalogueOf('en');
const de = catalogueOf('de');

/** A fact of a pack, with names of its own. */
const own: FactDefinition = {
  ...factDefinition('soil.feel'),
  label: 'own feel',
  labels: { de: 'eigenes Gefühl' },
  choiceLabels: { moist: { de: 'schön feucht' } },
};

describe('the name', () => {
  test.each([
    ['of a fact of a pack, in its own language', de, own, 'eigenes Gefühl'],
    ['of a fact built in, in the language', de, factDefinition('soil.feel'), 'Boden in der Hand'],
    ['of a fact built in, in English', en, factDefinition('soil.feel'), 'feel of the soil in the hand'],
    ['of a fact of a pack, in English', en, own, 'own feel'],
  ])('%s', (_, words, definition, label) => {
    expect(labelOf('soil.feel', () => definition, words)).toBe(label);
  });

  test('of a fact in running text is the short one, else that of the pack, of the language, of the registry', () => {
    expect(shortName('soil.feel', own, en)).toBe('soil feels');
    expect(shortName('pack.feel' as FactId, own, de)).toBe('eigenes Gefühl');
    expect(shortName('pack.feel' as FactId, own, en)).toBe('own feel');
    expect(shortName('field.drained', factDefinition('field.drained'), de)).toBe(de.facts['field.drained']);
  });

  test('of a choice is that of the pack, else of the language, else its id', () => {
    expect([showChoice('moist', de, own), showChoice('moist', de), showChoice('FR', de, own)]).toEqual([
      'schön feucht',
      'feucht',
      'FR',
    ]);
  });
});

describe('a value', () => {
  test.each<[FactId, Resolved, string]>([
    ['soil.temperature30cmC', number(9.2, 9.2, 9.4), '9.2 C (9.2 to 9.4)'],
    ['soil.temperature30cmC', number(9.2, 9, 9.2), '9.2 C (9.0 to 9.2)'],
    ['soil.feel', choice('moist'), 'moist'],
    ['soil.surface', signsSeen([], ['frozen']), 'perhaps frozen'],
    ['soil.surface', signsSeen([], ['frozen', 'snow']), 'perhaps frozen or under snow'],
    ['soil.surface', signsSeen(['cracked']), 'cracked'],
    ['soil.temperature30cmC', { known: false, reason: 'forecast-gap' }, 'not known: the forecast has a gap'],
  ])('of %s is told: %j', (id, resolved, text) => {
    expect(describeValue(factDefinition(id), resolved, en)).toBe(text);
  });

  test('of a pack is told by its own names', () => {
    expect(describeValue(own, choice('moist', 'dry'), de)).toBe('schön feucht oder trocken');
  });
});

describe('a reading', () => {
  const read = (id: FactId, reading: Reading) => describeReading(factDefinition(id), reading, en);
  const from = { depthCm: 10, valueC: 8.5, hour: '09:00' };
  test.each<[FactId, Reading, string]>([
    ['soil.temperature30cmC', { type: 'number', value: 9.25 }, '9.25 C'],
    ['soil.temperature30cmC', { type: 'number', value: 9.25, low: 9.25, high: 9.25 }, '9.25 C'],
    ['soil.temperature30cmC', { type: 'number', value: 9.25, low: 9 }, '9.25 C (9 to 9.25)'],
    ['soil.temperature30cmC', { type: 'number', value: 9.25, high: 9.5 }, '9.25 C (9.25 to 9.5)'],
    ['crop.trueLeaves', { type: 'number', value: 1 }, '1 leaf'],
    ['soil.temperature30cmC', { type: 'does-not-know' }, 'not known to you'],
    ['soil.feel', { type: 'choice', possible: ['moist', 'wet'] }, 'moist or wet'],
    ['date', { type: 'date', iso: '2026-11-06' }, '6 November 2026'],
    ['soil.surface', { type: 'signs', present: [], absent: [], complete: true }, 'none of the signs looked for'],
    ['soil.surface', { type: 'signs', present: [], absent: ['cracked'], complete: false }, 'not cracked'],
    [
      'soil.surface',
      { type: 'signs', present: ['frozen', 'snow'], absent: [], complete: true },
      'frozen and under snow',
    ],
    [
      'soil.surface',
      { type: 'signs', present: ['frozen'], absent: ['cracked', 'sticky'], complete: false },
      'frozen; none of: cracked, sticky',
    ],
  ])('of %s as it came: %j', (id, reading, text) => {
    expect(read(id, reading)).toBe(text);
  });

  test('that was worked out from another depth says from what', () => {
    const reading: Reading = { type: 'number', value: 9, low: 8, high: 10, from };
    expect(read('soil.temperature30cmC', reading)).toBe('9 C (8 to 10), worked out from 8.5 C at 10 cm at 09:00');
    expect(describeReading(factDefinition('soil.temperature30cmC'), reading, de)).toContain('8,5');
  });

  test('of a pack is told by its own names', () => {
    expect(describeReading(own, { type: 'choice', possible: ['moist'] }, de)).toBe('schön feucht');
  });
});

describe('what was said, as said back', () => {
  const trend = (more: object): Reading => ({ type: 'number', value: 0, ...more });
  test.each<[FactId, Reading, string]>([
    ['soil.temperatureTrendCPerDay', trend({ low: -1, high: -0.1 }), 'soil at 30 cm colder than a week ago'],
    ['soil.temperatureTrendCPerDay', trend({ low: -1, high: 0 }), 'soil at 30 cm about as a week ago'],
    ['soil.temperatureTrendCPerDay', trend({ low: 0, high: 1 }), 'soil at 30 cm about as a week ago'],
    ['soil.temperatureTrendCPerDay', trend({ low: 0.1, high: 1 }), 'soil at 30 cm warmer than a week ago'],
    ['soil.temperatureTrendCPerDay', trend({ low: -0.1 }), 'soil at 30 cm about as a week ago'],
    ['soil.temperatureTrendCPerDay', { type: 'number', value: 0.5 }, 'soil at 30 cm, change 0.5 C a day'],
    ['soil.temperature30cmC', { type: 'number', value: 9, low: 8, high: 10 }, 'soil at 30 cm 9 C (8 to 10)'],
    ['soil.drainsRunning', { type: 'choice', possible: ['yes', 'no'] }, 'drains running yes or no'],
    ['soil.feel', { type: 'choice', possible: ['moist'] }, 'soil feels moist'],
  ])('of %s: %j', (id, reading, text) => {
    expect(phraseOf(id, reading, factDefinition, en)).toBe(text);
  });
});

describe('where a value came from', () => {
  const now = epochSeconds(10 * 3600);
  const times = { now, forecastFetchedAt: epochSeconds(7 * 3600) };
  const one = { ...number(1), at: epochSeconds(8 * 3600) };
  test.each<[string, Resolved, string]>([
    ['unknown, without a note', { known: false, reason: 'not-asked' }, 'nothing told yet'],
    [
      'unknown, with a note',
      { known: false, reason: 'too-old', note: '9.6 C at 2026-11-05 09:00' },
      '9.6 C at 2026-11-05 09:00',
    ],
    ['profile', { ...one, source: 'profile', note: 'a note' }, 'field profile'],
    ['derived', { ...one, source: 'derived' }, 'worked out'],
    ['forecast', { ...one, source: 'forecast', note: 'forecast 3' }, 'forecast, fetched 3 h ago; forecast 3'],
    ['measured', { ...one, source: 'measured' }, 'measured, 2 h ago'],
    ['said, with a note', { ...one, note: 'a note' }, 'you said, 2 h ago; a note'],
  ])('%s', (_, resolved, text) => {
    expect(describeSource(resolved, times, en)).toBe(text);
  });

  test('a forecast whose time is not known is a forecast still', () => {
    expect(describeSource({ ...one, source: 'forecast' }, { ...times, forecastFetchedAt: null }, en)).toBe('forecast');
  });

  test('a note is told in the language', () => {
    expect(describeSource({ ...one, source: 'derived', note: 'the field is not drained' }, times, de)).toContain(
      'das Feld ist nicht dräniert',
    );
  });
});

describe('a dose', () => {
  const dose = { activeGPerHa: 1750, productLPerHa: 2.5, activeInProductGPerHa: 1250, labelMaxGPerHa: 1840.5 };
  const told = (language: string, strength: number | null) =>
    describeDose({ ...dose, basis: 'usual', cutToLabel: false }, strength, factDefinition, catalogueOf(language));

  test('whose product is rounded down says what that is, in the numbers of the language', () => {
    expect(told('en', 500)).toBe(
      '1750 g/ha of active: 2.50 L/ha of a 500 g/L product (rounded down); the label in hand allows 1840.5 g/ha at most. ' +
        'With the product rounded down that is 1250 g/ha. For a solid product read kg/ha and g/kg.',
    );
    expect(told('en', null)).toBe(told('en', 500));
    expect(told('de', 500)).toMatch(/2,50 .*1840,5/);
  });

  test('that cannot be told yet names what is needed, and nothing where nothing is', () => {
    const needs = (...facts: FactId[]) => describeDose({ needs: facts }, null, factDefinition, en);
    expect(needs()).toBe('');
    expect(needs('product.activeGPerL')).toBe(
      `No dose yet. Needed from the label in hand: ${factDefinition('product.activeGPerL').label}.`,
    );
    expect(needs('product.activeGPerL', 'product.labelMaxGPerHa')).toContain(' and ');
  });
});
