import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { errorsOf, type LeadError } from '../soil-records/errors.ts';
import { leads, replayOneReading, replayWithHistory } from '../soil-records/replay.ts';
import { isFitted, isSummer, yearOf } from '../soil-records/split.ts';
import type { RecordDay, SoilRecord } from '../soil-records/types.ts';

/** Days of air before a single reading, in the fit. */
export const pastDaysFitted = 21;
/** Single readings are tried on every so many days. */
const everyDays = 5;
const weightOfOneReading = 1;

/** Mean loss of forecasts over records and lead times, with all readings and with one: minus the log of the likelihood by Student's t. */
export function costOf(records: readonly SoilRecord[], of: SoilModelConstants): number {
  if (of.slowStep >= of.quickStep || of.quickShare < 0.05 || of.slowShare < 0) return 1e6;
  let [sum, total] = [0, 0];
  for (const record of records) {
    const fitted = isFitted(record);
    const some = (day: RecordDay, index: number) => index % everyDays === 0 && fitted(day);
    const whole = errorsOf(record, replayWithHistory(record, { of, choose: fitted }));
    const one = errorsOf(record, replayOneReading(record, { of, choose: some }, pastDaysFitted));
    const weight = weightOf(record);
    sum += weight * (lossOf(whole) + weightOfOneReading * lossOf(one));
    total += weight;
  }
  const cost = sum / total;
  return Number.isFinite(cost) ? cost : 1e6;
}

const weights = new WeakMap<SoilRecord, number>();

/** A record counts the more, the more years it is fitted on, but never as much as two of one year: years of one site are alike. */
function weightOf(record: SoilRecord): number {
  const known = weights.get(record);
  if (known !== undefined) return known;
  const fitted = isFitted(record);
  const years = new Set(record.days.filter((day) => day.soilC !== null && fitted(day)).map(yearOf)).size;
  weights.set(record, years / (years + 1));
  return years / (years + 1);
}

/** Loss over the errors of seasons from April to August, when the sun makes most noise; of even years, with all readings. */
export function summerCostOf(records: readonly SoilRecord[], of: SoilModelConstants): number {
  const losses = records.map((record) => lossOf(errorsOf(record, replayWithHistory(record, { of, choose: isSummer }))));
  return losses.reduce((sum, loss) => sum + loss, 0) / losses.length;
}

function lossOf(errors: readonly LeadError[]): number {
  return leads.reduce<number>((sum, lead) => {
    const own = errors.filter((one) => one.lead === lead);
    const loss = own.reduce((total, error) => total + lossOfError(error), 0);
    return sum + loss / own.length / leads.length;
  }, 0);
}

/** Minus the log of Student's t density of an error. */
function lossOfError({ errorC, sdC, freedom: n }: LeadError): number {
  const peak = logGamma(n / 2) - logGamma((n + 1) / 2) + Math.log(n) / 2;
  return peak + Math.log(sdC) + ((n + 1) / 2) * Math.log(1 + (errorC / sdC) ** 2 / n);
}

/** Log of the gamma function above 0 (Abramowitz & Stegun 1964, eq. 6.1.41 after eq. 6.1.15). */
function logGamma(x: number): number {
  if (x < 6) return logGamma(x + 1) - Math.log(x);
  return (x - 0.5) * Math.log(x) - x + Math.log(2 * Math.PI) / 2 + 1 / (12 * x) - 1 / (360 * x ** 3);
}
