import type { FactId } from '../../facts/registry/index.ts';
import { measuresFor } from './pack-words.ts';
import type { Quantity } from './quantities.ts';
import type { ReaderContext } from './reader-context.ts';

/** The fact of the open question that a quantity in this unit, or in none, answers; null where none or more than one. */
export function askedFact(unit: Quantity['unit'], { asked, bareFact, pack }: ReaderContext): FactId | null {
  const measures = measuresFor(pack);
  if (unit === null) return bareFact !== null && measures[bareFact]?.asked ? bareFact : null;
  const fitting = asked.filter((fact) => Object.hasOwn(measures[fact]?.units ?? {}, unit));
  const counted = fitting.length > 1 ? fitting.filter((fact) => measures[fact]?.asked) : fitting;
  return counted.length === 1 ? counted[0]! : null;
}
