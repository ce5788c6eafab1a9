import type { Amount, Cue } from './scan.ts';

/**
 * The amounts of a clause in which the last is how far the one before may be out, as one: "9, half a degree either way" without its
 * comma. Null where that is not said.
 */
export function withSpread(amounts: readonly Amount[], cues: readonly Cue[]): readonly Amount[] | null {
  const off = amounts.at(-1);
  const [first, ...more] = amounts.slice(0, -1).filter(({ isAt, quantity }) => !isAt && quantity.unit !== 'cm');
  const cue = cues.find(({ entry }) => entry.flags.includes('spread'));
  if (first === undefined || off === undefined || more.length > 0 || cue?.from !== off.at + 1) return null;
  const { numeral, unit } = first.quantity;
  const { numeral: by, unit: unitOff } = off.quantity;
  const isAlike = unitOff === null || unitOff === (unit ?? unitOff) || (unit === 'C' && unitOff === 'deg');
  if (!isAlike || first.isAt || off.isAt || numeral.low !== undefined || by.low !== undefined) return null;
  const around = (more: number) => Number((numeral.value + more).toPrecision(12));
  const spread = { ...numeral, low: around(-Math.abs(by.value)), high: around(Math.abs(by.value)) };
  const whole = { ...first, quantity: { ...first.quantity, numeral: spread, unit: unit ?? unitOff } };
  return amounts.slice(0, -1).map((one) => (one === first ? whole : one));
}
