import { type StationRecord, stationRecords } from '../../src/adapters/weather-records/stations.ts';
import { readSoilRecords } from '../../src/tools/soil-records/index.ts';
import { inventedDays } from '../generators/weather-days.ts';

/** Eight stations of twenty seasons of invented weather, the same in every run. */
export function inventedStations(): StationRecord[] {
  return Array.from({ length: 8 }, (_, index) => ({
    name: `invented ${index + 1}`,
    place: { latitude: 50 + index, longitude: -1, elevationM: 40 * index },
    days: inventedDays(index + 1, 2005, 20),
  }));
}

/** Every station of a folder with air and rain; soil at 30 cm where a record of it is there. */
export function recordedStations(folder: string): StationRecord[] {
  const soils = readSoilRecords(folder).filter(({ depthM }) => depthM === 0.3);
  return stationRecords(
    folder,
    (station) =>
      new Map(soils.filter((one) => one.station === station).flatMap(({ days }) => days.map((d) => [d.day, d.soilC]))),
  );
}
