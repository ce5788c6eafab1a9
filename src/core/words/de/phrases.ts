import type { Catalogue } from '../catalogue.ts';

/** How a yes or no of a fact is said back; what is not listed is said as label and value. */
export const phraseWords: Catalogue['phrases'] = {
  yesNo: {
    'field.organicSoil': { yes: 'Boden moorig', no: 'Boden nicht moorig' },
    'field.bufferMarked': { yes: 'Abstand zum Gewässer abgesteckt', no: 'Abstand zum Gewässer nicht abgesteckt' },
    'field.drained': { yes: 'Feld gedränt', no: 'Feld nicht gedränt' },
    'field.loosenedThisSeason': {
      yes: 'seit der Ernte maulwurfgedränt oder tief gelockert',
      no: 'seit der Ernte nicht maulwurfgedränt oder tief gelockert',
    },
    'field.protectedWaterArea': { inside: 'im Wasserschutzgebiet', outside: 'nicht im Wasserschutzgebiet' },
    'field.waterPlanAgreed': {
      yes: 'ein Plan für dieses Feld vereinbart',
      no: 'kein Plan für dieses Feld vereinbart',
    },
    'crop.frostOnLeaves': { yes: 'Reif auf den Blättern', no: 'kein Reif auf den Blättern' },
    'weed.present': { yes: 'Ungras vorhanden', no: 'Ungras nicht vorhanden' },
    'treatment.alreadyApplied': {
      yes: 'in diesem Bestand schon ausgebracht',
      no: 'in diesem Bestand noch nicht ausgebracht',
    },
    'treatment.partnerInTank': { yes: 'noch etwas im Tank', no: 'sonst nichts im Tank' },
    'soil.drainsRunning': { yes: 'Dräne laufen', no: 'Dräne laufen nicht' },
    'soil.drainsExpected7d': {
      yes: 'Dräne laufen voraussichtlich binnen 7 Tagen',
      no: 'Dräne laufen voraussichtlich nicht binnen 7 Tagen',
    },
    'wind.towardsSensitive': {
      yes: 'Wind auf Empfindliches zu',
      no: 'Wind nicht auf Empfindliches zu',
    },
    'air.inversionRisk': { yes: 'Zeichen einer Inversion', no: 'kein Zeichen einer Inversion' },
    'sun.daylight': { yes: 'Tageslicht', no: 'kein Tageslicht' },
  },
  short: {
    'field.country': 'Feld in',
    'field.texture': 'Boden',
    'field.waterDistanceM': 'nächstes Gewässer',
    'soil.temperature30cmC': 'Boden in 30 cm',
    'soil.temperatureTrendCPerDay': 'Boden in 30 cm, Änderung',
    'soil.feel': 'Boden fühlt sich an:',
    'soil.surface': 'Oberfläche',
    'crop.trueLeaves': 'Raps mit',
    'weed.plantsPerM2': 'Ungras',
    'weed.tillers': 'Ungras',
    'rain.next48hMm': 'Regen in den nächsten 48 h',
    'rain.next48hMaxMmPerH': 'stärkste Stunde der nächsten 48 h',
    'wind.boomKmh': 'Wind am Gestänge',
    'wind.gustKmh': 'Böen am Gestänge',
    'product.activeGPerL': 'Mittel',
    'product.labelMaxGPerHa': 'Höchstmenge der Gebrauchsanleitung',
  },
  trend: {
    falling: 'Boden in 30 cm kälter als vor einer Woche',
    steady: 'Boden in 30 cm etwa wie vor einer Woche',
    rising: 'Boden in 30 cm wärmer als vor einer Woche',
  },
  notKnown: (label) => `${label}: können Sie nicht sagen`,
  gone: (name) => `nicht ${name}`,
  goneAll: (names) => `nichts davon: ${names}`,
};
