import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { CompiledCondition, Condition } from '../../../src/core/rules/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { sayCondition, sayConditionLines } from '../../../src/core/words/say-condition.ts';
import { sayParameter, sayRule, titlesOf } from '../../../src/core/words/say-rule.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition, ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../generators/conditions.ts';
import { choiceFacts, countries, signs } from '../../generators/fact-pool.ts';
import { holdRule } from '../../generators/small.ts';
import { type ReadBack, readSaid } from './read-said.ts';

const en = catalogueOf('en');
const de = catalogueOf('de');
const world = { definitionOf: factDefinition, titleOf: (id: string) => `title of ${id}` };
const compile = (rules: Parameters<typeof compileRules>[0]['rules']) =>
  compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06').rules;

const shown = (choice: string) => [choice, en.values.choices[choice] ?? choice] as const;
const choices = new Map([
  ...choiceFacts.map(({ fact, choices: all }) => [fact, all.map(shown)] as const),
  ['soil.surface', signs.map(shown)] as const,
  ['field.country', countries.map(shown)] as const,
]);

/** What a sentence must keep of a condition. */
function essence(condition: CompiledCondition): ReadBack {
  if (condition.kind === 'comparison') {
    const { fact, op, limit, parameter } = condition;
    return { fact, op, limit: limit.kind === 'choices' ? limit.values : limit.value, parameter };
  }
  if (condition.kind === 'rule') return { ...condition, member: essence(condition.member) };
  if (condition.kind === 'not') return { kind: 'not', member: essence(condition.member) };
  return { kind: condition.kind, members: condition.members.map(essence) };
}

describe('the sentence of a condition says all of it', () => {
  test('3,000 generated conditions are read back from their English sentences by a reader of its own', () => {
    fc.assert(
      fc.property(ruleSet(30), (rules) => {
        for (const { condition } of compile(rules)) {
          expect(readSaid(sayCondition(condition, world, en), choices)).toEqual(essence(condition));
        }
      }),
      { numRuns: 100 },
    );
  });

  test.each(['en', 'de'] as const)(
    'conditions that differ never read the same, in %s, as text and as lines',
    (code) => {
      const keyOf = new Map<string, string>();
      fc.assert(
        fc.property(ruleSet(30), (rules) => {
          for (const { condition } of compile(rules)) {
            const key = JSON.stringify(essence(condition));
            const lines = sayConditionLines(condition, world, catalogueOf(code));
            for (const text of [sayCondition(condition, world, catalogueOf(code)), JSON.stringify(lines)]) {
              expect(keyOf.get(text) ?? key).toBe(key);
              keyOf.set(text, key);
            }
          }
        }),
        { numRuns: 60 },
      );
      expect(keyOf.size).toBeGreaterThan(1000);
    },
  );
});

describe('a rule of the first pack is said by its structure', () => {
  const compiled = compileRules(shipped.pack, '2026-11-06').rules;
  const said = (id: string, words = en) =>
    sayRule(
      compiled.find(({ rule }) => rule.id === id)!,
      { definitionOf: factDefinition, titleOf: titlesOf(shipped.pack.rules, words) },
      words,
    );
  test.each([
    ['soil-too-warm', 'Holds (lifts in days): when soil temperature at 30 cm is above 10 C (soilTemperatureMaxC).'],
    [
      'season-best',
      'Advises: when across the new year: date is before 20 October (bestFrom), or date is after 10 December (bestLastDay).',
    ],
    [
      'heavy-rain-coming',
      'Holds (lifts in hours): when rain in the next 48 hours is 10 mm or more (rainTotalLimitMm), or heaviest hour of rain in the next 48 hours is 4 mm/h or more (rainHourLimitMmPerH).',
    ],
    ['soil-cracked', 'Holds (lifts in days): when soil surface shows “cracked”.'],
    [
      'outside-region',
      'Stops (does not lift this season): when country of the field: none of England, Scotland or Wales (packCountries).',
    ],
  ])('%s', (id, sentence) => {
    expect(said(id).sentence).toBe(sentence);
  });

  test('in German', () => {
    expect(said('soil-too-warm', de).sentence).toBe(
      'Hält auf (löst sich in Tagen), wenn gilt: Bodentemperatur in 30 cm über 10 °C (soilTemperatureMaxC).',
    );
  });

  test('a rule that names others says their titles and what they say, in lines', () => {
    expect(said('rain-on-unfit-soil').lines.map(({ depth, text }) => `${'- '.repeat(depth)}${text}`)).toEqual([
      'Stops (lifts in days): when all of these hold:',
      '- “Heavy rain coming” (heavy-rain-coming) applies, that is: any of these holds:',
      '- - rain in the next 48 hours is 10 mm or more (rainTotalLimitMm)',
      '- - heaviest hour of rain in the next 48 hours is 4 mm/h or more (rainHourLimitMmPerH)',
      '- any of these holds:',
      '- - “Cracks in the soil” (soil-cracked) applies, that is (soil surface shows “cracked”)',
      '- - “Water standing or drains running” (water-standing) applies, that is (soil surface shows “ponded”, or drains running: yes)',
      '- - “Soil saturated” (soil-saturated) applies, that is: any of these holds, as far as each is known:',
      '- - - feel of the soil in the hand: saturated',
      '- - - water held, as a share of that held at field capacity is above 105 % of field capacity (fieldCapacityWettestPercent)',
      '- - “Soil too dry” (soil-too-dry) applies, that is: any of these holds, as far as each is known:',
      '- - - feel of the soil in the hand: one of dry or slightly moist',
      '- - - water held, as a share of that held at field capacity is below 80 % of field capacity (fieldCapacityDriestPercent)',
    ]);
  });

  test('what it does and what lifts it are part of the sentence', () => {
    const when: Condition = { fact: 'soil.surface', has: 'cracked' };
    const variants = [
      holdRule('a', when),
      { ...holdRule('a', when), effect: 'stop' as const },
      { ...holdRule('a', when), lifts: 'person' as const },
      { ...holdRule('a', when), effect: 'advise' as const, lifts: null },
    ];
    for (const words of [en, de]) {
      expect(new Set(variants.map((rule) => sayRule(compile([rule])[0]!, world, words).sentence)).size).toBe(4);
    }
  });

  test('a parameter says its value, from when it holds and which way is tighter', () => {
    const parameter = shipped.pack.parameters.find(({ id }) => id === 'soilTemperatureMaxC')!;
    expect(sayParameter(parameter, en)).toBe('soilTemperatureMaxC is 10 C from 1 January 2026; lower is tighter.');
    expect(sayParameter({ ...parameter, validTo: '2026-12-31' }, de)).toBe(
      'soilTemperatureMaxC ist 10 °C vom 1. Januar 2026 bis zum 31. Dezember 2026; niedriger ist strenger.',
    );
  });
});
