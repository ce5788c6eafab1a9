/**
 * The rules of the pack once more, written out by hand for facts that are all certain: no files, no engine, no bands. The numbers
 * are the agreed limits: common practice, no source, but for the wind (UK Code of practice for using plant protection products;
 * 9.6 and 14.5 km/h from memory), 4 mm/h (Met Office rain classes), and season, leaves and doses (product labels as the farming
 * press reports them: check the label in hand).
 */
export interface CertainFacts {
  /** ISO day at the field. */
  readonly date: string;
  readonly 'field.country': string;
  readonly 'field.slopePercent': number;
  readonly 'field.waterDistanceM': number;
  readonly 'field.bufferMarked': YesNo;
  readonly 'field.drained': YesNo;
  readonly 'field.loosenedThisSeason': YesNo;
  readonly 'field.organicSoil': YesNo;
  readonly 'field.protectedWaterArea': 'inside' | 'outside';
  readonly 'field.waterPlanAgreed': YesNo;
  readonly 'crop.trueLeaves': number;
  readonly 'crop.frostOnLeaves': YesNo;
  readonly 'weed.present': YesNo;
  readonly 'weed.plantsPerM2': number;
  readonly 'weed.tillers': number;
  readonly 'treatment.alreadyApplied': YesNo;
  readonly 'treatment.partnerInTank': YesNo;
  readonly 'product.activeGPerL': number;
  readonly 'product.labelMaxGPerHa': number;
  readonly 'soil.temperature30cmC': number;
  readonly 'soil.temperatureTrendCPerDay': number;
  /** Null: not felt. At least one of feel and share of field capacity is there. */
  readonly 'soil.feel': string | null;
  readonly 'soil.fieldCapacityPercent': number | null;
  readonly 'soil.surface': readonly string[];
  readonly 'soil.drainsRunning': YesNo;
  readonly 'soil.drainsExpected7d': YesNo;
  readonly 'rain.next48hMm': number;
  readonly 'rain.next48hMaxMmPerH': number;
  readonly 'rain.nowMmPerH': number;
  readonly 'wind.boomKmh': number;
  readonly 'wind.gustKmh': number;
  readonly 'wind.towardsSensitive': YesNo;
  readonly 'air.temperatureC': number;
  readonly 'air.deltaTC': number;
  readonly 'air.inversionRisk': YesNo;
  readonly 'sun.daylight': YesNo;
}

export type YesNo = 'yes' | 'no';

type Holds = (facts: CertainFacts) => boolean;

const monthDay = (facts: CertainFacts) => facts.date.slice(5);
const shows = (facts: CertainFacts, sign: string) => facts['soil.surface'].includes(sign);
const measured = (facts: CertainFacts) => facts['soil.fieldCapacityPercent'];

const heavyRain: Holds = (f) => f['rain.next48hMm'] >= 10 || f['rain.next48hMaxMmPerH'] >= 4;
const cracked: Holds = (f) => shows(f, 'cracked');
const standing: Holds = (f) => shows(f, 'ponded') || f['soil.drainsRunning'] === 'yes';
const saturated: Holds = (f) => f['soil.feel'] === 'saturated' || (measured(f) ?? 100) > 105;
const tooDry: Holds = (f) =>
  f['soil.feel'] === 'dry' || f['soil.feel'] === 'slightly-moist' || (measured(f) ?? 100) < 80;
const inside: Holds = (f) => f['field.protectedWaterArea'] === 'inside';
const drained: Holds = (f) => f['field.drained'] === 'yes';
const noPlan: Holds = (f) => f['field.waterPlanAgreed'] === 'no';
const british = ['GB-ENG', 'GB-SCT', 'GB-WLS'];

