import type { FactId } from '../../facts/registry/index.ts';
import type { FactReading } from './meanings.ts';

const pair =
  /^\s*(?:lat(?:itude)?\s*[:=]?\s*)?([+-]?\d{1,2}\.\d{1,8})\s*°?\s*([ns]|north|south)?\s*[,;\s]\s*(?:lon(?:g|gitude)?\s*[:=]?\s*)?([+-]?\d{1,3}\.\d{1,8})\s*°?\s*([ew]|east|west)?\s*$/;

/**
 * Latitude and longitude in decimal degrees, written as one pair and nothing else ("52.1, -1.3", "52.1 N 1.3 W"); none where
 * it is no such pair or neither asked for nor marked by letters.
 */
export function readPlace(folded: string, isAsked: boolean): readonly FactReading[] {
  const [, lat, northSouth, lon, eastWest] = pair.exec(folded.slice(0, 80)) ?? [];
  if (lat === undefined || lon === undefined || folded.length > 80) return [];
  const isMarked = (northSouth !== undefined && eastWest !== undefined) || folded.includes('lat');
  if (!isAsked && !isMarked) return [];
  const latitude = Number(lat) * (northSouth?.startsWith('s') ? -1 : 1);
  const longitude = Number(lon) * (eastWest?.startsWith('w') ? -1 : 1);
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return [];
  const of = (fact: FactId, value: number): FactReading => ({ fact, reading: { type: 'number', value } });
  return [of('field.latitude', latitude), of('field.longitude', longitude)];
}
