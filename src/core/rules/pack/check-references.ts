import { referencesOf } from '../reads.ts';
import type { Rule } from '../types.ts';
import type { Place, Report } from './findings.ts';

/** Reports every circle of rules that name each other, once, with its path; true where there is none. */
export function checkReferences(
  rules: ReadonlyMap<string, Rule>,
  places: ReadonlyMap<string, Place>,
  report: Report,
): boolean {
  const done = new Set<string>();
  let sound = true;
  const visit = (id: string, path: readonly string[]): void => {
    const start = path.indexOf(id);
    if (start >= 0) {
      const circle = [...path.slice(start), id].join(' > ');
      report('RULE_REFERENCE_CYCLE', places.get(id)!, {
        expected: 'references that end',
        came: circle,
        rule: id,
      });
      sound = false;
      return;
    }
    if (done.has(id)) return;
    const rule = rules.get(id);
    for (const next of rule ? referencesOf(rule.when) : []) visit(next, [...path, id]);
    done.add(id);
  };
  for (const id of rules.keys()) visit(id, []);
  return sound;
}
