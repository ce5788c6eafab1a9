import { soilConstants10cm, soilConstants30cm } from '../../src/core/science/soil/temperature/constants.ts';
import type { SoilModelConstants } from '../../src/core/science/soil/temperature/model-constants.ts';
import { errorsOf, type LeadError, rootMeanSquares, sharesHeld } from '../../src/tools/soil-records/errors.ts';
import { readSoilRecords } from '../../src/tools/soil-records/index.ts';
import { replayOneReading, replayWithHistory } from '../../src/tools/soil-records/replay.ts';
import { fittedRecords, hasAutumn, hasOddAutumn, isScored } from '../../src/tools/soil-records/split.ts';
import type { SoilRecord } from '../../src/tools/soil-records/types.ts';
import { withForecastError } from './soil-temperature-air-error.ts';
import { bandClaims, coverText } from './soil-temperature-bands.ts';
import { baselineErrors, baselines } from './soil-temperature-baselines.ts';
import { againstGoal, goalOf, oneReadingFactor } from './soil-temperature-goals.ts';
import { type AirErrorSize, airErrorSize } from './soil-temperature-previous-runs.ts';
import { rewarmingErrors, runDateErrors } from './soil-temperature-spells.ts';
import { type Figures, hold, nothingToCheck, runChecks, type ValidationResult } from './validator.ts';

/** Days of air before a single reading, and days ahead that hold a date 10 days away and its run. */
const pastDays = 30;
const farAhead = 20;

interface Scored {
  readonly record: SoilRecord;
  readonly of: SoilModelConstants;
  readonly errors: readonly LeadError[];
  readonly one: readonly LeadError[];
  readonly withAirError: readonly LeadError[];
  readonly dates: readonly number[];
  readonly rmse: Readonly<Record<string, readonly number[]>>;
}

/** Scores the modelled soil temperature on seasons that its constants were not fitted on, beside persistence and a straight line. */
export function validateSoilTemperature(folder: string): ValidationResult {
  const records = readSoilRecords(folder);
  if (records.length === 0) return nothingToCheck('records of soil and air temperature');
  const size = airErrorSize(folder);
  const scored = records.flatMap((record) => {
    const of = [soilConstants30cm, soilConstants10cm].find((one) => one.depthM === record.depthM);
    return of === undefined ? [] : [score(record, of, size)];
  });
  const usable = scored.filter(({ errors }) => errors.length > 0);
  const checks = runChecks(claims(usable));
  const lines = usable.flatMap((one) => linesOf(one, fittedRecords(records, one.record.depthM).includes(one.record)));
  const figures = Object.fromEntries(usable.map((one) => [one.record.station, figuresOf(one)]));
  return { ...checks, lines: [`errors of the air forecast ${size.said}`, ...lines, ...checks.lines], figures };
}

function score(record: SoilRecord, of: SoilModelConstants, { sdC }: AirErrorSize): Scored {
  const forecastAir = (days: SoilRecord['days'], index: number) => withForecastError(days, index, sdC);
  const choose = isScored(record);
  const issues = replayWithHistory(record, { of, choose, aheadDays: farAhead });
  const one = errorsOf(record, replayOneReading(record, { of, choose }, pastDays));
  const withAirError = errorsOf(record, replayWithHistory(record, { of, choose, forecastAir }));
  const errors = errorsOf(record, issues);
  const simple = Object.entries(baselines).map(([name, baseline]): [string, number[]] => [
    name,
    rootMeanSquares(baselineErrors(record, issues, baseline)),
  ]);
  const rmse = {
    model: rootMeanSquares(errors),
    ...Object.fromEntries(simple),
    'one reading': rootMeanSquares(one),
    're-warming': rootMeanSquares(rewarmingErrors(record, issues)),
    'with errors of the air forecast': rootMeanSquares(withAirError),
  };
  return { record, of, errors, one, withAirError, dates: runDateErrors(record, issues), rmse };
}

function linesOf({ record, of, errors, one, withAirError, dates, rmse }: Scored, isFitted: boolean): string[] {
  const autumn = hasAutumn(record);
  const goal = autumn ? goalOf(record) : null;
  const ofYears = hasOddAutumn(record)
    ? 'odd years'
    : 'even years, for want of odd ones (fitted on, if npm run fit was given them)';
  const season = autumn
    ? `September to December of ${ofYears}`
    : 'May on, for want of an autumn (goals are set for autumn)';
  const fitted = isFitted ? 'other seasons fitted on' : 'never fitted on';
  const row = (name: string, after = '') => `  ${name.padEnd(32)} ${figuresText(rmse[name] ?? [])}  ${after}`.trimEnd();
  return [
    `${record.station} (${record.source}), ${record.depthM * 100} cm, ${season}, ${fitted}; RMSE in C at 1 3 5 7 10 days`,
    row('model', againstGoal(rmse['model'] ?? [], goal, 1)),
    ...Object.keys(baselines).map((name) => row(name)),
    row('one reading', againstGoal(rmse['one reading'] ?? [], goal, oneReadingFactor)),
    row('re-warming'),
    row('with errors of the air forecast'),
    `  bands: ${coverText(errors, of)}; one reading ${coverText(one, of)}; with air errors ${coverText(withAirError, of)}`,
    `  first 7-day run below 10 C, issued 3 to 10 days before: ${datesText(dates)}`,
  ];
}

function claims(scored: readonly Scored[]): (readonly [string, () => void])[] {
  const better = scored.map((one): readonly [string, () => void] => [
    `${one.record.station}: better than persistence at every lead time`,
    () => {
      const simple = one.rmse['persistence'] ?? [];
      hold(
        (one.rmse['model'] ?? []).every((rmse, index) => rmse < simple[index]!),
        () => figuresText(one.rmse['model'] ?? []),
      );
    },
  ]);
  return [...better, ...bandClaims(scored)];
}

function datesText(dates: readonly number[]): string {
  if (dates.length === 0) return 'none to score';
  const mean = dates.reduce((sum, one) => sum + Math.abs(one), 0) / dates.length;
  return `mean error ${mean.toFixed(1)} days of ${dates.length} (goal 2: ${mean <= 2 ? 'reached' : 'NOT REACHED'})`;
}

function figuresText(figures: readonly number[]): string {
  return figures.map((one) => (Number.isFinite(one) ? one.toFixed(2) : '-')).join(' ');
}

function figuresOf({ of, errors, one, withAirError, dates, rmse }: Scored): Figures {
  const text = Object.fromEntries(Object.entries(rmse).map(([name, figures]) => [name, figuresText(figures)]));
  const cover = (own: readonly LeadError[]): Figures => ({ ...sharesHeld(own, of) });
  const meanDays = dates.length === 0 ? null : dates.reduce((sum, error) => sum + Math.abs(error), 0) / dates.length;
  return {
    rmse: text,
    bands: cover(errors),
    oneReading: cover(one),
    airErrors: cover(withAirError),
    runDateDays: meanDays,
  };
}
