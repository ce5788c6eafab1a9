import { reasonOf } from '../../adapters/system-reason.ts';
import { stationRecords } from '../../adapters/weather-records/stations.ts';
import {
  compareSeasons,
  fieldOfFacts,
  type HeldField,
  plainField,
  type SeasonCompared,
  type Sides,
  type StationRecord,
  seasonRules,
} from '../../core/compare/index.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { noonOf } from '../../core/facts/local-day.ts';
import { inventedStations } from '../../demo/invented-seasons.ts';
import type { Progress } from './progress.ts';

/** Seasons at all stations, what weather they had, and on which field. */
export interface SeasonsRun {
  readonly weather: 'recorded' | 'invented';
  readonly stations: readonly string[];
  readonly field: HeldField & { readonly from: 'file' | 'plain' };
  /** First day of the year that counts, MM-DD. */
  readonly opens: string;
  readonly seasons: readonly SeasonCompared[];
}

/** Most seasons of a station, the last ones. */
const mostSeasons = 20;
/** Days before the first of them in which soil and water settle. */
const settlingDays = 150;
/** Days between readings of the soil at 30 cm. */
const readingEveryDays = 7;

/** Both rule sets through the seasons of recorded or invented weather, station by station. */
export function runSeasons(
  sides: Sides,
  { day, folder, facts, what }: { day: string; folder: string | null; facts: unknown; what: string },
  progress: Progress,
): SeasonsRun {
  const { a } = sides;
  const held = facts === null ? plainField(a) : fieldOfFacts(facts, noonOf(day, a.pack.zone), a.pack);
  const stations = folder === null ? inventedStations() : recordedStations(folder);
  const rules = seasonRules(sides, day);
  const seasons = stations.flatMap((station, at) => {
    const found: SeasonCompared[] = [];
    const record = { ...station, days: station.days.slice(-(mostSeasons * 366 + settlingDays)) };
    for (const season of compareSeasons({ ...rules, station: record, given: held.resolved, readingEveryDays })) {
      found.push(season);
      progress(
        `${what}, ${station.name}`,
        at * mostSeasons + Math.min(found.length, mostSeasons),
        stations.length * mostSeasons,
      );
    }
    return found.slice(-mostSeasons);
  });
  return {
    weather: folder === null ? 'invented' : 'recorded',
    stations: stations.map(({ name }) => name),
    field: { ...held, from: facts === null ? 'plain' : 'file' },
    opens: rules.season.opens,
    seasons,
  };
}

function recordedStations(folder: string): readonly StationRecord[] {
  const stations = read(folder).filter(({ days }) => days.some(({ rainMm }) => rainMm !== null));
  if (stations.length > 0) return stations;
  throw codedError('OPTION_VALUE', {
    expected: '--data with a folder of daily tables of weather stations',
    came: folder,
  });
}

function read(folder: string): readonly StationRecord[] {
  try {
    return stationRecords(folder);
  } catch (error) {
    throw codedError('FILE_UNREADABLE', { file: folder, expected: 'a file that can be read', came: reasonOf(error) });
  }
}
