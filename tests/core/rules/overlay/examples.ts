import { newRule, type Parts, parameter, rule } from './overlay-of.ts';

/** An overlay that must be refused, with the code, the place and words of the finding. */
export interface Broken {
  readonly name: string;
  readonly parts: Parts;
  readonly code: string;
  readonly pointer: string;
  readonly words?: readonly string[];
}

/** Broken examples for each way in which an overlay could loosen the condition of a protected rule. */
export const brokenConditions: readonly Broken[] = [
  {
    name: 'a limit of a protected rule moved the loosening way',
    parts: { parameters: [parameter('windMostKmh', 14.5)] },
    code: 'OVERLAY_PARAMETER_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['with wind.boomKmh 9.61 the shipped rule is met, the changed one not met'],
  },
  {
    name: 'a limit that reaches a protected rule through a rule that it names',
    parts: { parameters: [parameter('fieldCapacityDriestPercent', 70)] },
    code: 'OVERLAY_PARAMETER_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['soil.fieldCapacityPercent'],
  },
  {
    name: 'a list of a label rule made longer',
    parts: { parameters: [parameter('packCountries', ['GB-ENG', 'GB-SCT', 'GB-WLS', 'FR'])] },
    code: 'OVERLAY_PARAMETER_LOOSENED',
    pointer: '/parameters/0/value',
  },
  {
    name: 'a limit that loosens only in a later year',
    parts: {
      parameters: [parameter('windMostKmh', 6.5), parameter('windMostKmh', 12, { validFrom: '2027-03-01' })],
    },
    code: 'OVERLAY_PARAMETER_LOOSENED',
    pointer: '/parameters/1/value',
    words: ['2027-03-01'],
  },
  {
    name: 'a condition of a protected rule given anew with more room',
    parts: {
      parameters: [parameter('localWindKmh', 12, { unit: 'km/h', tighter: 'lower' })],
      rules: [
        rule('too-windy', { when: { fact: 'wind.boomKmh', above: 'localWindKmh' }, text: newRule('x', {}).text }),
      ],
    },
    code: 'OVERLAY_RULE_LOOSENED',
    pointer: '/rules/0/when',
    words: ['with wind.boomKmh 9.61'],
  },
  {
    name: 'a band that only an eitherOf lets through',
    parts: {
      rules: [
        rule('soil-saturated', {
          when: {
            all: [
              { fact: 'soil.feel', is: 'saturated' },
              { fact: 'soil.fieldCapacityPercent', above: 'fieldCapacityWettestPercent' },
            ],
          },
        }),
      ],
    },
    code: 'OVERLAY_RULE_LOOSENED',
    pointer: '/rules/0/when',
    words: ['soil.feel'],
  },
  {
    name: 'a further way to know in an eitherOf, by which unknown becomes not met',
    parts: {
      rules: [
        rule('soil-saturated', {
          when: {
            eitherOf: [
              { fact: 'soil.feel', is: 'saturated' },
              { fact: 'soil.fieldCapacityPercent', above: 'fieldCapacityWettestPercent' },
              { fact: 'soil.surface', has: 'ponded' },
            ],
          },
        }),
      ],
    },
    code: 'OVERLAY_RULE_LOOSENED',
    pointer: '/rules/0/when',
    words: ['the shipped rule is unknown, the changed one not met'],
  },
  {
    name: 'a referenced rule swapped for a weaker one',
    parts: {
      rules: [
        newRule('local-rain', { fact: 'rain.next48hMm', atLeast: 'rainTotalLimitMm' }),
        rule('rain-on-unfit-soil', {
          when: {
            all: [
              { rule: 'local-rain' },
              { any: ['soil-cracked', 'water-standing', 'soil-saturated', 'soil-too-dry'].map((id) => ({ rule: id })) },
            ],
          },
          text: newRule('x', {}).text,
        }),
      ],
    },
    code: 'OVERLAY_REFERENCE_LOOSENED',
    pointer: '/rules/1/when',
    words: ['rain.next48hMaxMmPerH'],
  },
];
