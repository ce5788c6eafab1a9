import type { FactDefinition } from '../types.ts';

/** The treatment so far, the tank and the product on the shelf. */
export const treatmentFacts = {
  'treatment.alreadyApplied': {
    label: 'this active already applied to this crop, alone or in a mixture',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'treatment.partnerInTank': {
    label: 'something else in the tank',
    type: 'choice',
    unit: null,
    choices: ['yes', 'no'],
    obtained: ['asked'],
    goodFor: { kind: 'same-day' },
    scope: 'farm',
  },
  'product.activeGPerL': {
    label: 'active in the product',
    type: 'number',
    unit: 'g/L',
    range: [1, 1000],
    plausible: [50, 900],
    precision: 0.01,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: { kind: 'same-day' },
    scope: 'farm',
  },
  'product.labelMaxGPerHa': {
    label: 'most active per hectare that the label allows',
    type: 'number',
    unit: 'g/ha',
    range: [1, 10000],
    plausible: [100, 2000],
    precision: 0.01,
    shownDecimals: 0,
    obtained: ['asked'],
    goodFor: { kind: 'same-day' },
    scope: 'farm',
  },
} as const satisfies Record<string, FactDefinition>;
