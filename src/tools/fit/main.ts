import { existsSync } from 'node:fs';
import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { isoOfDay } from '../soil-records/days.ts';
import { readSoilRecords } from '../soil-records/index.ts';
import { fittedRecords, isFitted, isScored, isSummer } from '../soil-records/split.ts';
import type { SoilRecord } from '../soil-records/types.ts';
import { costOf, summerCostOf } from './cost.ts';
import { constantsAt, pointOf } from './parameters.ts';
import { withReach } from './reach.ts';
import { searchLeast } from './search.ts';
import { starts } from './start.ts';
import { type FittedDepth, writeConstants } from './write-constants.ts';

/** Steps of the search from wide to fine. */
const steps = [0.2, 0.1];

/**
 * `npm run fit -- --data FOLDER [--rounds N]`: fits the constants of the soil temperature on some stations and years of a folder
 * of records, prints the split and the loss, and writes them into the core with their sources and the day. Gives 0, or 2 for
 * bad options.
 */
export function main(options: readonly string[]): number {
  const given = (name: string) => options[options.indexOf(name) + 1];
  const folder = options.includes('--data') ? given('--data') : undefined;
  const rounds = options.includes('--rounds') ? Number(given('--rounds')) : 140;
  if (folder === undefined || !existsSync(folder) || !(rounds >= 0)) {
    process.stderr.write('Usage: npm run fit -- --data FOLDER [--rounds N]\n');
    return 2;
  }
  const records = readSoilRecords(folder);
  const empty = starts.find(({ depthM }) => fittedRecords(records, depthM).length === 0);
  if (empty !== undefined) {
    process.stderr.write(`No record at ${empty.depthM} m in ${folder} to fit to.\n`);
    return 2;
  }
  const fitted = starts.map((start): FittedDepth => {
    const own = fittedRecords(records, start.depthM);
    for (const record of records.filter((one) => one.depthM === start.depthM))
      say(splitOf(record, own.includes(record)));
    let constants = start;
    for (const step of steps) {
      const rest = constants;
      const least = searchLeast((point) => costOf(own, constantsAt(point, rest)), pointOf(constants), step, rounds);
      say(`  loss ${least.cost.toFixed(4)} after ${rounds} rounds of step ${step}`);
      constants = withSummerNoise(own, constantsAt(least.point, constants));
    }
    return { constants: withReach(own, constants), records: own };
  });
  say(`written to ${writeConstants(fitted, new Date().toISOString().slice(0, 10))}`);
  return 0;
}

function withSummerNoise(records: readonly SoilRecord[], of: SoilModelConstants): SoilModelConstants {
  const seen = records.filter((record) => record.days.some((day) => day.soilC !== null && isSummer(day)));
  if (seen.length === 0) return of;
  const at = ([log]: readonly number[]) => ({ ...of, summerNoise: Math.exp(log!) });
  return at(searchLeast((point) => summerCostOf(seen, at(point)), [Math.log(of.summerNoise)], 0.5, 20).point);
}

function splitOf(record: SoilRecord, isUsed: boolean): string {
  const count = (choose: (day: SoilRecord['days'][number]) => boolean) => {
    const days = record.days.filter((day) => day.soilC !== null && choose(day));
    const years = [...new Set(days.map(({ day }) => isoOfDay(day).slice(0, 4)))];
    return days.length === 0 ? 'none' : `${days.length} days of ${years.join(' ')}`;
  };
  const fittedOn = isUsed ? count(isFitted(record)) : 'none';
  return `${record.station}, ${record.depthM} m: fitted on ${fittedOn}; scored on ${count(isScored(record))}`;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
