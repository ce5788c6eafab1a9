import type { FactDefinition } from '../types.ts';

/** When and where: the day and the field's place. */
export const placeFacts = {
  date: { label: 'date', type: 'date', unit: null, obtained: ['derived'], goodFor: { kind: 'moment' } },
  'field.country': {
    label: 'country of the field',
    type: 'country',
    unit: null,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'field.latitude': {
    label: 'latitude',
    type: 'number',
    unit: 'deg',
    range: [-90, 90],
    precision: 0.0001,
    shownDecimals: 2,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'field.longitude': {
    label: 'longitude',
    type: 'number',
    unit: 'deg',
    range: [-180, 180],
    precision: 0.0001,
    shownDecimals: 2,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
  'field.areaHa': {
    label: 'area of the field',
    type: 'number',
    unit: 'ha',
    range: [0, 10000],
    plausible: [0.1, 500],
    precision: 0.01,
    shownDecimals: 2,
    obtained: ['asked'],
    goodFor: { kind: 'season' },
    profile: true,
  },
} as const satisfies Record<string, FactDefinition>;
