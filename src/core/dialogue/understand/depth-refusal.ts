import { type ErrorReport, reportOf } from '../../errors/coded-error.ts';
import { depthProblem } from '../../facts/depth-reading.ts';
import type { FactId } from '../../facts/registry/index.ts';

/** The fact that depths are said of. */
export const soilTemperature: FactId = 'soil.temperature30cmC';

/** Why a soil temperature from another depth cannot be taken; null where it can be: the hour is named. */
export function depthRefusal(depthCm: number, hasHour: boolean): ErrorReport | null {
  const problem = depthProblem(depthCm);
  if (problem !== null || hasHour) return problem;
  const came = `at ${Number(depthCm.toPrecision(4))} cm`;
  return reportOf('DEPTH_NEEDS_HOUR', {
    expected: 'a soil temperature at 30 cm, or the hour',
    came,
    fact: soilTemperature,
  });
}
