import type { Catalogue } from '../catalogue.ts';

/** How far a value is from a limit. */
export const marginWords: Catalogue['margins'] = {
  room: (amount) => `noch ${amount} bis zur Grenze`,
  atLimit: 'genau an der Grenze',
  over: (amount, how) => `${amount} ${how}`,
  tooHigh: {
    'soil.temperature30cmC': 'zu warm',
    'air.temperatureC': 'zu warm',
    'wind.boomKmh': 'zu windig',
    'wind.gustKmh': 'zu böig',
    'rain.next48hMm': 'zu viel',
    'rain.next48hMaxMmPerH': 'zu stark',
    'rain.nowMmPerH': 'zu viel',
    'soil.fieldCapacityPercent': 'zu nass',
    'field.slopePercent': 'zu steil',
    'soil.temperatureTrendCPerDay': 'zu schneller Anstieg',
  },
  tooLow: {
    'soil.temperature30cmC': 'zu kalt',
    'air.temperatureC': 'zu kalt',
    'soil.fieldCapacityPercent': 'zu trocken',
    'field.waterDistanceM': 'zu nah',
    'crop.trueLeaves': 'zu wenige',
  },
  aboveLimit: 'über der Grenze',
  belowLimit: 'unter der Grenze',
  daysToGo: (days) => `noch ${days} ${days === 1 ? 'Tag' : 'Tage'}`,
  daysLeft: (days) => `${days} ${days === 1 ? 'Tag' : 'Tage'} übrig`,
  bandCrosses: (limit) => `die Spanne reicht über die Grenze von ${limit}`,
};
