import { compileRules } from '../rules/compile.ts';
import type { ReachingPack } from '../rules/reach.ts';
import type { CompiledRules } from '../rules/types.ts';

/** The rules of a pack on any day (YYYY-MM-DD), compiled once for each span of days over which no parameter changes. */
export function compiledByDay(pack: ReachingPack): (isoDate: string) => CompiledRules {
  const starts = pack.parameters.map(({ validFrom }) => validFrom);
  const ends = pack.parameters.flatMap(({ validTo }) => (validTo === undefined ? [] : [validTo]));
  const spans = new Map<number, CompiledRules>();
  let last: { readonly isoDate: string; readonly compiled: CompiledRules } | null = null;
  return (isoDate) => {
    if (last?.isoDate === isoDate) return last.compiled;
    const span = starts.filter((day) => day <= isoDate).length + ends.filter((day) => day < isoDate).length;
    const compiled = spans.get(span) ?? compileRules(pack, isoDate);
    spans.set(span, compiled);
    last = { isoDate, compiled };
    return compiled;
  };
}
