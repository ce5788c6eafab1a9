import type * as z from 'zod';
import { type FactRegistry, factIdsOf, isFactOf } from '../../facts/registry/index.ts';
import type { PackCase } from '../pack-types.ts';
import { inside, type Report, show } from './findings.ts';
import type { casesSchema } from './schema.ts';

/** Names in a case, each with the last step to it: its place in a list, or the name itself where it is a key. */
type Named = Iterable<readonly [step: string | number, name: string]>;

/**
 * Checks that a file of cases names only facts and rules that exist, and gives its cases. The facts of each are those of the
 * file's `base` with its own put over them; null takes a fact away.
 */
export function checkCases(
  parsed: z.output<typeof casesSchema>,
  file: string,
  ruleIds: ReadonlySet<string>,
  registry: FactRegistry,
  report: Report,
): PackCase[] {
  const { base = {} } = parsed;
  const factIds = factIdsOf(registry);
  for (const name of Object.keys(base)) {
    if (isFactOf(registry, name)) continue;
    const place = { file, path: ['base', name] };
    report('CASE_MISFIT', place, { expected: 'the id of a fact', came: show(name), among: factIds });
  }
  parsed.cases.forEach(({ facts, expect }, index) => {
    const place = { file, path: ['cases', index] };
    const names = (right: Iterable<string>, what: string, named: Named, ...steps: string[]): void => {
      const among = new Set(right);
      for (const [step, name] of named) {
        if (among.has(name)) continue;
        const where = inside(place, ...steps, step);
        report('CASE_MISFIT', where, { expected: `the id of a ${what}`, came: show(name), among });
      }
    };
    names(factIds, 'fact', keysOf(facts), 'facts');
    names(factIds, 'fact', (expect.missing ?? []).entries(), 'expect', 'missing');
    names(ruleIds, 'rule', keysOf(expect.lifts ?? {}), 'expect', 'lifts');
    for (const key of ['met', 'notMet', 'unknown'] as const) {
      names(ruleIds, 'rule', (expect[key] ?? []).entries(), 'expect', key);
    }
  });
  return parsed.cases.map((one) => ({ file, ...one, facts: over(base, one.facts) }) as PackCase);
}

function keysOf(part: object): Named {
  return Object.keys(part).map((name) => [name, name]);
}

function over(base: PackCase['facts'], facts: PackCase['facts']): PackCase['facts'] {
  return Object.fromEntries(Object.entries({ ...base, ...facts }).filter(([, value]) => value !== null));
}
