import { newRule, type Parts, parameter, question, rainSharedOut, rule, shipped, split } from './overlay-of.ts';

const caution = shipped.cautions.find(({ authority }) => authority !== 'practice');
const drains = shipped.questions.find(({ facts, choices }) => choices && facts.includes('soil.drainsRunning'));

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
  {
    name: 'less rain in all and in the hour, an answer shared out over both',
    parts: {
      parameters: [parameter('rainTotalLimitMm', 5), parameter('rainHourLimitMmPerH', 2)],
      questions: [rainSharedOut()],
    },
  },
  { name: 'a shorter season at its end', parts: { parameters: [parameter('seasonLastDay', '01-15')] } },
  { name: 'fewer countries', parts: { parameters: [parameter('packCountries', ['GB-ENG'])] } },
  { name: 'drier soil refused sooner', parts: { parameters: [parameter('fieldCapacityDriestPercent', 85)] } },
  { name: 'drains that count as about to run sooner', parts: { parameters: [parameter('drainsSurplusMm', 2)] } },
  {
    name: 'more hours of a morning with inversion',
    parts: { parameters: [parameter('inversionAfterSunriseHours', 3)] },
  },
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
    name: 'a protected rule with something added to what it says',
    parts: {
      rules: [
        rule('near-water', {
          text: Object.fromEntries(
            Object.entries(shipped.rules.find(({ id }) => id === 'near-water')?.text ?? {}).map(([language, said]) => [
              language,
              { ...said, met: `${said.met} Ring Ann.` },
            ]),
          ),
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
