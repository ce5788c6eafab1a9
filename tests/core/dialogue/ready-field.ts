import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { fieldOf } from './talk.ts';

type Values = Partial<Record<FactId, number | string | Reading>>;

/** A field far from water, outside protected areas and not drained, with its season known. Invented. */
export const dryland: Values = {
  'field.country': 'GB-ENG',
  'treatment.alreadyApplied': 'no',
  'field.protectedWaterArea': 'outside',
  'field.waterDistanceM': 400,
  'field.slopePercent': 1,
  'field.drained': 'no',
  'field.loosenedThisSeason': 'no',
};

/** The same field on a morning on which all suits. Invented. */
export const fitMorning: Values = {
  ...dryland,
  'weed.present': 'yes',
  'crop.trueLeaves': 5,
  'crop.frostOnLeaves': 'no',
  'soil.temperature30cmC': 7.6,
  'soil.feel': 'moist',
  'soil.surface': { type: 'signs', present: ['friable'], absent: [], complete: true },
  'air.temperatureC': 8,
  'air.inversionRisk': 'no',
  'rain.nowMmPerH': 0,
  'rain.next48hMm': 1,
  'rain.next48hMaxMmPerH': 0.4,
  'wind.boomKmh': 5,
  'wind.gustKmh': 9,
};

/** A field with what is known of it, less the facts named. */
export function fieldLess(values: Values, ...without: FactId[]): ReturnType<typeof fieldOf> {
  const kept = Object.entries(values).filter(([fact]) => !without.includes(fact as FactId));
  return fieldOf(Object.fromEntries(kept));
}

/** Observations of a field, for comparing. */
export function observed(values: Values): readonly FactObservation[] {
  return fieldOf(values).observations;
}
