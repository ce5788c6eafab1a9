import type { FactDefinition } from '../types.ts';

const stage = { kind: 'days', parameter: 'goodForStageDays' } as const;

/** Crop and weed stage, seen in the field. */
export const cropAndWeedFacts = {
  'crop.trueLeaves': {
    label: 'true leaves of the crop',
    type: 'number',
    unit: 'leaves',
    range: [0, 30],
    plausible: [0, 14],
    precision: 0.1,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: stage,
  },
  'crop.frostOnLeaves': {
    label: 'frost on the leaves',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['asked', 'derived'],
    goodFor: { kind: 'hours', parameter: 'goodForSeenNowHours' },
  },
  'weed.present': {
    label: 'black-grass or rye-grass present',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['asked'],
    goodFor: stage,
  },
  'weed.plantsPerM2': {
    label: 'weed plants per square metre',
    type: 'number',
    unit: 'plants/m2',
    range: [0, 20000],
    plausible: [0, 3000],
    precision: 0.1,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: stage,
  },
  'weed.tillers': {
    label: 'tillers per weed plant',
    type: 'number',
    unit: 'tillers',
    range: [0, 60],
    plausible: [0, 15],
    precision: 0.1,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: stage,
  },
} as const satisfies Record<string, FactDefinition>;
