import type { ErrorCode } from '../../../../src/core/errors/table.ts';
import { neededParameters } from '../../../../src/core/facts/needed-parameters.ts';
import { thoroughPack } from '../../../fixtures/thorough-pack.ts';

/** One change of the thorough pack and what is found for it; `mark` stands where the finding is. */
export interface Example {
  readonly code: ErrorCode;
  readonly name: string;
  readonly changes: readonly (readonly [file: string, pointer: string, value: unknown])[];
  readonly file: string;
  readonly pointer: string;
  readonly mark: string;
  readonly severity: 'error' | 'warning';
}

const file = 'a.rules.json';
const parameters = 'parameters.json';

const parameter = (id: string, value: unknown, unit: string) => ({
  id,
  value,
  unit,
  source: 'invented for tests',
  why: { en: 'a test needs it' },
  validFrom: '2020-01-01',
  tighter: 'lower',
});

/** The parameters that the small pack lacks because it does not reach their facts. */
const everyParameter = Object.entries<string>(neededParameters)
  .filter(([id]) => !JSON.stringify(thoroughPack()[parameters]).includes(`"${id}"`))
  .map(([id, unit]) => [parameters, '/parameters/-', parameter(id, 1, unit)] as const);

const advice = (id: string, when: unknown) => ({
  id,
  effect: 'advise',
  authority: 'practice',
  source: 'invented for tests',
  why: { en: 'a test needs it' },
  when,
  text: { en: { title: 'T', met: 'M', unknown: 'U' } },
});

const wind = (operator: string, limit = 'windMostKmh') => ({ fact: 'wind.boomKmh', [operator]: limit });

/** A rule of every combination of two choices of many facts: more cells than are looked at. */
const manyFacts = [
  'field.drained',
  'field.organicSoil',
  'field.bufferMarked',
  'field.loosenedThisSeason',
  'field.waterPlanAgreed',
  'treatment.alreadyApplied',
  'treatment.partnerInTank',
  'crop.frostOnLeaves',
  'weed.present',
  'soil.drainsRunning',
  'soil.drainsExpected7d',
  'wind.towardsSensitive',
  'air.inversionRisk',
  'sun.daylight',
  'soil.feel',
  'field.texture',
].map((fact) => ({ fact, is: fact === 'soil.feel' ? 'dry' : fact === 'field.texture' ? 'clay' : 'yes' }));

