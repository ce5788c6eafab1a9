import { type StationRecord, stationRecords } from '../../src/adapters/weather-records/stations.ts';
import { readSoilRecords } from '../../src/tools/soil-records/index.ts';

/** Every station of a folder with air and rain; soil at 30 cm where a record of it is there. */
export function recordedStations(folder: string): StationRecord[] {
  const soils = readSoilRecords(folder).filter(({ depthM }) => depthM === 0.3);
  return stationRecords(
    folder,
    (station) =>
      new Map(soils.filter((one) => one.station === station).flatMap(({ days }) => days.map((d) => [d.day, d.soilC]))),
  );
}
