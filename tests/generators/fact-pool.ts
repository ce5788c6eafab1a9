import type { FactId } from '../../src/core/facts/registry/index.ts';

/** Number facts that generated rules read, each with three limits; generated values fall on and around them. */
export const numberFacts: readonly { readonly fact: FactId; readonly limits: readonly [number, number, number] }[] = [
  { fact: 'wind.boomKmh', limits: [6.5, 9.6, 14.5] },
  { fact: 'soil.temperature30cmC', limits: [0, 9, 10] },
  { fact: 'soil.temperatureTrendCPerDay', limits: [-0.1, 0, 0.1] },
  { fact: 'soil.fieldCapacityPercent', limits: [80, 100, 105] },
];

/** Choice facts that generated rules read. */
export const choiceFacts: readonly { readonly fact: FactId; readonly choices: readonly string[] }[] = [
  { fact: 'soil.feel', choices: ['dry', 'slightly-moist', 'moist', 'wet', 'at-capacity', 'saturated'] },
  { fact: 'field.drained', choices: ['yes', 'no'] },
  { fact: 'field.protectedWaterArea', choices: ['inside', 'outside'] },
];

/** Signs of the one fact of signs that generated rules read. */
export const signs = ['friable', 'cracked', 'sticky', 'ponded', 'frozen', 'snow'] as const;

/** Countries of generated facts; the first two are on the generated list. */
export const countries = ['GB-ENG', 'GB-SCT', 'FR'] as const;
