/** Seconds since 1970-01-01T00:00Z. */
export type EpochSeconds = number & { readonly __unit: 'epoch seconds' };

/** Marks a number as epoch seconds UTC. */
export function epochSeconds(value: number): EpochSeconds {
  return value as EpochSeconds;
}
