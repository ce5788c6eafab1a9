import fc from 'fast-check';
import type { CertainFacts } from './design-oracle.ts';

type Values = { readonly [Id in keyof CertainFacts]: readonly CertainFacts[Id][] };

/** A limit, a step of the fact's precision to either side, and values well clear of it. */
function around(step: number, limits: readonly number[], ...clear: number[]): number[] {
  const decimals = Math.round(-Math.log10(step));
  const near = limits.flatMap((limit) => [limit - step, limit, limit + step]);
  return [...near.map((value) => Number(value.toFixed(decimals))), ...clear];
}

const yesNo = ['yes', 'no'] as const;

/** The signs of the surface. */
export const surfaceSigns = ['friable', 'cracked', 'sticky', 'ponded', 'frozen', 'snow'] as const;

/** The values tried of each fact, harmless ones first: at each limit, just below, just above, and clear of it. */
export const valuesTried: Values = {
  date: [
    ...['2026-11-06', '2026-10-01', '2026-09-30', '2026-08-01', '2026-07-31', '2026-02-01', '2027-01-31'],
    ...['2026-10-19', '2026-10-20', '2026-12-10', '2026-12-11', '2028-02-29', '2026-12-31', '2027-01-01'],
    ...['2026-10-25', '2027-03-28', '2026-05-05'],
  ],
  'field.country': ['GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'IE', 'FR', 'ZZ'],
  'field.slopePercent': around(0.01, [2, 5], 0, 1, 12),
  'field.waterDistanceM': [400, ...around(0.1, [20, 50], 0, 35)],
  'field.bufferMarked': yesNo,
  'field.drained': ['no', 'yes'],
  'field.loosenedThisSeason': ['no', 'yes'],
  'field.organicSoil': ['no', 'yes'],
  'field.protectedWaterArea': ['outside', 'inside'],
  'field.waterPlanAgreed': yesNo,
  'crop.trueLeaves': [5, ...around(0.1, [3], 0, 9)],
  'crop.frostOnLeaves': ['no', 'yes'],
  'weed.present': yesNo,
  'weed.plantsPerM2': around(0.1, [100], 0, 40, 900),
  'weed.tillers': [1, ...around(0.1, [3], 0, 8)],
  'treatment.alreadyApplied': ['no', 'yes'],
  'treatment.partnerInTank': ['no', 'yes'],
  'product.activeGPerL': [500, 400, 417, 50, 187.5, 800, 333.33, 1],
  'product.labelMaxGPerHa': around(0.01, [750, 840], 500, 850),
  'soil.temperature30cmC': [8, ...around(0.01, [9, 10], 3, 14)],
  'soil.temperatureTrendCPerDay': [-0.2, ...around(0.01, [0.1], 0, 0.5)],
  'soil.feel': ['moist', 'wet', 'at-capacity', 'saturated', 'slightly-moist', 'dry', null],
  'soil.fieldCapacityPercent': [95, null, ...around(0.1, [80, 105], 60, 130)],
  'soil.surface': [['friable'], [], ...surfaceSigns.slice(1).map((sign) => [sign]), ['friable', 'cracked', 'snow']],
  'soil.drainsRunning': ['no', 'yes'],
  'soil.drainsExpected7d': ['no', 'yes'],
  'rain.next48hMm': [1, ...around(0.01, [10], 0, 25)],
  'rain.next48hMaxMmPerH': [0.4, ...around(0.01, [4], 0, 9)],
  'rain.nowMmPerH': [0, ...around(0.01, [0.2], 0.1, 3)],
  'wind.boomKmh': [5, ...around(0.01, [6.5, 9.6], 0, 8, 20)],
  'wind.gustKmh': [8, ...around(0.01, [14.5], 0, 30)],
  'wind.towardsSensitive': ['no', 'yes'],
  'air.temperatureC': [8, ...around(0.01, [0, 4], -3, 2)],
  'air.deltaTC': [4, ...around(0.01, [2, 8], 0, 12)],
  'air.inversionRisk': ['no', 'yes'],
  'sun.daylight': yesNo,
};

/** Every fact of the oracle. */
export const oracleFacts = Object.keys(valuesTried) as (keyof CertainFacts)[];

/** Whole sets of facts in which most values are harmless, so that each rule decides now and then; `anyShare` of 100 are not. */
export function certainFacts(anyShare: number): fc.Arbitrary<CertainFacts> {
  const entries = oracleFacts.map((id) => {
    const [harmless, ...others] = valuesTried[id] as readonly unknown[];
    return fc.oneof(
      { weight: 100 - anyShare, arbitrary: fc.constant(harmless) },
      { weight: anyShare, arbitrary: fc.constantFrom(...others) },
    );
  });
  return fc
    .tuple(...entries)
    .map((values) => Object.fromEntries(oracleFacts.map((id, index) => [id, values[index]])) as unknown as CertainFacts)
    .filter((facts) => facts['soil.feel'] !== null || facts['soil.fieldCapacityPercent'] !== null);
}
