import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { errorsOf, type LeadError } from '../soil-records/errors.ts';
import { leads, replayOneReading, replayWithHistory } from '../soil-records/replay.ts';
import { isFitted } from '../soil-records/split.ts';
import type { RecordDay, SoilRecord } from '../soil-records/types.ts';

/** Days of air before a single reading, in the fit. */
export const pastDaysFitted = 21;
/** Single readings are tried on every so many days. */
const everyDays = 5;
const weightOfOneReading = 0.5;

/** Mean loss of forecasts over records and lead times, with all readings and with one: minus the log of the normal likelihood. */
export function costOf(records: readonly SoilRecord[], of: SoilModelConstants): number {
  if (of.slowStep >= of.quickStep || of.quickShare < 0.05 || of.slowShare < 0) return 1e6;
  const losses = records.map((record) => {
    const fitted = isFitted(record);
    const some = (day: RecordDay, index: number) => index % everyDays === 0 && fitted(day);
    const whole = errorsOf(record, replayWithHistory(record, { of, choose: fitted }));
    const one = errorsOf(record, replayOneReading(record, { of, choose: some }, pastDaysFitted));
    return lossOf(whole) + weightOfOneReading * lossOf(one);
  });
  const cost = losses.reduce((sum, loss) => sum + loss, 0) / losses.length;
  return Number.isFinite(cost) ? cost : 1e6;
}

function lossOf(errors: readonly LeadError[]): number {
  return leads.reduce<number>((sum, lead) => {
    const own = errors.filter((one) => one.lead === lead);
    const loss = own.reduce((total, { errorC, sdC }) => total + Math.log(sdC) + (errorC / sdC) ** 2 / 2, 0);
    return sum + loss / own.length / leads.length;
  }, 0);
}
