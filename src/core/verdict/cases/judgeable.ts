import { isLoamwardError } from '../../errors/coded-error.ts';
import { compileRules } from '../../rules/compile.ts';
import type { Pack, PackCase } from '../../rules/pack-types.ts';
import { type ResolvedCase, resolveCase } from '../../rules/resolve-case.ts';

/** A case on whose day a limit that the rules read does not hold: not begun, or ended. */
export interface UnjudgedCase {
  readonly one: PackCase;
  readonly day: string;
  /** Id of the first such limit. */
  readonly parameter: string;
}

/** Cases apart: those that can be judged on their day, and those that cannot. Throws as `resolveCase` does for any other fault. */
export function judgeable(
  pack: Pack,
  cases: readonly PackCase[],
): { readonly judged: readonly ResolvedCase[]; readonly unjudged: readonly UnjudgedCase[] } {
  const lacking = new Map<string, string | null>();
  const judged: ResolvedCase[] = [];
  const unjudged: UnjudgedCase[] = [];
  for (const one of cases) {
    const resolved = resolveCase(one, pack);
    const { day } = resolved;
    if (!lacking.has(day)) lacking.set(day, lackingOn(pack, day));
    const parameter = lacking.get(day) ?? null;
    if (parameter === null) judged.push(resolved);
    else unjudged.push({ one, day, parameter });
  }
  return { judged, unjudged };
}

function lackingOn(pack: Pack, day: string): string | null {
  try {
    compileRules(pack, day);
    return null;
  } catch (error) {
    if (!isLoamwardError(error) || error.code !== 'PARAMETER_MISSING') throw error;
    return error.details.parameter ?? '';
  }
}
