import type { ErrorCode } from '../../../errors/table.ts';
import { comparisonsOf, membersOf, referencesOf } from '../../reads.ts';
import type { CompiledRule, Condition, Rule } from '../../types.ts';
import { isProtected } from '../../types.ts';
import { type Compared, compareConditions } from './compare-conditions.ts';
import { sayBreach } from './say-breach.ts';
import { movedParameters, type ProtectWorld, placeIn, placeOfMoved, rulesOn } from './world.ts';

/**
 * Reports protected rules whose condition could come out lower than before, on any day from the first on which the overlay holds:
 * by a rule given anew, a limit moved, or a rule that it names; with the facts that show it.
 */
export function protectConditions(world: ProtectWorld): void {
  const done = new Set<string>();
  for (const day of world.days) {
    const before = rulesOn(world.before, day);
    const after = rulesOn(world.after, day);
    for (const [id, shipped] of before) {
      const changed = after.get(id);
      if (!isProtected(shipped.rule) || !changed || done.has(id)) continue;
      const compared = compare(shipped, changed, world, day);
      if (compared.kind === 'proved') continue;
      done.add(id);
      reportBreach(shipped, changed, compared, world, day);
    }
  }
}

function compare(shipped: CompiledRule, changed: CompiledRule, { definitionOf }: ProtectWorld, day: string): Compared {
  return compareConditions(shipped.condition, changed.condition, definitionOf, Number(day.slice(0, 4)));
}

function reportBreach(
  shipped: CompiledRule,
  changed: CompiledRule,
  compared: Exclude<Compared, { kind: 'proved' }>,
  world: ProtectWorld,
  day: string,
): void {
  const { id } = shipped.rule;
  const { code, place, parameter } = blame(shipped, changed, world, day);
  const about = { rule: id, ...(parameter === undefined ? {} : { parameter }) };
  if (compared.kind === 'loosened') {
    const came = `${sayBreach(compared.breach)}, by the limits of ${day}`;
    world.report(code, place, {
      expected: `${id} met wherever the pack's is, and unknown or met where that is unknown`,
      came,
      ...about,
    });
    return;
  }
  const came = Number.isFinite(compared.combinations)
    ? `${compared.combinations} combinations of facts`
    : 'far too many combinations of facts';
  world.report('OVERLAY_UNPROVABLE', place, {
    expected: `a condition of ${id} that shows to be as strict`,
    came,
    ...about,
  });
}

interface Blame {
  readonly code: ErrorCode;
  readonly place: ReturnType<typeof placeIn>;
  readonly parameter?: string;
}

/** What made the rule come out lower: a limit alone, the rule itself, or one that it names. */
function blame(shipped: CompiledRule, changed: CompiledRule, world: ProtectWorld, day: string): Blame {
  const { before, after, overlay } = world;
  const { id } = shipped.rule;
  const isGiven = overlay.content.rules?.some((rule) => rule.id === id) ?? false;
  for (const moved of movedParameters(world)) {
    if (moved.day !== day || !shipped.parameters.includes(moved.id)) continue;
    const others = before.parameters.filter((one) => one.id !== moved.id);
    const own = after.parameters.filter((one) => one.id === moved.id);
    const alone = rulesOn({ ...before, parameters: [...others, ...own] }, day).get(id);
    if (!alone || compare(shipped, alone, world, day).kind === 'proved') continue;
    const place = placeOfMoved(overlay, moved, 'value');
    return { code: 'OVERLAY_PARAMETER_LOOSENED', place, parameter: moved.id };
  }
  if (isGiven && !sameApartFromReferences(shipped.rule, changed.rule)) {
    return { code: 'OVERLAY_RULE_LOOSENED', place: placeIn(overlay, 'rules', id, 'when') };
  }
  const named = isGiven
    ? id
    : (referencesFollowed(changed.rule, after.rules).find((each) => isChanged(each, world)) ?? id);
  return { code: 'OVERLAY_REFERENCE_LOOSENED', place: placeIn(overlay, 'rules', named, 'when') };
}

function isChanged(id: string, { overlay }: ProtectWorld): boolean {
  return overlay.content.rules?.some((rule) => rule.id === id) ?? false;
}

/** True where two rules compare the same with the same, so that only the rules which they name can differ. */
function sameApartFromReferences({ when }: Rule, { when: other }: Rule): boolean {
  const own = (condition: Condition) =>
    comparisonsOf(condition, new Map())
      .map((one) => JSON.stringify(one))
      .sort()
      .join();
  return own(when) === own(other) && shapeOf(when) === shapeOf(other);
}

/** The groups of a condition without what they hold: "all(.,any(.,.))". */
function shapeOf(condition: Condition): string {
  if ('fact' in condition || 'rule' in condition) return '.';
  if ('not' in condition) return `not(${shapeOf(condition.not)})`;
  return `${Object.keys(condition)[0]}(${membersOf(condition).map(shapeOf).join()})`;
}

/** Ids of the rules that a rule names, and that those name, each once. */
function referencesFollowed({ when }: Rule, rules: readonly Rule[]): readonly string[] {
  const found: string[] = [];
  const open = referencesOf(when);
  for (let id = open.shift(); id !== undefined; id = open.shift()) {
    const rule = rules.find((each) => each.id === id);
    if (!rule || found.includes(id)) continue;
    found.push(id);
    open.push(...referencesOf(rule.when));
  }
  return found;
}
