import { describe, expect, test } from 'vitest';
import type { FactDefinition } from '../../../../src/core/facts/types.ts';
import { collectFindings } from '../../../../src/core/rules/pack/findings.ts';
import { choiceFits } from '../../../../src/core/rules/pack/fit-choice.ts';
import { lastDecimalPlace } from '../../../../src/core/rules/pack/fit-limit.ts';
import { checkPack } from '../../../../src/core/rules/pack/load-pack.ts';
import { parseReading } from '../../../../src/core/rules/pack/parse-reading.ts';
import { checkStraddle } from '../../../../src/core/rules/pack/straddle.ts';
import type { OrderOperator } from '../../../../src/core/rules/types.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { filesOf, miniPack } from '../../../fixtures/mini-pack.ts';

const place = { file: 'questions.json', path: ['gives'] };
const said = ({ findings }: Pick<ReturnType<typeof collectFindings>, 'findings'>) =>
  findings.map(
    ({ code, pointer, expected, came, nearest }) =>
      `${code} ${pointer}: ${expected}; ${came}${nearest === undefined ? '' : `, nearest ${nearest}`}`,
  );

describe('the band of an answer lies on one side of a limit', () => {
  test.each<readonly [OrderOperator, number, number, boolean]>([
    ['above', 9, 10, true],
    ['above', 10, 11, false],
    ['above', 10.1, 11, true],
    ['above', 10, 10, true],
    ['atMost', 9, 10, true],
    ['atMost', 10, 11, false],
    ['atMost', 10.1, 11, true],
    ['atLeast', 9, 9.9, true],
    ['atLeast', 9, 10, false],
    ['atLeast', 10, 11, true],
    ['atLeast', 10, 10, true],
    ['below', 9, 9.9, true],
    ['below', 9, 10, false],
    ['below', 10, 11, true],
  ])('%s 10, from %d to %d: %s', (op, low, high, fits) => {
    const collected = collectFindings();
    const limits = [{ op, parameter: 'most', value: 10 }];
    const reading = { type: 'number', value: low, low, high } as const;
    const answer = { question: 'wind', choice: 'calm' };
    checkStraddle(reading, 'wind.boomKmh', limits, answer, place, collected.report);
    expect(said(collected)).toEqual(
      fits
        ? []
        : [
            `CHOICE_STRADDLES_LIMIT /gives: a band on one side of most = 10 (${op}); ${low} to ${high}, in answer calm of question wind`,
          ],
    );
  });

  test('where an answer gives one value alone, or no number, no limit cuts it', () => {
    const collected = collectFindings();
    const limits = [{ op: 'above', parameter: 'most', value: 10 }] as const;
    const answer = { question: 'wind', choice: 'calm' };
    for (const reading of [
      { type: 'number', value: 10 },
      { type: 'choice', possible: ['a'] },
    ] as const)
      checkStraddle(reading, 'wind.boomKmh', limits, answer, place, collected.report);
    expect(collected.findings).toEqual([]);
  });

  test('the limits are those of every rule and version of a parameter, and the density from which the dose is the severe one', () => {
    const straddling = (change: (parsed: Record<string, never>) => void) => {
      const parsed = structuredClone(miniPack()) as Record<string, never>;
      change(parsed);
      return checkPack(filesOf(parsed)).findings.filter(({ code }) => code === 'CHOICE_STRADDLES_LIMIT');
    };
    const later = (parsed: Record<string, { parameters: object[] }>) => {
      const { parameters } = parsed['parameters.json']!;
      parameters.push({ ...parameters[0], value: 4, validFrom: '2027-01-01' });
    };
    expect(straddling(() => {})).toEqual([]);
    expect(straddling(later as never).map(({ expected, parameter }) => [expected, parameter])).toEqual([
      ['a band on one side of windMostKmh = 4 (above)', 'windMostKmh'],
    ]);
    const severe = (parsed: Record<string, { parameters: object[]; questions: object[] }>) => {
      const { parameters } = parsed['parameters.json']!;
      parameters.push({ ...parameters[0], id: 'severeDensityPlantsPerM2', value: 100, unit: 'plants/m2' });
      const [wind] = parsed['questions.json']!.questions as { choices: object[] }[];
      const gives = { 'weed.plantsPerM2': { type: 'number', value: 90, low: 80, high: 100 } };
      const many = { id: 'weeds', facts: ['weed.plantsPerM2'], choices: [{ ...wind!.choices[0], gives }] };
      parsed['questions.json']!.questions.push({ ...wind, ...many });
    };
    expect(straddling(severe as never).map(({ expected }) => expected)).toEqual([
      'a band on one side of severeDensityPlantsPerM2 = 100 (atLeast)',
    ]);
  });
});

