import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../../src/core/facts/resolved.ts';
import { findNeverAsked } from '../../../../src/core/rules/analyse/find-never-asked.ts';
import { findOneSided } from '../../../../src/core/rules/analyse/find-one-sided.ts';
import { asIfInForce, findValidity } from '../../../../src/core/rules/analyse/find-validity.ts';
import { placesIn } from '../../../../src/core/rules/analyse/places.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import type { Question } from '../../../../src/core/rules/pack-types.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import type { Parameter } from '../../../../src/core/units/parameter.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { choice, day, holdRule, number } from '../../../generators/small.ts';

const places = placesIn(new Map());

function parameter(id: string, value: Parameter['value'], validFrom = '2020-01-01', validTo?: string): Parameter {
  const rest = { unit: 'km/h', source: 'invented', why: { en: 'test' }, tighter: 'neither' } as const;
  return { id, value, validFrom, ...rest, ...(validTo === undefined ? {} : { validTo }) };
}

describe('the days on which a value holds', () => {
  const found = (day: string, ...versions: Parameter[]) => {
    const { findings, report } = collectFindings();
    findValidity(versions, new Set(['limit']), day, places, report);
    return findings.map(({ code }) => code);
  };

  test.each<readonly [string, readonly string[]]>([
    ['2025-12-31', ['PARAMETER_NOT_IN_FORCE']],
    ['2026-01-01', []],
    ['2026-06-30', []],
    ['2026-07-01', ['PARAMETER_NOT_IN_FORCE']],
  ])('from 1 January to 30 June, looked at on %s', (on, codes) => {
    expect(found(on, parameter('limit', 1, '2026-01-01', '2026-06-30'))).toEqual(codes);
  });

  test.each<readonly [string | undefined, readonly string[]]>([
    ['2026-05-31', []],
    ['2026-06-01', ['PARAMETER_VALIDITY_OVERLAPS']],
    ['2026-06-02', ['PARAMETER_VALIDITY_OVERLAPS']],
    [undefined, []],
  ])('to %s, where the next begins on 1 June', (validTo, codes) => {
    const versions = [parameter('limit', 2, '2026-06-01'), parameter('limit', 1, '2026-01-01', validTo)];
    expect(found('2026-11-06', ...versions)).toEqual(codes);
  });

  test('one that nothing needs may have ended', () => {
    expect(found('2026-11-06', parameter('other', 1, '2020-01-01', '2021-01-01'))).toEqual([]);
  });

  test('the analysis goes on with the latest value that has begun, else with the first to come', () => {
    const ended = [parameter('a', 1, '2020-01-01', '2021-01-01'), parameter('a', 2, '2022-01-01', '2023-01-01')];
    const coming = [parameter('b', 3, '2028-01-01'), parameter('b', 4, '2029-01-01')];
    expect(asIfInForce([...ended, ...coming], '2026-11-06').map(({ value }) => value)).toEqual([2, 3]);
  });
});

test('a question is asked for the place, the profile, the dose, a fact that a rule reads, or what that follows from', () => {
  const rules = [holdRule('delta-t', { fact: 'air.deltaTC', above: 'limit' })];
  const question = (id: string, fact: string, more: Partial<Question> = {}) =>
    ({ id, facts: [fact], form: 'number', effortSeconds: 1, group: 'field', text: {}, ...more }) as unknown as Question;
  const questions = [
    question('place', 'soil.feel', { form: 'place' }),
    question('profile', 'field.texture'),
    question('dose', 'weed.plantsPerM2', { forDose: true }),
    question('read', 'air.deltaTC'),
    question('behind', 'air.temperatureC'),
    question('idle', 'weed.tillers'),
  ];
  const { findings, report } = collectFindings();
  findNeverAsked({ rules, questions }, factDefinition, places, report);
  expect(findings.map(({ code, came }) => [code, came])).toEqual([['QUESTION_NEVER_ASKED', 'weed.tillers']]);
});

describe('cases on both sides of a limit', () => {
  const parameters = [parameter('windy', 9.6), parameter('october', '10-01'), parameter('first', '01-01')];
  const found = (when: Condition, cases: readonly ResolvedFacts[]) => {
    const { rules } = compileRules({ ...ofCore, rules: [holdRule('a', when)], parameters }, '2026-11-06');
    const judged = cases.map((facts) => ({ facts, rules: new Map(rules.map((one) => [one.rule.id, one])) }));
    const { findings, report } = collectFindings();
    findOneSided(rules, judged, factDefinition, places, report);
    return findings.map(({ came }) => came);
  };
  const wind = (value: number, feel = 'dry'): ResolvedFacts => ({
    'wind.boomKmh': number(value),
    'soil.feel': choice(feel),
  });
  const windy = { fact: 'wind.boomKmh', above: 'windy' } as const;
  const dry = { fact: 'soil.feel', is: 'dry' } as const;

  test.each<readonly [string, Condition, readonly ResolvedFacts[], readonly string[]]>([
    ['at it and ten steps above', windy, [wind(9.6), wind(9.7)], []],
    [
      'at it and eleven steps above',
      windy,
      [wind(9.6), wind(9.71)],
      ['wind.boomKmh above windy = 9.6: none in which it is met'],
    ],
    [
      'far below and just above',
      windy,
      [wind(5), wind(9.7)],
      ['wind.boomKmh above windy = 9.6: none in which it is not met'],
    ],
    ['nowhere near', windy, [wind(5), wind(15)], ['wind.boomKmh above windy = 9.6: no such case']],
    ['turned by not', { not: windy }, [wind(9.6), wind(9.7)], []],
    [
      'only a band across it',
      windy,
      [{ 'wind.boomKmh': number(9.65, 9.5, 9.8) }, wind(9.6)],
      ['wind.boomKmh above windy = 9.6: none in which it is met'],
    ],
    [
      'the rule turned by another fact while the wind is above throughout',
      { all: [windy, dry] },
      [wind(9.7), wind(9.7, 'wet')],
      ['wind.boomKmh above windy = 9.6: none in which it is not met'],
    ],
  ])('%s', (_name, when, cases, came) => {
    expect(found(when, cases)).toEqual(came);
  });

  test.each<readonly [string, string, readonly string[]]>([
    ['2026-10-01', '2026-09-30', []],
    ['2026-10-01', '2026-09-29', ['date atLeast october = 10-01: none in which it is not met']],
    ['2026-10-02', '2026-09-30', []],
    ['2026-10-03', '2026-09-30', ['date atLeast october = 10-01: none in which it is met']],
  ])('a date is near on the day itself and the next to it: %s and %s', (on, before, came) => {
    const cases = [on, before].map((iso): ResolvedFacts => ({ date: day(iso) }));
    expect(found({ fact: 'date', atLeast: 'october' }, cases)).toEqual(came);
  });

  test('the last day of a year is not next to the first: days are compared within their year', () => {
    const last: ResolvedFacts = { date: day('2026-12-31') };
    const first: ResolvedFacts = { date: day('2027-01-01') };
    const above = { fact: 'date', above: 'first' } as const;
    expect(found(above, [last, first])).toEqual(['date above first = 01-01: none in which it is met']);
    expect(found(above, [{ date: day('2027-01-02') }, first])).toEqual([]);
  });
});
