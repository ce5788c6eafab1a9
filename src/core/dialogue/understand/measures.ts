import type { FactId } from '../../facts/registry/index.ts';
import type { UnitId } from '../../units/table.ts';
import type { SaidUnit, Subject } from './lexicon-types.ts';

/** How a number of one fact is said. */
export interface Measure {
  /** What it is said of. */
  readonly of: readonly Subject[];
  /** Subjects beside which its units are theirs: the leaves of a weed. */
  readonly notOf?: readonly Subject[];
  /** Units that it may be said in, with the unit of the table that each stands for; null: the number as it is. */
  readonly units: Readonly<Partial<Record<SaidUnit, UnitId | null>>>;
  /** The fact's own unit in the table; null where it only counts. */
  readonly own: UnitId | null;
  /** Units that name the fact alone, without a subject. */
  readonly alone?: readonly SaidUnit[];
  /** Taken without a unit beside its subject; with doubt where several units are usual. */
  readonly bare?: 'yes' | 'doubtful';
  /** Taken without a unit as the answer to its question. */
  readonly asked?: true;
  /** Told of what is to come. */
  readonly ahead?: true;
  /** A most allowed: "at most 850" is that number. */
  readonly limit?: true;
  /** Counted in whole ones. */
  readonly whole?: true;
  /** A growth stage of the BBCH scale as it is. */
  readonly stage?: true;
  /** Told of now or of what is to come. */
  readonly anyTime?: true;
  /** What it is the height of, where it is one: "cleavers 8 cm". */
  readonly heightOf?: readonly Subject[];
  /** Facts that tell whether what it is the height of is there. */
  readonly grows?: readonly FactId[];
}

const speeds = { 'm/s': 'm/s', 'km/h': 'km/h', mph: 'mph', kn: 'kn', force: null } as const;
const degrees = { C: 'C', F: 'F', deg: 'C' } as const;

/** Every fact that is said as a number. */
export const measures: Readonly<Partial<Record<FactId, Measure>>> = {
  'soil.temperature30cmC': { of: ['soil'], units: degrees, own: 'C', bare: 'yes', asked: true },
  'air.temperatureC': { of: ['air'], units: degrees, own: 'C', bare: 'yes', asked: true },
  'wind.boomKmh': {
    of: ['wind'],
    units: speeds,
    own: 'km/h',
    alone: ['force', 'kn', 'm/s'],
    bare: 'doubtful',
    asked: true,
  },
  'wind.gustKmh': { of: ['gust'], units: speeds, own: 'km/h', bare: 'doubtful', asked: true },
  'field.waterDistanceM': {
    of: ['water'],
    units: { m: 'm', km: 'km', ft: 'ft', yd: 'yd', mile: 'mile' },
    own: 'm',
    asked: true,
  },
  'field.slopePercent': {
    of: ['slope'],
    units: { '%': '% slope', '% slope': '% slope', deg: 'deg slope', 'deg slope': 'deg slope', '1 in': '1 in' },
    own: '% slope',
    alone: ['1 in', '% slope', 'deg slope'],
    asked: true,
  },
  'field.areaHa': { of: ['area'], units: { ha: 'ha', acre: 'acre' }, own: 'ha', alone: ['ha', 'acre'], asked: true },
  'crop.trueLeaves': {
    of: ['leaves', 'crop'],
    notOf: ['weed'],
    units: { leaves: null, bbch: null },
    own: null,
    alone: ['leaves', 'bbch'],
    bare: 'yes',
    asked: true,
    whole: true,
  },
  'weed.tillers': {
    of: ['tillers', 'weed'],
    units: { tillers: null },
    own: null,
    alone: ['tillers'],
    bare: 'yes',
    asked: true,
    whole: true,
  },
  'weed.plantsPerM2': { of: ['weed'], units: { 'plants/m2': null }, own: null, alone: ['plants/m2'], asked: true },
  'rain.next48hMm': { of: ['rain'], units: { mm: 'mm', in: 'in' }, own: 'mm', alone: ['mm'], ahead: true, asked: true },
  'rain.next48hMaxMmPerH': {
    of: ['peak', 'rain'],
    units: { 'mm/h': null, mm: null },
    own: null,
    alone: ['mm/h'],
    ahead: true,
  },
  'rain.nowMmPerH': { of: ['rain'], units: { 'mm/h': null }, own: null },
  'air.relativeHumidityPercent': { of: ['humidity'], units: { '%': null }, own: null, bare: 'yes', asked: true },
  'air.deltaTC': { of: ['delta-t'], units: degrees, own: 'C', bare: 'yes', asked: true },
  'soil.fieldCapacityPercent': {
    of: ['capacity'],
    units: { '% of field capacity': null, '%': null },
    own: null,
    alone: ['% of field capacity'],
  },
  'product.activeGPerL': {
    of: ['product'],
    units: { 'g/L': 'g/L', '% w/v': '% w/v', 'g/kg': null },
    own: 'g/L',
    alone: ['g/L', 'g/kg'],
    asked: true,
  },
  'product.labelMaxGPerHa': {
    of: ['label'],
    units: { 'g/ha': 'g/ha', 'kg/ha': 'kg/ha' },
    own: 'g/ha',
    asked: true,
    limit: true,
  },
};

/** Facts of what is to come: words of the present say nothing of them, nor words of the future of others. */
export const aheadFacts: ReadonlySet<FactId> = new Set<FactId>([
  'rain.next48hMm',
  'rain.next48hMaxMmPerH',
  'soil.drainsExpected7d',
]);
