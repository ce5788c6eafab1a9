import type { FactContext } from '../../facts/context.ts';
import { derivedChoice, derivedNumber, isSurely } from '../../facts/derive/derived.ts';
import { derivations } from '../../facts/derive/index.ts';
import type { FactId } from '../../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../../facts/resolved.ts';
import type { Resolved } from '../../facts/types.ts';
import { numberParameter } from '../../units/parameter.ts';
import { withoutBinaryNoise } from '../../weather/banded.ts';
import { recordedOwn } from './recorded-own.ts';
import type { SoilFollower } from './soil-temperature.ts';
import type { FactsReplayInput, RecordPlace, WeatherDay } from './types.ts';
import { flowOf, type WaterFollower } from './water.ts';
import { type RecordedWeather, recordedWeather } from './weather.ts';

/** Days ahead over which drains are judged: those of the fact `soil.drainsExpected7d`. */
const drainDays = 7;

/** Soil and water as they stand when a day begins. */
export interface DaySources {
  readonly soil: SoilFollower;
  /** Null where the field's texture is not given. */
  readonly water: WaterFollower | null;
}

/**
 * Facts wanted on one day of a record, at noon: from the record first, then modelled, then derived from other facts, then what is
 * given and held.
 */
export function factsOfDay(
  { parameters, registry, wanted, record, place, given }: FactsReplayInput,
  index: number,
  at: FactContext['at'],
  { soil, water }: DaySources,
): ResolvedFacts {
  const day = record[index]!;
  const weather: RecordedWeather = { at, days: [day, record[index + 1]], parameters };
  const kept = new Map<FactId, Resolved>();
  const context: FactContext = {
    at,
    zone: 'UTC',
    parameters,
    registry,
    trusted: null,
    untrusted: null,
    observations: (id) => (id === 'soil.temperature30cmC' ? soil.readings() : []),
    fact: (id) => {
      const already = kept.get(id);
      if (already) return already;
      const fresh = told(id);
      kept.set(id, fresh);
      return fresh;
    },
  };
  const modelled: Readonly<Partial<Record<FactId, () => Resolved | null>>> = {
    date: () => ({ known: true, type: 'date', iso: day.iso, source: 'derived', at, goodUntil: null }),
    'field.latitude': () => derivedNumber('field.latitude', exactly(place.latitude), at, null, 'of the record'),
    'field.longitude': () => derivedNumber('field.longitude', exactly(place.longitude), at, null, 'of the record'),
    'soil.temperature30cmC': () => soil.temperature(index, context),
    'soil.temperatureTrendCPerDay': () => soil.trend(index, context),
    'soil.fieldCapacityPercent': () => water && capacityPercent(water, context),
    'soil.drainsRunning': () => (isDrained(context) ? water && drainsRunning(water, context) : null),
    'soil.drainsExpected7d': () =>
      isDrained(context) ? water && drainsExpected(water, aheadOf(record, index, place), context) : null,
  };
  const told = (id: FactId): Resolved => {
    const own =
      registry[id]?.forecast && recordedOwn(registry[id], { at, days: record.slice(index, index + 9), parameters });
    const fromRecord = own ?? recordedWeather[id]?.(weather) ?? modelled[id]?.() ?? null;
    if (fromRecord !== null) return fromRecord;
    const derived = derivations[id]?.(context);
    return derived?.known ? derived : resolvedFact(given, id);
  };
  return Object.fromEntries(wanted.map((id) => [id, context.fact(id)]));
}

function isDrained({ fact }: FactContext): boolean {
  return !isSurely(fact('field.drained'), 'no');
}

function exactly(value: number) {
  return { value, low: value, high: value };
}

function capacityPercent(water: WaterFollower, { at }: FactContext): Resolved {
  const { capacityPercent: percent } = water.today();
  return derivedNumber('soil.fieldCapacityPercent', percent, at, null, 'by the water balance');
}

function drainsRunning(water: WaterFollower, context: FactContext): Resolved {
  const { throughLowMm, throughHighMm } = water.today();
  const possible = throughLowMm > 0 ? ['yes'] : throughHighMm > 0 ? ['yes', 'no'] : ['no'];
  return derivedChoice(context, possible, null, 'by the water balance of the day before');
}

function drainsExpected(water: WaterFollower, ahead: ReturnType<typeof aheadOf>, context: FactContext): Resolved {
  const surplus = water.surplusOver(ahead);
  const limit = numberParameter(context.parameters, 'drainsSurplusMm');
  const isSure = withoutBinaryNoise(surplus.lowMm) > limit;
  if (!isSure && ahead.length < drainDays) return { known: false, reason: 'forecast-gap' };
  const possible = isSure ? ['yes'] : withoutBinaryNoise(surplus.highMm) > limit ? ['yes', 'no'] : ['no'];
  return derivedChoice(context, possible, null, 'by the water balance of the days to come');
}

/** Days to come up to the first gap of the record. */
function aheadOf(record: readonly WeatherDay[], index: number, place: RecordPlace) {
  const flows = record.slice(index, index + drainDays).map((day) => flowOf(day, place));
  const until = flows.indexOf(null);
  return flows.slice(0, until < 0 ? flows.length : until).filter((flow) => flow !== null);
}
