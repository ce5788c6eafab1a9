import { aboveZero, inRange } from '../../units/in-range.ts';

/**
 * Control in percent from what lives in the untreated check (above 0) and in the treated plot (0 or more), as counts on equal areas
 * or percent: `100 (X - Y) / X` (Abbott 1925, J. Econ. Entomol. 18:265-267). Below 0 where more lives in the treated plot.
 */
export function abbott(aliveUntreated: number, aliveTreated: number): number {
  aboveZero('a count in the untreated check', aliveUntreated, '');
  return (100 * (aliveUntreated - count(aliveTreated))) / aliveUntreated;
}

/** Counts before and after in the treated plot and the untreated check. */
export interface BeforeAndAfter {
  readonly treatedBefore: number;
  readonly treatedAfter: number;
  readonly untreatedBefore: number;
  readonly untreatedAfter: number;
}

/**
 * Control in percent where plots differed before treatment: `100 (1 - Ta Cb / (Tb Ca))` (Henderson & Tilton 1955, J. Econ. Entomol.
 * 48:157-161). Treated before and untreated after are above 0. Below 0 where the treated plot fared worse.
 */
export function hendersonTilton(counts: BeforeAndAfter): number {
  const after = aboveZero('a count in the untreated check afterwards', counts.untreatedAfter, '');
  const before = aboveZero('a count in the treated plot before', counts.treatedBefore, '');
  return 100 * (1 - (count(counts.treatedAfter) * count(counts.untreatedBefore)) / (before * after));
}

function count(plants: number): number {
  return inRange('a count', plants, 0, Number.MAX_SAFE_INTEGER, '');
}
