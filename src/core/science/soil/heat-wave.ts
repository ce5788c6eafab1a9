import { aboveZero, inRange } from '../../units/in-range.ts';

/** How heat moves down a soil under a wave of one period. */
export interface HeatWave {
  /** Thermal diffusivity, 1e-8 to 1e-5 m2/s; a moist loam has about 5e-7. */
  readonly diffusivityM2PerS: number;
  /** A day is 86,400 s, a year of 365 days 31,536,000 s. */
  readonly periodS: number;
}

/** Depth in metres at which a wave keeps 1/e of its height: `sqrt(2 D / w)`, w = 2 pi / period (Hillel 1982; Campbell & Norman 1998, ch. 2). */
export function dampingDepth({ diffusivityM2PerS, periodS }: HeatWave): number {
  inRange('a thermal diffusivity', diffusivityM2PerS, 1e-8, 1e-5, 'm2/s');
  return Math.sqrt((diffusivityM2PerS * aboveZero('a period', periodS, 's')) / Math.PI);
}

/** Share of the surface wave left at a depth of 0 to 20 m: `exp(-z / d)` (same sources). */
export function waveShare(wave: HeatWave, depthM: number): number {
  return Math.exp(-depth(depthM) / dampingDepth(wave));
}

/** Depth in metres at which a share (above 0, at most 1) of the surface wave is left: `-d ln share` (same sources). */
export function depthOfShare(wave: HeatWave, share: number): number {
  return -dampingDepth(wave) * Math.log(aboveZero('a share', inRange('a share', share, 0, 1, ''), '')) + 0;
}

/** Seconds by which the wave at a depth of 0 to 20 m lags behind the surface: `z / (d w)` (same sources). */
export function waveLag(wave: HeatWave, depthM: number): number {
  return (depth(depthM) / dampingDepth(wave)) * (wave.periodS / (2 * Math.PI));
}

/** A surface wave: its mean and half its span in C, and when the surface is coldest, in seconds. */
export interface SurfaceWave extends HeatWave {
  readonly meanC: number;
  readonly amplitudeC: number;
  readonly coldestAtS: number;
}

/** Temperature in C at a depth (0 to 20 m) and time (s): `mean - A exp(-z/d) cos(w (t - coldest) - z/d)` (same sources). */
export function waveTemperature(wave: SurfaceWave, depthM: number, timeS: number): number {
  inRange('a mean temperature', wave.meanC, -40, 60, 'C');
  inRange('an amplitude', wave.amplitudeC, 0, 60, 'C');
  inRange('a time', timeS - wave.coldestAtS, -Number.MAX_VALUE, Number.MAX_VALUE, 's');
  const angle = (2 * Math.PI * (timeS - wave.coldestAtS - waveLag(wave, depthM))) / wave.periodS;
  return wave.meanC - wave.amplitudeC * waveShare(wave, depthM) * Math.cos(angle);
}

function depth(metres: number): number {
  return inRange('a depth', metres, 0, 20, 'm');
}
