import { type Issue, leads } from './replay.ts';
import type { SoilRecord } from './types.ts';

/** One forecast against what came: error (came less forecast) and standard error, C. */
export interface LeadError {
  readonly index: number;
  readonly lead: number;
  readonly errorC: number;
  readonly sdC: number;
}

/** Errors of forecasts at every lead that is scored and at which there is a reading. */
export function errorsOf({ days }: SoilRecord, issues: readonly Issue[]): LeadError[] {
  return issues.flatMap(({ index, path }) =>
    leads.flatMap((lead): LeadError[] => {
      const came = days[index + lead]?.soilC ?? null;
      const estimate = path[lead];
      if (came === null || estimate === undefined) return [];
      return [{ index, lead, errorC: came - estimate.valueC, sdC: estimate.sdC }];
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

/** Share of errors within `reach` standard errors, 0 to 1. */
export function shareWithin(errors: readonly LeadError[], reach: number): number {
  return errors.filter(({ errorC, sdC }) => Math.abs(errorC) <= reach * sdC).length / errors.length;
}
