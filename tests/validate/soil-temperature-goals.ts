import type { SoilRecord } from '../../src/tools/soil-records/types.ts';

/** Root mean square errors to be beaten at 1, 3, 5, 7 and 10 days ahead from September to December, C, by source of a record. */
export const goals: readonly { readonly of: RegExp; readonly depthM: number; readonly rmseC: readonly number[] }[] = [
  { of: /US Climate Reference Network/, depthM: 0.3, rmseC: [0.31, 0.49, 0.56, 0.6, 0.67] },
  { of: /Reynolds Creek/, depthM: 0.3, rmseC: [0.38, 0.67, 0.78, 0.88, 0.99] },
  { of: /MIDAS/, depthM: 0.3, rmseC: [0.31, 0.49, 0.56, 0.63, 0.67] },
  { of: /Met Eireann/, depthM: 0.1, rmseC: [0.63, 0.77, 0.85, 0.89, 0.94] },
];

/** What one reading without a history may be worse by. */
export const oneReadingFactor = 1.3;

/** The goal of a record; null where none was set. */
export function goalOf({ source, depthM }: SoilRecord): readonly number[] | null {
  return goals.find((goal) => goal.of.test(source) && goal.depthM === depthM)?.rmseC ?? null;
}

/** Says whether figures reach a goal, each rounded to 0.01 as the goals are. */
export function againstGoal(rmseC: readonly number[], goal: readonly number[] | null, factor: number): string {
  if (goal === null) return 'no goal set';
  const limits = goal.map((one) => one * factor);
  const missed = limits.filter((limit, index) => Math.round((rmseC[index] ?? Number.NaN) * 100) / 100 > limit + 0.0051);
  const said = `goal ${limits.map((one) => one.toFixed(2)).join(' ')}`;
  return missed.length === 0
    ? `${said}: reached`
    : `${said}: NOT REACHED at ${missed.length} of ${limits.length} lead times`;
}