/** A broken example of every finding that an analysis makes. */
export const analysisExamples: readonly Example[] = [
  {
    code: 'PARAMETER_NOT_IN_FORCE',
    name: 'a limit that has ended',
    changes: [[parameters, '/parameters/0/validTo', '2025-12-31']],
    file: parameters,
    pointer: '/parameters/0/validTo',
    mark: '"validTo": "2025-12-31"',
    severity: 'error',
  },
  {
    code: 'PARAMETER_NOT_IN_FORCE',
    name: 'a limit that has not begun',
    changes: [[parameters, '/parameters/1/validFrom', '2027-01-01']],
    file: parameters,
    pointer: '/parameters/1/validFrom',
    mark: '"validFrom": "2027-01-01"',
    severity: 'error',
  },
  {
    code: 'PARAMETER_VALIDITY_OVERLAPS',
    name: 'a value that says it holds on after the next has begun',
    changes: [
      [parameters, '/parameters/0/validTo', '2026-06-30'],
      [parameters, '/parameters/-', { ...parameter('windMostKmh', 9.6, 'km/h'), validFrom: '2026-06-01' }],
    ],
    file: parameters,
    pointer: '/parameters/0/validTo',
    mark: '"validTo": "2026-06-30"',
    severity: 'warning',
  },
  {
    code: 'PARAMETER_UNUSED',
    name: 'a parameter that nothing reads',
    changes: [
      [parameters, '/parameters/1', parameter('spare', 1, 'km/h')],
      [file, '/rules/2/when', wind('below')],
    ],
    file: parameters,
    pointer: '/parameters/1/id',
    mark: '"id": "spare"',
    severity: 'warning',
  },
  {
    code: 'RULE_NEVER_MET',
    name: 'a limit above every value that the fact can have',
    changes: [[parameters, '/parameters/0/value', 150]],
    file,
    pointer: '/rules/0/when',
    mark: '"when": {\n        "fact": "wind.boomKmh"',
    severity: 'error',
  },
  {
    code: 'RULE_ALWAYS_MET',
    name: 'two bounds joined by any that leave nothing out',
    changes: [[file, '/rules/0/when', { any: [wind('above'), wind('atMost')] }]],
    file,
    pointer: '/rules/0/when',
    mark: '"when": {\n        "any"',
    severity: 'error',
  },
  {
    code: 'RULE_BOUNDS_CONTRADICT',
    name: 'above and below the same limit',
    changes: [[file, '/rules/0/when', { all: [wind('above'), wind('below')] }]],
    file,
    pointer: '/rules/0/when/all/1/below',
    mark: '"below": "windMostKmh"',
    severity: 'error',
  },
  {
    code: 'RULE_BOUNDS_CONTRADICT',
    name: 'two choices of one fact at once, deep in a rule that can still be met',
    changes: [
      [file, '/rules/2/when/all/1', { any: [{ rule: 'too-dry' }, { fact: 'soil.surface', has: 'cracked' }] }],
      [
        file,
        '/rules/1/when',
        {
          any: [
            { fact: 'soil.feel', is: 'dry' },
            {
              all: [
                { fact: 'soil.feel', is: 'moist' },
                { fact: 'soil.feel', is: 'wet' },
              ],
            },
          ],
        },
      ],
    ],
    file,
    pointer: '/rules/1/when/any/1/all/1/is',
    mark: '"is": "wet"',
    severity: 'error',
  },
  {
    code: 'RULE_HIDDEN',
    name: 'advice from a lower wind on than the hold that it weighs less than',
    changes: [
      [parameters, '/parameters/-', parameter('stormKmh', 30, 'km/h')],
      [file, '/rules/-', advice('stormy', wind('above', 'stormKmh'))],
    ],
    file,
    pointer: '/rules/5/when',
    mark: '"when": {\n        "fact": "wind.boomKmh",\n        "above": "stormKmh"',
    severity: 'warning',
  },
  {
    code: 'RULE_SAID_TWICE',
    name: 'a rule and the same said the other way round',
    changes: [[file, '/rules/-', { ...advice('not-early', { fact: 'date', atLeast: 'seasonStart' }) }]],
    file,
    pointer: '/rules/5/when',
    mark: '"when": {\n        "fact": "date",\n        "atLeast"',
    severity: 'warning',
  },
  {
    code: 'RULE_TOO_BIG',
    name: 'a rule of sixteen facts',
    changes: [[file, '/rules/-', advice('of-many', { any: manyFacts })], ...everyParameter],
    file,
    pointer: '/rules/5/when',
    mark: '"when": {\n        "any": [\n          {\n            "fact": "field.drained"',
    severity: 'warning',
  },
  {
    code: 'RULE_LIMIT_WITHOUT_CASE',
    name: 'a limit whose nearest case is far below it',
    changes: [['cases/b.json', '/cases/0/facts/wind.boomKmh', 9]],
    file,
    pointer: '/rules/0/when/above',
    mark: '"above": "windMostKmh"',
    severity: 'warning',
  },
  {
    code: 'RULE_LIMIT_WITHOUT_CASE',
    name: 'a rule of other rules that no case meets',
    changes: [[file, '/rules/-', advice('both', { all: [{ rule: 'too-windy' }, { rule: 'elsewhere' }] })]],
    file,
    pointer: '/rules/5/when',
    mark: '"when": {\n        "all": [\n          {\n            "rule": "too-windy"',
    severity: 'warning',
  },
  {
    code: 'QUESTION_NEVER_ASKED',
    name: 'a question for a fact that nothing reads',
    changes: [
      ['questions.json', '/questions/0/facts', ['weed.tillers']],
      ['questions.json', '/questions/0/choices', undefined],
      ...everyParameter,
    ],
    file: 'questions.json',
    pointer: '/questions/0/facts',
    mark: '"facts"',
    severity: 'warning',
  },
  {
    code: 'FACT_WRONG_TYPE',
    name: 'a case whose facts cannot be read',
    changes: [['cases/b.json', '/cases/0/facts/wind.boomKmh', 'much']],
    file: 'cases/b.json',
    pointer: '/cases/0/facts/wind.boomKmh',
    mark: '"wind.boomKmh": "much"',
    severity: 'error',
  },
  {
    code: 'CASE_MISFIT',
    name: 'a case of no day',
    changes: [['cases/b.json', '/base/date', undefined]],
    file: 'cases/b.json',
    pointer: '/cases/1',
    mark: '{\n      "name": "wind just above it"',
    severity: 'error',
  },
];
