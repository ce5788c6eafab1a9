/** A place in a figure, in units of its view box. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Edges of the part of a figure in which its values are drawn, in units of its view box. */
export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Size of the view box of a figure: as wide as a phone shows it, so that its words keep their size there. */
export const figureSize = { width: 340, height: 190 } as const;

/** The part of a figure beside its axes. */
export const plot: Plot = { left: 34, right: 334, top: 14, bottom: 164 };

/** Maps a value from one range onto another in a straight line; a range without extent maps onto the middle. */
export function scale(from: readonly [number, number], to: readonly [number, number]): (value: number) => number {
  const extent = from[1] - from[0];
  if (extent === 0) return () => (to[0] + to[1]) / 2;
  return (value) => tidy(to[0] + ((value - from[0]) / extent) * (to[1] - to[0]));
}

/** Round values from at most `low` to at least `high`, 3 to 6 of them, by steps of 1, 2 or 5 times a power of ten. */
export function roundSteps(low: number, high: number): number[] {
  const extent = Math.max(high - low, 1);
  const power = 10 ** Math.floor(Math.log10(extent / 3));
  const step = power * ([1, 2, 5, 10].find((one) => extent / (power * one) <= 4) ?? 10);
  const first = Math.floor(low / step);
  const last = Math.max(Math.ceil(high / step), first + 2);
  return Array.from({ length: last - first + 1 }, (_, index) => tidy((first + index) * step));
}

/** A line through places, as the `d` of an SVG path; empty without any. */
export function linePath(places: readonly Place[]): string {
  return places.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}

/** The area between two lines over the same places, as the `d` of an SVG path; empty without any. */
export function bandPath(upper: readonly Place[], lower: readonly Place[]): string {
  return upper.length === 0 ? '' : `${linePath([...upper, ...lower.toReversed()])}Z`;
}

/** Those of some things along a way that keep at least `apart` units from the one before, the first always. */
export function keptApart<T extends { readonly x: number }>(things: readonly T[], apart: number): T[] {
  const kept: T[] = [];
  for (const thing of things) {
    const last = kept.at(-1);
    if (last === undefined || thing.x - last.x >= apart) kept.push(thing);
  }
  return kept;
}

function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}
