import { soilTemperaturePath } from './path.ts';
import type { SoilFallThrough, SoilTemperatureInput } from './types.ts';

/** Days by which the soil at 30 cm has fallen below `limitC` for good, within the days given, with their chances. */
export function fallThroughOf(input: SoilTemperatureInput, limitC: number): SoilFallThrough {
  const path = soilTemperaturePath(input, limitC);
  const reached = (chance: number) => path.find(({ chanceBelow }) => chanceBelow >= chance)?.iso ?? null;
  return { limitC, day10: reached(0.1), day50: reached(0.5), day90: reached(0.9), chanceOfWarmingBack: 0.5 };
}
