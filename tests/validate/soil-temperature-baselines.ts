import type { LeadError } from '../../src/tools/soil-records/errors.ts';
import { type Issue, leads } from '../../src/tools/soil-records/replay.ts';
import type { SoilRecord } from '../../src/tools/soil-records/types.ts';

/** Days of readings that the straight line goes through, and the least of them that must be there. */
const lineDays = 7;
const leastReadings = 4;

type Baseline = (record: SoilRecord, index: number) => ((lead: number) => number) | null;

const persistence: Baseline = ({ days }, index) => {
  const now = days[index]?.soilC ?? null;
  return now === null ? null : () => now;
};

const straightLine: Baseline = ({ days }, index) => {
  const readings = days
    .slice(Math.max(0, index - lineDays + 1), index + 1)
    .flatMap(({ day, soilC }) => (soilC === null ? [] : [{ x: day - days[index]!.day, y: soilC }]));
  if (readings.length < leastReadings) return null;
  const mean = (of: (one: { x: number; y: number }) => number) =>
    readings.reduce((sum, one) => sum + of(one), 0) / readings.length;
  const [x, y] = [mean((one) => one.x), mean((one) => one.y)];
  const slope = mean((one) => (one.x - x) * (one.y - y)) / mean((one) => (one.x - x) ** 2);
  return (lead) => y + slope * (lead - x);
};

/** The simple forecasts that any model must beat. */
export const baselines = { persistence, 'straight line': straightLine } as const;

/** Errors of a simple forecast on the days of the same issues. */
export function baselineErrors(record: SoilRecord, issues: readonly Issue[], baseline: Baseline): LeadError[] {
  return issues.flatMap(({ index }) => {
    const forecast = baseline(record, index);
    if (forecast === null) return [];
    return leads.flatMap((lead): LeadError[] => {
      const came = record.days[index + lead]?.soilC ?? null;
      return came === null ? [] : [{ index, lead, errorC: came - forecast(lead), sdC: 1, freedom: 100 }];
    });
  });
}
