import type { FactId } from '../registry/index.ts';

const place = ['field.latitude', 'field.longitude'] as const;

/** The other facts that each derivation reads. */
export const derivationReads: Readonly<Partial<Record<FactId, readonly FactId[]>>> = {
  'crop.frostOnLeaves': ['air.temperatureC'],
  'soil.drainsRunning': ['field.drained'],
  'soil.drainsExpected7d': ['field.drained', 'field.texture', 'soil.fieldCapacityPercent', 'soil.feel'],
  'soil.temperature30cmC': ['field.latitude'],
  'soil.temperatureTrendCPerDay': ['soil.temperature30cmC', 'field.latitude'],
  'air.deltaTC': ['air.temperatureC', 'air.relativeHumidityPercent'],
  'air.inversionRisk': ['wind.boomKmh', ...place],
  'sun.daylight': place,
};

/** The facts that bear on some facts: those themselves, and those that they are derived from, and so on. */
export function factsBehind(facts: Iterable<FactId>): ReadonlySet<FactId> {
  const behind = new Set<FactId>();
  const add = (fact: FactId): void => {
    if (behind.has(fact)) return;
    behind.add(fact);
    for (const read of derivationReads[fact] ?? []) add(read);
  };
  for (const fact of facts) add(fact);
  return behind;
}
