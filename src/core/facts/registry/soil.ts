import type { FactDefinition } from '../types.ts';

const soilSeen = { kind: 'hours', parameter: 'goodForSoilSeenHours', untilRainMm: 'goodForSoilSeenRainMm' } as const;

/** The soil today. */
export const soilFacts = {
  'soil.temperature30cmC': {
    label: 'soil temperature at 30 cm',
    type: 'number',
    unit: 'C',
    range: [-20, 45],
    plausible: [-2, 25],
    precision: 0.01,
    shownDecimals: 1,
    obtained: ['asked', 'derived'],
    goodFor: { kind: 'hours', parameter: 'goodForSoilTemperatureHours' },
  },
  'soil.temperatureTrendCPerDay': {
    label: 'trend of the soil temperature at 30 cm',
    type: 'number',
    unit: 'C/day',
    range: [-10, 10],
    plausible: [-2, 2],
    precision: 0.01,
    shownDecimals: 2,
    obtained: ['derived', 'asked'],
    goodFor: { kind: 'hours', parameter: 'goodForSoilTemperatureHours' },
  },
  'soil.feel': {
    label: 'feel of the soil in the hand',
    type: 'choice',
    unit: null,
    choices: ['dry', 'slightly-moist', 'moist', 'wet', 'at-capacity', 'saturated'],
    obtained: ['asked'],
    goodFor: soilSeen,
  },
  'soil.fieldCapacityPercent': {
    label: 'water held, as a share of that held at field capacity',
    type: 'number',
    unit: '% of field capacity',
    range: [0, 250],
    plausible: [10, 150],
    precision: 0.1,
    shownDecimals: 0,
    obtained: ['asked'],
    noQuestion: 'it is measured, never guessed; a hand judges by the feel',
    goodFor: soilSeen,
  },
  'soil.surface': {
    label: 'soil surface',
    type: 'signs',
    unit: null,
    choices: ['friable', 'cracked', 'sticky', 'ponded', 'frozen', 'snow'],
    obtained: ['asked'],
    goodFor: soilSeen,
  },
  'soil.drainsRunning': {
    label: 'drains running',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['asked', 'derived'],
    goodFor: soilSeen,
  },
  'soil.drainsExpected7d': {
    label: 'drains expected to run within 7 days',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['derived', 'asked'],
    goodFor: soilSeen,
  },
} as const satisfies Record<string, FactDefinition>;
