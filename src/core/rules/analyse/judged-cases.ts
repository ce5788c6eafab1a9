import { isLoamwardError } from '../../errors/coded-error.ts';
import type { ResolvedFacts } from '../../facts/resolved.ts';
import { compileRules } from '../compile.ts';
import type { Path, Report } from '../pack/findings.ts';
import type { Pack, PackCase } from '../pack-types.ts';
import { resolveCase } from '../resolve-case.ts';
import type { CompiledRule, CompiledRules } from '../types.ts';

/** A case with its facts and the rules of its day. */
export interface JudgedCase {
  readonly facts: ResolvedFacts;
  readonly rules: ReadonlyMap<string, CompiledRule>;
}

/** Every case of a pack with its facts resolved, without a forecast; one whose facts cannot be read is reported and left out. */
export function judgeCases(pack: Pack, cases: readonly PackCase[], report: Report): JudgedCase[] {
  const byDay = new Map<string, ReadonlyMap<string, CompiledRule>>();
  const seen = new Map<string, number>();
  return cases.flatMap((one) => {
    const index = seen.get(one.file) ?? 0;
    seen.set(one.file, index + 1);
    try {
      const { day, facts } = resolveCase(one, pack);
      const rules = byDay.get(day) ?? rulesById(compileRules(pack, day));
      byDay.set(day, rules);
      return [{ facts, rules }];
    } catch (error) {
      if (!isLoamwardError(error)) throw error;
      const { expected, came, pointer = '', fact } = error.details;
      const steps = pointer.split('/').slice(1);
      const path: Path = ['cases', index, ...(steps.length > 0 ? ['facts', ...steps] : [])];
      report(error.code, { file: one.file, path }, { expected, came, ...(fact === undefined ? {} : { fact }) });
      return [];
    }
  });
}

function rulesById({ rules }: CompiledRules): ReadonlyMap<string, CompiledRule> {
  return new Map(rules.map((one) => [one.rule.id, one]));
}
