import type { FactId } from '../../facts/registry/index.ts';

/** How a yes or no of a fact is said back; what is not listed is said as label and value. */
export const phraseWords = {
  yesNo: {
    'field.organicSoil': { yes: 'soil peaty', no: 'soil not peaty' },
    'field.bufferMarked': { yes: 'no-spray distance marked', no: 'no-spray distance not marked' },
    'field.drained': { yes: 'field drained', no: 'field not drained' },
    'field.loosenedThisSeason': {
      yes: 'mole-drained or subsoiled since harvest',
      no: 'not mole-drained or subsoiled since harvest',
    },
    'field.protectedWaterArea': {
      inside: 'inside a drinking-water protected area',
      outside: 'outside drinking-water protected areas',
    },
    'field.waterPlanAgreed': { yes: 'a plan for this field agreed', no: 'no plan for this field agreed' },
    'crop.frostOnLeaves': { yes: 'frost on the leaves', no: 'no frost on the leaves' },
    'weed.present': { yes: 'weed present', no: 'weed not present' },
    'treatment.alreadyApplied': { yes: 'already applied to this crop', no: 'not yet applied to this crop' },
    'treatment.partnerInTank': { yes: 'something else in the tank', no: 'nothing else in the tank' },
    'soil.drainsRunning': { yes: 'drains running', no: 'drains not running' },
    'soil.drainsExpected7d': {
      yes: 'drains expected to run within 7 days',
      no: 'drains not expected to run within 7 days',
    },
    'wind.towardsSensitive': { yes: 'wind towards something sensitive', no: 'wind away from anything sensitive' },
    'air.inversionRisk': { yes: 'signs of an inversion', no: 'no sign of an inversion' },
    'sun.daylight': { yes: 'daylight', no: 'no daylight' },
  } as Readonly<Partial<Record<FactId, Readonly<Record<string, string>>>>>,
  short: {
    'field.country': 'field in',
    'field.texture': 'soil',
    'field.waterDistanceM': 'nearest water',
    'soil.temperature30cmC': 'soil at 30 cm',
    'soil.temperatureTrendCPerDay': 'soil at 30 cm, change',
    'soil.feel': 'soil feels',
    'soil.surface': 'surface',
    'crop.trueLeaves': 'crop with',
    'weed.plantsPerM2': 'weed',
    'weed.tillers': 'weed',
    'rain.next48hMm': 'rain in the next 48 h',
    'rain.next48hMaxMmPerH': 'heaviest hour in the next 48 h',
    'wind.boomKmh': 'wind at the boom',
    'wind.gustKmh': 'gusts at the boom',
    'product.activeGPerL': 'product',
    'product.labelMaxGPerHa': 'label maximum',
  } as Readonly<Partial<Record<FactId, string>>>,
  trend: {
    falling: 'soil at 30 cm colder than a week ago',
    steady: 'soil at 30 cm about as a week ago',
    rising: 'soil at 30 cm warmer than a week ago',
  },
  notKnown: (label: string) => `${label}: you cannot say`,
  gone: (name: string) => `not ${name}`,
  goneAll: (names: string) => `none of: ${names}`,
};
