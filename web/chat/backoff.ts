/** Shortest and longest wait before another attempt to connect, ms. */
export const backoffRangeMs = [500, 20_000] as const;

/**
 * Wait before attempt `attempt` (from 0), ms: doubles to the longest, of which a random half is left away so that many pages do
 * not come back at once. `random` lies in 0..1.
 */
export function backoffMs(attempt: number, random: number): number {
  const [shortest, longest] = backoffRangeMs;
  const whole = Math.min(longest, shortest * 2 ** Math.min(attempt, 20));
  return Math.round(whole * (0.5 + random / 2));
}
