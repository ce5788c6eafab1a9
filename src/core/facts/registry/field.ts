import type { FactDefinition } from '../types.ts';

const yesNo = ['yes', 'no'] as const;
const profileChoice = {
  type: 'choice',
  unit: null,
  obtained: ['asked'],
  goodFor: { kind: 'season' },
  profile: true,
} as const;

/** The field profile: soil, slope, water and drains, asked once a season. */
export const fieldFacts = {
  'field.texture': {
    ...profileChoice,
    label: 'soil texture',
    choices: [
      'sand',
      'loamy-sand',
      'sandy-loam',
      'loam',
      'silt-loam',
      'silt',
      'sandy-clay-loam',
      'clay-loam',
      'silty-clay-loam',
      'sandy-clay',
      'silty-clay',
      'clay',
    ],
  },
  'field.organicSoil': { ...profileChoice, label: 'peaty soil, over 10 % organic matter', choices: yesNo },
  'field.slopePercent': {
    label: 'slope towards water',
    type: 'number',
    unit: '%',
    range: [0, 100],
    plausible: [0, 30],
    precision: 0.01,
    shownDecimals: 1,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'field.waterDistanceM': {
    label: 'distance from the last nozzle to the top of the bank of the nearest water',
    type: 'number',
    unit: 'm',
    range: [0, 100000],
    plausible: [0, 5000],
    precision: 0.1,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'field.bufferMarked': { ...profileChoice, label: 'no-spray distance known and marked', choices: yesNo },
  'field.drained': { ...profileChoice, label: 'field drained', choices: yesNo },
  'field.loosenedThisSeason': {
    ...profileChoice,
    label: 'mole-drained or subsoiled since last harvest',
    choices: yesNo,
  },
  'field.protectedWaterArea': {
    ...profileChoice,
    label: 'drinking-water protected area',
    choices: ['inside', 'outside'],
  },
  'field.waterPlanAgreed': {
    ...profileChoice,
    label: 'plan for this field agreed with an adviser or the catchment officer this season',
    choices: yesNo,
  },
} as const satisfies Record<string, FactDefinition>;
