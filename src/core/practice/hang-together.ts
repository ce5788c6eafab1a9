import type { FactId } from '../facts/registry/index.ts';

/** Facts of which the second is never below the first, since it is the greatest of the same air or the sum of the same rain. */
const neverBelow: readonly (readonly [least: FactId, most: FactId])[] = [
  ['wind.boomKmh', 'wind.gustKmh'],
  ['rain.next48hMaxMmPerH', 'rain.next48hMm'],
];

/**
 * Facts that can be true together: where the least of two was put above the most, the most is raised to it; null where both were
 * put where they are. Other facts are left as they are.
 */
export function hangTogether(
  facts: Readonly<Record<string, unknown>>,
  put: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> | null {
  const mended: Record<string, unknown> = { ...facts };
  for (const [least, most] of neverBelow) {
    const [low, high] = [mended[least], mended[most]];
    if (typeof low !== 'number' || typeof high !== 'number' || low <= high) continue;
    if (least in put && most in put) return null;
    if (most in put) mended[least] = high;
    else mended[most] = low;
  }
  return mended;
}
