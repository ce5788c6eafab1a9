import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { errorsOf } from '../soil-records/errors.ts';
import { replayOneReading, replayWithHistory } from '../soil-records/replay.ts';
import { isFitted } from '../soil-records/split.ts';
import type { RecordDay, SoilRecord } from '../soil-records/types.ts';
import { pastDaysFitted } from './cost.ts';

/** Days between the single readings tried. */
const everyDays = 3;

/** Constants with the reaches that hold 80 % and 95 % of the errors fitted on, each record counting alike; never below those of a normal error. */
export function withReach(records: readonly SoilRecord[], of: SoilModelConstants): SoilModelConstants {
  const sizes = records.flatMap((record) => {
    const fitted = isFitted(record);
    const some = (day: RecordDay, index: number) => index % everyDays === 0 && fitted(day);
    const one = replayOneReading(record, { of, choose: some }, pastDaysFitted);
    const errors = errorsOf(record, [...replayWithHistory(record, { of, choose: fitted }), ...one]);
    return errors.map(({ errorC, sdC }) => ({ size: Math.abs(errorC) / sdC, weight: 1 / errors.length }));
  });
  const sorted = sizes.toSorted((a, b) => a.size - b.size);
  const holding = (share: number) => {
    let sum = 0;
    return sorted.find(({ weight }) => {
      sum += weight;
      return sum >= share * records.length;
    })?.size;
  };
  return { ...of, reach80: Math.max(1.2816, holding(0.8) ?? 0), reach95: Math.max(1.96, holding(0.95) ?? 0) };
}
