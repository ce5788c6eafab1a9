import { inRange } from '../../units/in-range.ts';
import { shareLeft } from './leaching.ts';

/** Litres of drain and ditch water that take up the loss of one treated hectare (UK tier-1 drainflow). */
const litresPerHectare = 130_000;

/** Percent of a dose that drains lose, by Koc below so many L/kg (UK tier-1 drainflow). */
const lostByKoc: readonly (readonly [number, number])[] = [
  [75, 1.9],
  [500, 0.7],
  [1000, 0.5],
  [4000, 0.02],
  [Number.POSITIVE_INFINITY, 0.008],
];

/** A treatment of a drained field. */
export interface DrainedTreatment {
  /** Active substance, 0 to 100,000 g/ha. */
  readonly doseGPerHa: number;
  /** Sorption to organic carbon, L/kg. */
  readonly kocLPerKg: number;
  /** Share of the dose held by the crop, 0 to 1; none where absent. */
  readonly interception?: number;
  /** Decay before drainage begins on 1 October; none where absent, as for a treatment from 1 October to 30 April. */
  readonly decay?: { readonly days: number; readonly halfLifeDays: number };
}

/** Percent of a dose lost to drains for a Koc of 0 L/kg or more (UK regulator's tier-1 drainflow, data requirements handbook). */
export function drainflowLossPercent(kocLPerKg: number): number {
  inRange('a Koc', kocLPerKg, 0, Number.MAX_VALUE, 'L/kg');
  return lostByKoc.find(([below]) => kocLPerKg < below)![1];
}

/**
 * Concentration in the ditch beside a drained field in ug/L: dose less interception and decay, times the share lost, in 130,000 L
 * per hectare (UK regulator's tier-1 drainflow, data requirements handbook). An illustration of a first, cautious tier; a low
 * figure never clears a field, since cracks, mole drains and the first heavy rain can carry more.
 */
export function drainflowConcentration(treatment: DrainedTreatment): number {
  const dose = inRange('a dose', treatment.doseGPerHa, 0, 100_000, 'g/ha');
  const reached = dose * (1 - inRange('an interception', treatment.interception ?? 0, 0, 1, ''));
  const left = treatment.decay ? shareLeft(treatment.decay.days, treatment.decay.halfLifeDays) : 1;
  return (reached * left * (drainflowLossPercent(treatment.kocLPerKg) / 100) * 1e6) / litresPerHectare;
}
