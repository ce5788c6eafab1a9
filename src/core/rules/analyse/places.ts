import type { Path, Place } from '../pack/findings.ts';
import { isObject } from '../pack/findings.ts';
import { comparisonsIn } from '../reads.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../types.ts';

/** Where the parts of a pack stand in its files. */
export interface PlaceOf {
  readonly rule: (id: string, ...steps: Path) => Place;
  /** A comparison of a rule; one of a rule that it refers to stands where the reference does. */
  readonly comparison: (rule: CompiledRule, comparison: CompiledComparison) => Place;
  /** The version of a parameter that begins on a day, else any of it. */
  readonly parameter: (id: string, validFrom?: string) => Place;
  readonly question: (id: string) => Place;
}

const nowhere: Place = { file: 'pack.json', path: [] };

/** Finds the rules, parameters and questions of a pack in its parsed files, by file name. */
export function placesIn(parsed: ReadonlyMap<string, unknown>): PlaceOf {
  const places = new Map<string, Place>();
  for (const [file, content] of parsed) {
    for (const list of ['rules', 'parameters', 'questions']) {
      const entries = isObject(content) && Array.isArray(content[list]) ? content[list] : [];
      entries.forEach((entry: unknown, index) => {
        if (!isObject(entry)) return;
        const place = { file, path: [list, index] };
        for (const key of [`${list} ${entry['id']}`, `${list} ${entry['id']} ${entry['validFrom']}`]) {
          if (!places.has(key)) places.set(key, place);
        }
      });
    }
  }
  const find = (key: string) => places.get(key) ?? nowhere;
  const rule = (id: string, ...steps: Path) => {
    const { file, path } = find(`rules ${id}`);
    return { file, path: [...path, ...steps] };
  };
  return {
    rule,
    comparison: ({ rule: { id } }, comparison) => rule(id, 'when', ...stepsOf(comparison, id)),
    parameter: (id, validFrom) => places.get(`parameters ${id} ${validFrom}`) ?? find(`parameters ${id}`),
    question: (id) => find(`questions ${id}`),
  };
}

function stepsOf({ name, op }: CompiledComparison, rule: string): Path {
  const steps = name === rule ? [] : name.slice(rule.length + 1).split('/');
  const reference = steps.indexOf('rule');
  const own = reference < 0 ? [...steps, op] : steps.slice(0, reference + 1);
  return own.map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** The comparisons of a condition with their limits, as a short text: `wind.boomKmh above windMostKmh = 9.6`. */
export function sayComparisons(condition: CompiledCondition | readonly CompiledComparison[], between = ', '): string {
  const comparisons = 'kind' in condition ? comparisonsIn(condition) : condition;
  return comparisons.map(sayComparison).join(between);
}

/** A comparison with its limit, as a short text. */
export function sayComparison({ fact, op, limit, parameter }: CompiledComparison): string {
  const value = limit.kind === 'choices' ? limit.values.join('/') : sayLimit(limit);
  return `${fact} ${op} ${parameter === null ? value : `${parameter} = ${value}`}`;
}

function sayLimit({ kind, value }: { readonly kind: string; readonly value: number }): string {
  if (kind !== 'month-day') return String(value);
  return `${String(Math.floor(value / 100)).padStart(2, '0')}-${String(value % 100).padStart(2, '0')}`;
}
