/** A number with the band in which it surely lies. */
export interface Banded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A value with a band of `half` on either side, kept within what can be. */
export function bandAround(value: number, half: number, range: readonly [number, number]): Banded {
  const low = Math.max(range[0], withoutBinaryNoise(value - half));
  const high = Math.min(range[1], withoutBinaryNoise(value + half));
  return { value, low: Math.min(low, value), high: Math.max(high, value) };
}

/** To 0.000001, so that rounding outward is not thrown a whole step further by binary arithmetic. */
export function withoutBinaryNoise(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
