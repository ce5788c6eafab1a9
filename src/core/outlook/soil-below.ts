import type { FactId } from '../facts/registry/index.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Outlook, SoilTemperaturePoint, Window } from './types.ts';

const temperature: FactId = 'soil.temperature30cmC';

/** Windows that rest on the soil's temperature with the chance that it is below the limit then, from its modelled line. */
export function withSoilBelow(
  windows: readonly Window[],
  { soilTemperature, fallThrough }: Pick<Outlook, 'soilTemperature' | 'fallThrough'>,
): Window[] {
  return windows.map((one) => {
    const isOpen = [...one.unknown, ...one.lookAgain].includes(temperature);
    const [first, last] = [one.from, one.until].map((at) => nearest(soilTemperature, at)?.chanceBelow);
    if (!isOpen || fallThrough === null || first === undefined || last === undefined) return one;
    return { ...one, soilBelow: { limitC: fallThrough.limitC, first, last } };
  });
}

function nearest(points: readonly SoilTemperaturePoint[], at: EpochSeconds): SoilTemperaturePoint | undefined {
  return points.toSorted((a, b) => Math.abs(a.at - at) - Math.abs(b.at - at))[0];
}
