/** Seconds since 1970-01-01T00:00Z. */
export type EpochSeconds = number & { readonly __unit: 'epoch seconds' };

/** Wind speed in kilometres per hour, as forecasts, limits and growers use it. */
export type KilometresPerHour = number & { readonly __unit: 'km/h' };

/** Wind speed in metres per second, as the equations of FAO-56 use it. */
export type MetresPerSecond = number & { readonly __unit: 'm/s' };

/** Marks a number as epoch seconds UTC. */
export function epochSeconds(value: number): EpochSeconds {
  return value as EpochSeconds;
}

/** Marks a number as kilometres per hour. */
export function kilometresPerHour(value: number): KilometresPerHour {
  return value as KilometresPerHour;
}

/** Marks a number as metres per second. */
export function metresPerSecond(value: number): MetresPerSecond {
  return value as MetresPerSecond;
}
