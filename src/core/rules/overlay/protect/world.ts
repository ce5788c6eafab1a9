import { DateTime } from 'luxon';
import { factsBehind } from '../../../facts/derive/reads.ts';
import type { FactId } from '../../../facts/registry/index.ts';
import type { Parameter, Parameters } from '../../../units/parameter.ts';
import { parametersOn } from '../../../units/parameter.ts';
import { asIfInForce } from '../../analyse/find-validity.ts';
import { compileRules } from '../../compile.ts';
import type { DefinitionOf } from '../../mutate/change-conditions.ts';
import type { Path, Report } from '../../pack/findings.ts';
import type { Pack } from '../../pack-types.ts';
import { type CompiledRule, isProtected } from '../../types.ts';
import type { Overlay } from '../parse-overlay.ts';

/** What the protection of a pack is judged with: the pack before and after one overlay, and where faults are reported. */
export interface ProtectWorld {
  readonly before: Pack;
  readonly after: Pack;
  readonly overlay: Overlay;
  readonly definitionOf: DefinitionOf;
  /** Days on which some limit changes, from the first on which the overlay holds. */
  readonly days: readonly string[];
  readonly report: Report;
}

/** The place of an entry in the overlay's file: where it is given, else where it is removed, else its head. */
export function placeIn(
  { file, content }: Overlay,
  list: 'rules' | 'questions' | 'cautions',
  id: string,
  ...steps: Path
): { readonly file: string; readonly path: Path } {
  const given = (content[list] ?? []).findIndex((one) => one.id === id);
  if (given >= 0) return { file, path: [list, given, ...steps] };
  const removed = (content.removes?.[list] ?? []).indexOf(id);
  return { file, path: removed >= 0 ? ['removes', list, removed] : ['overlay'] };
}

/** The first day of an overlay, and each later one on which a value of some parameter begins or has ended. */
export function daysOfChange(packs: readonly Pack[], validFrom: string): readonly string[] {
  const days = packs.flatMap(({ parameters }) =>
    parameters.flatMap((one) => [one.validFrom, ...(one.validTo === undefined ? [] : [nextDay(one.validTo)])]),
  );
  return [...new Set([validFrom, ...days.filter((day) => day > validFrom)])].sort();
}

/** The rules of a pack on a day by id; a parameter that is not in force is taken as if it were. */
export function rulesOn(pack: Pack, day: string): ReadonlyMap<string, CompiledRule> {
  const { rules } = compileRules({ ...pack, parameters: asIfInForce(pack.parameters, day) }, day);
  return new Map(rules.map((one) => [one.rule.id, one]));
}

/** Facts that protected rules read, and those that these are worked out from. */
export function protectedFacts(pack: Pack, day: string): ReadonlySet<FactId> {
  const rules = [...rulesOn(pack, day).values()].filter(({ rule }) => isProtected(rule));
  return factsBehind(rules.flatMap(({ facts }) => facts));
}

/** Parameters that protected rules of a pack read on a day, themselves or through rules that they name. */
export function protectedParameters(pack: Pack, day: string): readonly string[] {
  return [...rulesOn(pack, day).values()].flatMap(({ rule, parameters }) => (isProtected(rule) ? parameters : []));
}

/** A parameter whose value on some day an overlay changes: before and after, null where it is not in force. */
export interface Moved {
  readonly id: string;
  readonly day: string;
  readonly before: Parameter | null;
  readonly after: Parameter | null;
}

/** Every parameter whose value on some of the days is another than before, with the first such day. */
export function movedParameters({ before, after, days }: ProtectWorld): readonly Moved[] {
  const moved: Moved[] = [];
  for (const day of days) {
    const then: Parameters = parametersOn(before.parameters, day);
    const now: Parameters = parametersOn(after.parameters, day);
    for (const id of new Set([...then.keys(), ...now.keys()])) {
      const one = { id, day, before: then.get(id) ?? null, after: now.get(id) ?? null };
      if (JSON.stringify(one.before?.value) !== JSON.stringify(one.after?.value)) moved.push(one);
    }
  }
  return moved;
}

/** The day after a day, YYYY-MM-DD. */
function nextDay(day: string): string {
  return DateTime.fromISO(day, { zone: 'utc' }).plus({ days: 1 }).toISODate() ?? day;
}

/** The place of the version of a parameter that moved, in the overlay's file. */
export function placeOfMoved(
  { file, content }: Overlay,
  { id, after }: Moved,
  step: string,
): ReturnType<typeof placeIn> {
  const own = (content.parameters ?? []).map((one, index) => ({ ...one, index })).filter((one) => one.id === id);
  const found = own.find(({ validFrom }) => validFrom === after?.validFrom) ?? own[0];
  return { file, path: found ? ['parameters', found.index, step] : ['overlay'] };
}
