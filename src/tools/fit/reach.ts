import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { normalReach, studentReach } from '../../core/science/soil/temperature/reach.ts';
import { errorsOf } from '../soil-records/errors.ts';
import { replayOneReading, replayWithHistory } from '../soil-records/replay.ts';
import { isFitted } from '../soil-records/split.ts';
import type { RecordDay, SoilRecord } from '../soil-records/types.ts';
import { pastDaysFitted } from './cost.ts';

/** Days between the single readings tried. */
const everyDays = 3;

/** Constants with the reaches that hold 80 % and 95 % of the errors fitted on, each record counting alike; never below those of Student's t. */
export function withReach(records: readonly SoilRecord[], of: SoilModelConstants): SoilModelConstants {
  const sizes = records.flatMap((record) => {
    const fitted = isFitted(record);
    const some = (day: RecordDay, index: number) => index % everyDays === 0 && fitted(day);
    const one = replayOneReading(record, { of, choose: some }, pastDaysFitted);
    const errors = errorsOf(record, [...replayWithHistory(record, { of, choose: fitted }), ...one]);
    return errors.map(({ errorC, sdC, freedom }) => ({
      size: Math.abs(errorC) / sdC,
      freedom,
      weight: 1 / errors.length,
    }));
  });
  const holding = (share: number, normal: number) => {
    const sorted = sizes
      .map(({ size, freedom, weight }) => ({ size: (size * normal) / studentReach(normal, freedom), weight }))
      .toSorted((a, b) => a.size - b.size);
    let sum = 0;
    const found = sorted.find(({ weight }) => {
      sum += weight;
      return sum >= share * records.length;
    });
    return Math.max(normal, found?.size ?? 0);
  };
  return { ...of, reach80: holding(0.8, normalReach.at80), reach95: holding(0.95, normalReach.at95) };
}
