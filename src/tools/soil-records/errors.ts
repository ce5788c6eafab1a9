import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';
import { type Reach, reachOf } from '../../core/science/soil/temperature/reach.ts';
import { type Issue, leads } from './replay.ts';
import type { SoilRecord } from './types.ts';

/** One forecast against what came: error (came less forecast) and standard error, C. */
export interface LeadError {
  readonly index: number;
  readonly lead: number;
  readonly errorC: number;
  readonly sdC: number;
  /** How many errors the standard error rests on. */
  readonly freedom: number;
}

/** Errors of forecasts at every lead that is scored and at which there is a reading. */
export function errorsOf({ days }: SoilRecord, issues: readonly Issue[]): LeadError[] {
  return issues.flatMap(({ index, path }) =>
    leads.flatMap((lead): LeadError[] => {
      const came = days[index + lead]?.soilC ?? null;
      const estimate = path[lead];
      if (came === null || estimate === undefined) return [];
      return [{ index, lead, errorC: came - estimate.valueC, sdC: estimate.sdC, freedom: estimate.freedom }];
    }),
  );
}

/** Root mean square of errors at each lead, C; NaN where there is none. */
export function rootMeanSquares(errors: readonly LeadError[]): number[] {
  return leads.map((lead) => {
    const own = errors.filter((one) => one.lead === lead);
    return Math.sqrt(own.reduce((sum, { errorC }) => sum + errorC ** 2, 0) / own.length);
  });
}

/** Shares of errors that the 80 % and the 95 % band held, 0 to 1. */
export function sharesHeld(errors: readonly LeadError[], of: SoilModelConstants): Reach {
  const share = (at: (reach: Reach) => number) =>
    errors.filter(({ errorC, sdC, freedom }) => Math.abs(errorC) <= at(reachOf(of, freedom)) * sdC).length /
    errors.length;
  return { at80: share(({ at80 }) => at80), at95: share(({ at95 }) => at95) };
}
