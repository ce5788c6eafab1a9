/** Chance of a standard normal number below `z`, 0 to 1 (Abramowitz & Stegun 1964, eq. 26.2.17, error below 7.5e-8). */
export function chanceUnder(z: number): number {
  const size = Math.abs(z);
  const t = 1 / (1 + 0.231_641_9 * size);
  const series =
    t * (0.319_381_53 + t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  const above = (Math.exp((-size * size) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z >= 0 ? 1 - above : above;
}