/** Each rule by id: its effect and when it is met. */
export const agreedRules: Readonly<Record<string, readonly ['stop' | 'hold' | 'advise', Holds]>> = {
  'outside-region': ['stop', (f) => !british.includes(f['field.country'])],
  'season-not-open': ['hold', (f) => monthDay(f) >= '08-01' && monthDay(f) <= '09-30'],
  'season-closed': ['stop', (f) => monthDay(f) >= '02-01' && monthDay(f) <= '07-31'],
  'season-best': ['advise', (f) => monthDay(f) < '10-20' || monthDay(f) > '12-10'],
  'one-application': ['stop', (f) => f['treatment.alreadyApplied'] === 'yes'],
  'crop-too-small': ['hold', (f) => f['crop.trueLeaves'] < 3],
  'nothing-to-control': ['hold', (f) => f['weed.present'] === 'no'],
  'weed-too-big': ['advise', (f) => f['weed.tillers'] > 3],
  'partner-in-tank': ['advise', (f) => f['treatment.partnerInTank'] === 'yes'],
  'peaty-soil': ['advise', (f) => f['field.organicSoil'] === 'yes'],
  'soil-too-warm': ['hold', (f) => f['soil.temperature30cmC'] > 10],
  'soil-warming': ['hold', (f) => f['soil.temperature30cmC'] > 9 && f['soil.temperatureTrendCPerDay'] > 0.1],
  'soil-too-dry': ['hold', tooDry],
  'soil-saturated': ['hold', saturated],
  'soil-cracked': ['hold', cracked],
  'water-standing': ['hold', standing],
  'drains-about-to-run': ['hold', (f) => drained(f) && f['soil.drainsExpected7d'] === 'yes'],
  'soil-sticky': ['hold', (f) => shows(f, 'sticky')],
  'soil-frozen': ['hold', (f) => shows(f, 'frozen') || shows(f, 'snow')],
  'frost-on-leaves': ['hold', (f) => f['crop.frostOnLeaves'] === 'yes' || f['air.temperatureC'] <= 0],
  'heavy-rain-coming': ['hold', heavyRain],
  'rain-on-unfit-soil': ['stop', (f) => heavyRain(f) && (cracked(f) || standing(f) || saturated(f) || tooDry(f))],
  'water-risk-field': [
    'stop',
    (f) => inside(f) && f['field.waterDistanceM'] <= 50 && (f['field.slopePercent'] >= 5 || drained(f)),
  ],
  'water-risk-drained': ['hold', (f) => inside(f) && drained(f) && noPlan(f)],
  'slope-to-water': ['advise', (f) => f['field.slopePercent'] >= 2 && f['field.waterDistanceM'] <= 50],
  'loosened-soil': ['hold', (f) => f['field.loosenedThisSeason'] === 'yes' && noPlan(f)],
  'near-water': ['hold', (f) => f['field.waterDistanceM'] <= 20 && f['field.bufferMarked'] === 'no'],
  'too-windy': ['hold', (f) => f['wind.boomKmh'] > 9.6],
  gusty: ['hold', (f) => f['wind.gustKmh'] > 14.5],
  breezy: ['advise', (f) => f['wind.boomKmh'] >= 6.5 && f['wind.boomKmh'] <= 9.6],
  'wind-towards-sensitive': ['hold', (f) => f['wind.boomKmh'] > 6.5 && f['wind.towardsSensitive'] === 'yes'],
  inversion: ['hold', (f) => f['air.inversionRisk'] === 'yes'],
  'raining-now': ['hold', (f) => f['rain.nowMmPerH'] > 0.2],
  dark: ['advise', (f) => f['sun.daylight'] === 'no'],
  'delta-t': ['advise', (f) => f['air.deltaTC'] < 2 || f['air.deltaTC'] > 8],
};

/** Ids of the rules that are met, in alphabetical order, and the verdict that follows. */
export function agreedAnswer(facts: CertainFacts): { readonly met: readonly string[]; readonly verdict: string } {
  const met = Object.entries(agreedRules).filter(([, [, holds]]) => holds(facts));
  const some = (wanted: string) => met.some(([, [effect]]) => effect === wanted);
  const verdict = some('stop') ? 'do-not-spray' : some('hold') ? 'wait' : 'spray-today';
  return { met: met.map(([id]) => id).sort(), verdict };
}

/** Active g/ha and product in hundredths of a litre (or kilogram) per hectare, in whole numbers of thousandths of a gram. */
export function agreedDose(facts: CertainFacts): { readonly activeGPerHa: number; readonly productHundredths: number } {
  const wanted = facts['weed.plantsPerM2'] >= 100 ? 840 : 750;
  const activeGPerHa = Math.min(wanted, facts['product.labelMaxGPerHa']);
  const milligrams = BigInt(Math.round(activeGPerHa * 1000));
  const milligramsPerUnit = BigInt(Math.round(facts['product.activeGPerL'] * 1000));
  return { activeGPerHa, productHundredths: Number((milligrams * 100n) / milligramsPerUnit) };
}
