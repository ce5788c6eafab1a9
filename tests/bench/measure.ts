/** Times of one thing measured, milliseconds. */
export interface Timing {
  readonly name: string;
  readonly median: number;
  readonly p99: number;
  readonly runs: number;
}

/** The share of `sorted` values at or below it, by nearest rank. */
export function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** Median and 99th percentile of times in milliseconds. */
export function timing(name: string, times: readonly number[]): Timing {
  const sorted = [...times].sort((a, b) => a - b);
  return { name, median: percentile(sorted, 0.5), p99: percentile(sorted, 0.99), runs: sorted.length };
}

/**
 * Runs several things in turn within one loop, so that what else the machine does falls on all of them alike.
 * `batch` runs are timed together and divided, for things of a few microseconds.
 */
export async function measureTogether(
  things: Readonly<Record<string, () => unknown>>,
  options: { readonly rounds: number; readonly warmUp: number; readonly batch?: number },
): Promise<Timing[]> {
  const batch = options.batch ?? 1;
  const names = Object.keys(things);
  const times = new Map<string, number[]>(names.map((name) => [name, []]));
  for (let round = -options.warmUp; round < options.rounds; round++) {
    for (const name of names) {
      const started = performance.now();
      for (let run = 0; run < batch; run++) await things[name]!();
      if (round >= 0) times.get(name)!.push((performance.now() - started) / batch);
    }
  }
  return names.map((name) => timing(name, times.get(name)!));
}

/** A line such as `verdict with trace       median 0.812 ms   p99 1.404 ms`. */
export function timingLine({ name, median, p99, runs }: Timing): string {
  return `  ${name.padEnd(44)} median ${median.toFixed(4).padStart(9)} ms   p99 ${p99.toFixed(4).padStart(9)} ms   (${runs} runs)`;
}
