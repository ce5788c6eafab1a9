import type { FactId } from '../../facts/registry/index.ts';

/** How far a value is from a limit. */
export const marginWords = {
  room: (amount: string) => `${amount} room left`,
  atLimit: 'just at the limit',
  /** Beyond a limit: "0.4 C too warm". */
  over: (amount: string, how: string) => `${amount} ${how}`,
  tooHigh: {
    'soil.temperature30cmC': 'too warm',
    'air.temperatureC': 'too warm',
    'wind.boomKmh': 'too windy',
    'wind.gustKmh': 'too gusty',
    'rain.next48hMm': 'too much',
    'rain.next48hMaxMmPerH': 'too heavy',
    'rain.nowMmPerH': 'too much',
    'soil.fieldCapacityPercent': 'too wet',
    'field.slopePercent': 'too steep',
    'soil.temperatureTrendCPerDay': 'too fast a rise',
  } as Readonly<Partial<Record<FactId, string>>>,
  tooLow: {
    'soil.temperature30cmC': 'too cold',
    'air.temperatureC': 'too cold',
    'soil.fieldCapacityPercent': 'too dry',
    'field.waterDistanceM': 'too near',
    'crop.trueLeaves': 'too few',
  } as Readonly<Partial<Record<FactId, string>>>,
  aboveLimit: 'above the limit',
  belowLimit: 'below the limit',
  daysToGo: (days: number) => `${days} ${days === 1 ? 'day' : 'days'} to go`,
  daysLeft: (days: number) => `${days} ${days === 1 ? 'day' : 'days'} left`,
  bandCrosses: (limit: string) => `the band reaches across the limit of ${limit}`,
};