describe('what an answer may give for a fact', () => {
  const parse = (fact: string, json: Record<string, unknown>, definition: FactDefinition = factDefinition(fact)) => {
    const collected = collectFindings();
    const reading = parseReading(json, fact, definition, place, collected.report);
    return [reading, ...said(collected)];
  };
  const { range: _range, ...open } = factDefinition('wind.boomKmh');

  test.each<readonly [string, Record<string, unknown>]>([
    ['wind.boomKmh', { type: 'number', value: 0 }],
    ['wind.boomKmh', { type: 'number', value: 150 }],
    ['wind.boomKmh', { type: 'number', value: 3, low: 3, high: 3 }],
    ['wind.boomKmh', { type: 'number', value: 3, low: 0, high: 150 }],
    ['wind.boomKmh', { type: 'does-not-know' }],
    ['soil.feel', { type: 'choice', possible: ['dry', 'wet'] }],
    ['field.country', { type: 'choice', possible: ['GB-ENG', 'FR'] }],
    ['soil.surface', { type: 'signs', present: ['cracked'], absent: ['sticky'], complete: false }],
    ['soil.surface', { type: 'signs', present: [], absent: [], complete: true }],
    ['date', { type: 'date', iso: '2026-11-06' }],
  ])('%s may be %j', (fact, json) => {
    expect(parse(fact, json)).toEqual([json]);
  });

  test('a number without a range may be any', () => {
    const json = { type: 'number', value: -1e9, high: 1e9 };
    expect(parse('wind.boomKmh', json, open)).toEqual([json]);
  });

  const rising = 'QUESTION_MISFIT /gives: low, value and high in rising order within 0 to 150;';
  test.each<readonly [string, Record<string, unknown>, readonly string[]]>([
    ['wind.boomKmh', { type: 'number', value: 150.1 }, [`${rising} 150.1, 150.1, 150.1`]],
    ['wind.boomKmh', { type: 'number', value: 3, low: -0.1 }, [`${rising} -0.1, 3, 3`]],
    ['wind.boomKmh', { type: 'number', value: 3, low: 3.1 }, [`${rising} 3.1, 3, 3`]],
    ['wind.boomKmh', { type: 'number', value: 3, high: 2.9 }, [`${rising} 3, 3, 2.9`]],
    [
      'wind.boomKmh',
      { type: 'numbr', value: 3 },
      ['QUESTION_MISFIT /gives/type: type number or does-not-know for wind.boomKmh; "numbr", nearest number'],
    ],
    [
      'soil.feel',
      { type: 'does-not-kno' },
      [
        'QUESTION_MISFIT /gives/type: type choice or does-not-know for soil.feel; "does-not-kno", nearest does-not-know',
      ],
    ],
    [
      'field.country',
      { type: 'country' },
      ['QUESTION_MISFIT /gives/type: type choice or does-not-know for field.country; "country"'],
    ],
    ['soil.feel', { type: 'choice', possible: [] }, ['PACK_VALUE_WRONG /gives/possible: at least one choice; []']],
    [
      'soil.feel',
      { type: 'choice', possible: ['dry', 'soggy'] },
      [
        'RULE_CHOICE_UNKNOWN /gives/possible/1: one of dry, slightly-moist, moist, wet, at-capacity, saturated; "soggy"',
      ],
    ],
    [
      'soil.surface',
      { type: 'signs', present: ['cracked'], absent: ['glazed', 'cracked'], complete: true },
      [
        'RULE_CHOICE_UNKNOWN /gives/absent/0: one of SIGNS; "glazed"',
        'QUESTION_MISFIT /gives: a sign present or absent; cracked as both',
      ],
    ],
  ])('%s may not be %j', (fact, json, findings) => {
    const signs = factDefinition('soil.surface').choices ?? [];
    expect(parse(fact, json)).toEqual([null, ...findings.map((one) => one.replace('SIGNS', signs.join(', ')))]);
  });
});

test.each([
  ['GB', true],
  ['GB-ENG', true],
  ['US-1', true],
  ['DE-1234', false],
  ['England', false],
  ['GB-', false],
  ['gb', false],
  ['xGB', false],
  [12, false],
])('a country by its code, ISO 3166: %j is one: %s', (code, fits) => {
  const collected = collectFindings();
  const country = factDefinition('field.country');
  expect(choiceFits(code, 'field.country', country, place, collected.report)).toBe(fits);
  const refused =
    typeof code === 'number'
      ? `RULE_NUMBER_INSIDE /gives: a choice as text; ${code}`
      : `RULE_CHOICE_UNKNOWN /gives: an ISO 3166 code such as GB-ENG; "${code}"`;
  expect(said(collected)).toEqual(fits ? [] : [refused]);
});

test.each([
  [9.6, '0.1'],
  [9.65, '0.01'],
  [10, '1'],
  [100, '1'],
  [0.004, '0.001'],
  [-2.5, '0.1'],
  [0, '1'],
])('the last decimal of %d has the place value %s', (value, place) => {
  expect(lastDecimalPlace(value).toString()).toBe(place);
});
