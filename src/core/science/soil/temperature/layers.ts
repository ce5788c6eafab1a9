import type { DayEstimate } from './path.ts';
import type { SoilTemperatureInput } from './types.ts';

/** Weight of the forecast's own soil layers in the middle of the path. Our choice: no record with both to fit it on. */
const layerWeight = 0.25;

/**
 * Moves each day's middle a little towards the course of the forecast's own soil temperature, started from the estimate of the
 * first day, so that its offset does not count. Where the two part, the band widens by the distance; it never narrows.
 */
export function withLayers(
  { days }: SoilTemperatureInput,
  today: number,
  estimates: readonly DayEstimate[],
): readonly DayEstimate[] {
  const layerToday = days[today]!.layerC ?? null;
  if (layerToday === null) return estimates;
  const first = estimates[0]!;
  return estimates.map((estimate, ahead) => {
    const layer = days[today + ahead]!.layerC ?? null;
    if (layer === null) return estimate;
    const apart = layerWeight * (first.valueC + layer - layerToday - estimate.valueC);
    return { ...estimate, valueC: estimate.valueC + apart, sdC: Math.hypot(estimate.sdC, apart) };
  });
}
