import type { FactId } from '../../facts/registry/index.ts';
import type { Pack } from '../../rules/pack-types.ts';
import type { SaidUnit, Subject } from './lexicon-types.ts';

/** What a clause is read against. */
export interface ReaderContext {
  readonly pack: Pack;
  /** Facts that words without a subject may speak of: those of the open question, or the one being corrected. */
  readonly asked: readonly FactId[];
  /** The one fact that a bare number answers, or null. */
  readonly bareFact: FactId | null;
  /** What the clause before spoke of without saying anything of it. */
  readonly carried: Subject | null;
  /** The fact that a number can only be of, where it stands in the place of another. */
  readonly only?: FactId;
  /** The plant that the clause before told of. */
  readonly carriedPlant: Subject | null;
  /** Depth that the clause before named without a reading, cm; null where none. */
  readonly carriedDepthCm: number | null;
  readonly isDoubtful: boolean;
  /** True where "not" before a list still holds ("no cracks, puddles or frost"). */
  readonly isNegatedList: boolean;
  /** Unit of the speed said last in the text, or null: later speeds without a unit are in it. */
  readonly speedUnit: SaidUnit | null;
  /** True where the text names the hour at which a temperature was read. */
  readonly hasHour: boolean;
}
