import { compiledFor } from '../dialogue/standing.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { type FieldCard, fieldCard } from './field-card.ts';
import { makeTour, tourMoment } from './make-tour.ts';
import type { Tour } from './types.ts';

/** The tour of a pack with the rules that it tells of. */
export interface OpenedTour {
  readonly pack: Pack;
  /** The rules with the limits of now. */
  readonly compiled: CompiledRules;
  readonly tour: Tour;
}

/** The tour of a pack: limits as they are now, told on the pack's plain day. Throws PARAMETER_MISSING. */
export function openTour(pack: Pack, now: EpochSeconds): OpenedTour {
  const compiled = compiledFor(pack, now);
  return { pack, compiled, tour: makeTour({ pack, compiled, at: tourMoment(pack, now) }) };
}

/** The card for the cab with the limits of now. */
export function openCard({ pack, compiled, tour }: OpenedTour): FieldCard {
  return fieldCard(pack, compiled, tour);
}
