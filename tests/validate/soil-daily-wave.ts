import { waveLag, waveShare } from '../../src/core/science/soil/heat-wave.ts';

/** Diffusivity that the model takes for soil, m2/s, and the wave of a day. */
const daily = { diffusivityM2PerS: 5e-7, periodS: 86_400 };
const topCm = 5;
/** Least height of a wave that is told from the sensor's steps of 0.1 C, C. */
const leastHeightC = 0.1;

/** One moment: hour of the day, and temperatures by depth in cm, C. */
export interface Moment {
  readonly hour: number;
  readonly byDepth: Readonly<Record<number, number | null>>;
}

/** Height and lag of the mean daily wave below 5 cm, measured beside those of the heat equation, in words. */
export function dailyWaveLines(name: string, moments: readonly Moment[], depths: readonly number[]): string[] {
  const top = waveOf(moments, topCm);
  if (top === null) return [];
  return depths.flatMap((depth) => {
    const wave = depth === topCm ? null : waveOf(moments, depth);
    if (wave === null || wave.heightC < leastHeightC) return [];
    const lag = (((wave.peakHour - top.peakHour) % 24) + 24) % 24;
    const [below, above] = [depth / 100, topCm / 100];
    const share = waveShare(daily, below) / waveShare(daily, above);
    const expected = (waveLag(daily, below) - waveLag(daily, above)) / 3600;
    return [
      `${name}: daily wave at ${depth} cm keeps ${(wave.heightC / top.heightC).toFixed(2)} of that at ${topCm} cm and lags ${lag.toFixed(1)} h; by the heat equation ${share.toFixed(2)} and ${expected.toFixed(1)} h`,
    ];
  });
}

/** First harmonic of the mean day at a depth; null where not every hour has readings. */
function waveOf(
  moments: readonly Moment[],
  depth: number,
): { readonly heightC: number; readonly peakHour: number } | null {
  const means = Array.from({ length: 24 }, (_, hour) => {
    const own = moments.flatMap((one) => (one.hour === hour ? (one.byDepth[depth] ?? []) : []));
    return own.reduce((sum, value) => sum + value, 0) / own.length;
  });
  if (!means.every(Number.isFinite)) return null;
  const part = (of: (angle: number) => number) =>
    means.reduce((sum, mean, hour) => sum + mean * of((2 * Math.PI * hour) / 24), 0) / 12;
  const [cosine, sine] = [part(Math.cos), part(Math.sin)];
  return { heightC: Math.hypot(cosine, sine), peakHour: (Math.atan2(sine, cosine) * 24) / (2 * Math.PI) };
}
