import { ceilTo, floorTo, roundTo } from '../units/round.ts';
import type { Banded } from '../weather/banded.ts';
import type { FactDefinition } from './types.ts';

/**
 * A number as it is kept: to the fact's precision (each number has one), its band outward (low down, high up). Where there is no band low and
 * high equal the kept value.
 */
export function atPrecision(definition: FactDefinition, { value, low, high }: Banded): Banded {
  const step = definition.precision!;
  const kept = roundTo(value, step);
  if (low === value && high === value) return { value: kept, low: kept, high: kept };
  return { value: kept, low: Math.min(kept, floorTo(low, step)), high: Math.max(kept, ceilTo(high, step)) };
}
