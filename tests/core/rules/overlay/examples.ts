import { newRule, type Parts, parameter, question, rule, shipped, split } from './overlay-of.ts';

/** An overlay that must be refused, with the code, the place and words of the finding. */
export interface Broken {
  readonly name: string;
  readonly parts: Parts;
  readonly code: string;
  readonly pointer: string;
  readonly words?: readonly string[];
}

const caution = shipped.cautions.find(({ authority }) => authority !== 'practice');
const drains = shipped.questions.find(({ facts, choices }) => choices && facts.includes('soil.drainsRunning'));
const drainsChoices = drains?.choices ?? [];

/** One broken example, or more, for each way in which an overlay could loosen what is protected. */
export const broken: readonly Broken[] = [
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
  {
    name: 'a derivation',
    parts: { parameters: [parameter('inversionWindBelowKmh', 2)] },
    code: 'OVERLAY_DERIVATION_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['air.inversionRisk', '3, or higher'],
  },
  {
    name: 'ageing',
    parts: { parameters: [parameter('goodForSoilSeenHours', 72)] },
    code: 'OVERLAY_AGEING_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['soil.surface'],
  },
  {
    name: 'the oldest forecast that counts',
    parts: { parameters: [parameter('forecastOldestHours', 96)] },
    code: 'OVERLAY_AGEING_LOOSENED',
    pointer: '/parameters/0/value',
  },
  {
    name: 'a band of the forecast',
    parts: { parameters: [parameter('forecastWindBandKmh', 0)] },
    code: 'OVERLAY_BAND_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['wind.boomKmh'],
  },
  {
    name: 'a parameter whose tighter direction is neither',
    parts: { parameters: [parameter('balanceErrorMmPerRootDay', 6)] },
    code: 'OVERLAY_BAND_LOOSENED',
    pointer: '/parameters/0/value',
    words: ['as shipped'],
  },
  {
    name: 'the dose',
    parts: { parameters: [parameter('usualDoseGPerHa', 850)] },
    code: 'OVERLAY_DOSE_LOOSENED',
    pointer: '/parameters/0/value',
  },
  {
    name: 'a direction turned round',
    parts: { parameters: [parameter('windMostKmh', 8, { tighter: 'higher' })] },
    code: 'OVERLAY_DIRECTION_CHANGED',
    pointer: '/parameters/0/tighter',
  },
  {
    name: 'another unit',
    parts: { parameters: [parameter('windMostKmh', 6.5, { unit: 'm/s' })] },
    code: 'PARAMETER_UNIT_MISFIT',
    pointer: '/parameters/0/unit',
  },
  {
    name: 'a weaker effect',
    parts: { rules: [rule('water-risk-field', { effect: 'hold' })] },
    code: 'OVERLAY_EFFECT_WEAKER',
    pointer: '/rules/0/effect',
  },
  {
    name: 'a quicker lift',
    parts: { rules: [rule('soil-cracked', { lifts: 'hours' })] },
    code: 'OVERLAY_LIFTS_QUICKER',
    pointer: '/rules/0/lifts',
  },
  {
    name: 'a job for a person that passes by itself',
    parts: { rules: [rule('near-water', { lifts: 'hours' })] },
    code: 'OVERLAY_LIFTS_QUICKER',
    pointer: '/rules/0/lifts',
  },
  {
    name: 'a protected rule taken away',
    parts: { removes: { rules: ['one-application'] } },
    code: 'OVERLAY_RULE_REMOVED',
    pointer: '/removes/rules/0',
  },
  {
    name: 'a rule taken away that a protected one names',
    parts: { removes: { rules: ['soil-too-dry'] } },
    code: 'RULE_REFERENCE_MISSING',
    pointer: '/removes/rules/0',
  },
  {
    name: 'a water rule called practice',
    parts: { rules: [rule('soil-cracked', { authority: 'practice' })] },
    code: 'OVERLAY_RULE_UNPROTECTED',
    pointer: '/rules/0/authority',
  },
  {
    name: 'a safety rule without its protection',
    parts: { rules: [rule('too-windy', { protected: false })] },
    code: 'OVERLAY_RULE_UNPROTECTED',
    pointer: '/rules/0/authority',
  },
  {
    name: 'an answer that says less than it did',
    parts: {
      questions: [
        question(drains?.id ?? '', {
          choices: drainsChoices.map((choice) => ({
            ...choice,
            gives: { ...choice.gives, 'soil.drainsRunning': { type: 'choice', possible: ['no'] } },
          })),
        }),
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
    words: ['soil.drainsRunning'],
  },
  {
    name: 'an answer under other words',
    parts: {
      questions: [
        question(drains?.id ?? '', {
          choices: drainsChoices.map((choice) => ({ ...choice, label: { en: 'Fine', de: 'Gut' } })),
        }),
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
  },
  {
    name: 'an answer cut so that a part of its band is gone',
    parts: {
      parameters: [parameter('windMostKmh', 8)],
      questions: [split('wind', 'gentle-breeze', 'wind.boomKmh', 8, 9)],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
    words: ['gentle-breeze'],
  },
  {
    name: 'a new question that answers for a protected fact',
    parts: {
      questions: [
        {
          ...question(drains?.id ?? ''),
          id: 'easy',
          choices: [
            {
              id: 'ok',
              label: { en: 'Fine', de: 'Gut' },
              gives: { 'soil.drainsRunning': { type: 'choice', possible: ['no'] } },
            },
          ],
        },
      ],
    },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/questions/0',
  },
  {
    name: 'a question for a protected fact taken away',
    parts: { removes: { questions: ['wind-towards'] } },
    code: 'OVERLAY_QUESTION_LOOSENED',
    pointer: '/removes/questions/0',
  },
  {
    name: 'a caution taken away',
    parts: { removes: { cautions: [caution?.id ?? ''] } },
    code: 'OVERLAY_CAUTION_REMOVED',
    pointer: '/removes/cautions/0',
  },
  {
    name: 'a caution cut short',
    parts: { cautions: [{ ...caution, text: { en: 'Take care.', de: caution?.text['de'] } }] },
    code: 'OVERLAY_CAUTION_REMOVED',
    pointer: '/cautions/0/text/en',
  },
  {
    name: 'another pack',
    parts: { overlay: { pack: { id: 'another-pack' } } },
    code: 'OVERLAY_PACK_MISFIT',
    pointer: '/overlay/pack',
  },
  {
    name: 'versions of the pack that this is none of',
    parts: { overlay: { pack: { id: shipped.id, before: '0.0.1' } } },
    code: 'OVERLAY_PACK_MISFIT',
    pointer: '/overlay/pack',
  },
  {
    name: 'a new parameter without its unit',
    parts: { parameters: [parameter('localWindKmh', 8, { tighter: 'lower' })] },
    code: 'PACK_KEY_MISSING',
    pointer: '/parameters/0/unit',
  },
  {
    name: 'a limit of the pack that comes to lie inside an offered answer',
    parts: { parameters: [parameter('runoffSlopePercent', 1)] },
    code: 'CHOICE_STRADDLES_LIMIT',
    pointer: '/parameters/0',
  },
  {
    name: 'a reference under a not, tightened so that the whole loosens',
    parts: {
      rules: [
        rule('soil-cracked', {
          when: { all: [{ fact: 'soil.surface', has: 'cracked' }, { not: { rule: 'water-standing' } }] },
        }),
      ],
    },
    code: 'OVERLAY_RULE_LOOSENED',
    pointer: '/rules/0/when',
    words: ['soil.surface cracked'],
  },
];

/** Plain examples that must be taken: what is tightened, what is new, what is practice. */
export const plain: readonly { readonly name: string; readonly parts: Parts }[] = [
  { name: 'nothing but a head', parts: {} },
  {
    name: 'less wind',
    parts: {
      parameters: [parameter('windMostKmh', 8)],
      questions: [split('wind', 'gentle-breeze', 'wind.boomKmh', 8, 8.01)],
    },
  },
  {
    name: 'a longer distance to water',
    parts: {
      parameters: [parameter('waterRiskDistanceM', 100)],
      questions: [split('water-distance', 'further', 'field.waterDistanceM', 100, 100.1)],
    },
  },
  {
    name: 'less rain',
    parts: {
      parameters: [parameter('rainTotalLimitMm', 4)],
      questions: [split('rain-ahead', 'showers', 'rain.next48hMm', 3.99, 4)],
    },
  },
  { name: 'a shorter season at its end', parts: { parameters: [parameter('seasonLastDay', '01-15')] } },
  { name: 'fewer countries', parts: { parameters: [parameter('packCountries', ['GB-ENG'])] } },
  { name: 'drier soil refused sooner', parts: { parameters: [parameter('fieldCapacityDriestPercent', 85)] } },
  { name: 'seen soil good for a shorter time', parts: { parameters: [parameter('goodForSoilSeenHours', 12)] } },
  { name: 'wider bands of the forecast', parts: { parameters: [parameter('forecastWindBandKmh', 2)] } },
  { name: 'a smaller dose', parts: { parameters: [parameter('usualDoseGPerHa', 700)] } },
  {
    name: 'a limit of practice moved either way',
    parts: { parameters: [parameter('soilTemperatureMaxC', 12), parameter('bestFrom', '10-01')] },
  },
  { name: 'a derivation that only practice reads', parts: { parameters: [parameter('noFrostAboveC', 3)] } },
  { name: 'a rule of practice taken away', parts: { removes: { rules: ['dark'] } } },
  {
    name: 'a rule of practice with a limit of its own, which a protected rule names',
    parts: {
      parameters: [parameter('localDriestPercent', 70, { unit: '% of field capacity', tighter: 'higher' })],
      rules: [
        rule('soil-too-dry', {
          when: { fact: 'soil.fieldCapacityPercent', below: 'localDriestPercent' },
          text: newRule('x', {}).text,
        }),
      ],
    },
  },
  {
    name: 'a protected rule joined by any',
    parts: {
      rules: [
        rule('near-water', {
          when: {
            any: [
              {
                all: [
                  { fact: 'field.waterDistanceM', atMost: 'nearWaterDistanceM' },
                  { fact: 'field.bufferMarked', is: 'no' },
                ],
              },
              { fact: 'soil.surface', has: 'frozen' },
            ],
          },
        }),
      ],
    },
  },
  { name: 'a stop where there was a hold', parts: { rules: [rule('soil-cracked', { effect: 'stop' })] } },
  { name: 'a slower lift', parts: { rules: [rule('soil-cracked', { lifts: 'season' })] } },
  {
    name: 'a water rule that says the same in another way',
    parts: { rules: [rule('one-application', { when: { not: { fact: 'treatment.alreadyApplied', is: 'no' } } })] },
  },
  { name: 'a new rule', parts: { rules: [newRule('local-hold', { fact: 'soil.surface', has: 'sticky' })] } },
  {
    name: 'a new caution',
    parts: {
      cautions: [{ id: 'local-caution', authority: 'water', text: { en: 'Ring first.', de: 'Erst anrufen.' } }],
    },
  },
  {
    name: 'a caution with words added',
    parts: {
      cautions: [
        {
          ...caution,
          text: Object.fromEntries(Object.entries(caution?.text ?? {}).map(([key, text]) => [key, `${text} (local)`])),
        },
      ],
    },
  },
  { name: 'other sentences of a question', parts: { questions: [question(drains?.id ?? '', { effortSeconds: 30 })] } },
];
