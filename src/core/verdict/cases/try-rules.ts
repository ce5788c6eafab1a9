import { neededParameters } from '../../facts/needed-parameters.ts';
import type { DefinitionOf } from '../../rules/mutate/change-conditions.ts';
import { changesOf } from '../../rules/mutate/changes.ts';
import { applyChange, type Change } from '../../rules/mutate/types.ts';
import type { Pack, PackCase } from '../../rules/pack-types.ts';
import { type ResolvedCase, resolveCase } from '../../rules/resolve-case.ts';
import { type CaseOutcome, caseHolds, givenBy } from './judge-case.ts';
import { judgeable, type UnjudgedCase } from './judgeable.ts';
import { type KillWorld, killOf, type Survivor } from './kill.ts';
import { affectedBy, type TracedCase, traceCases, tracesAfter } from './trace-cases.ts';

/** A case that does not come out as it says, and how it comes out. */
export interface FailingCase {
  readonly one: PackCase;
  readonly given: CaseOutcome;
}

/** What came of trying every single change of a rule set against its cases. */
export interface TriedRules {
  readonly cases: number;
  /** Cases that do not come out as they say with nothing changed; where there are any, nothing else was tried. */
  readonly failing: readonly FailingCase[];
  /** Cases that were left out, since a limit does not hold on their day. */
  readonly unjudged: readonly UnjudgedCase[];
  readonly changes: number;
  /** Changes that no facts can tell from the rules as they are. */
  readonly equal: readonly Change[];
  readonly survivors: readonly Survivor[];
}

/**
 * Makes every single change of a pack's rules and limits and runs all cases on each: verdict, what is met, not met, unknown and
 * missing, and what lifts it. Cases on whose day a limit does not hold are left out and told. A change that no case notices survives,
 * unless no facts can tell it apart. In a pack with overlays only what they gave is changed. Throws as `resolveCase` does.
 */
export function tryRules(pack: Pack, cases: readonly PackCase[], definitionOf: DefinitionOf): TriedRules {
  const { judged: resolved, unjudged } = judgeable(pack, cases);
  const traced = traceCases(pack, resolved);
  const failing = traced
    .filter(({ trace, one }) => !caseHolds(trace, one))
    .map(({ trace, one }) => ({ one, given: givenBy(trace, one) }));
  const told = { cases: resolved.length, failing, unjudged };
  if (failing.length > 0 || resolved.length === 0) return { ...told, changes: 0, equal: [], survivors: [] };
  const changes = changesOf(pack, definitionOf).filter((change) => isOfOverlays(change, pack));
  const world: KillWorld = { pack, cases: resolved, definitionOf };
  const equal: Change[] = [];
  const survivors: Survivor[] = [];
  for (const change of changes) {
    if (someCaseNotices(pack, change, traced)) continue;
    const killed = killOf(change, world);
    if (killed === 'equal') equal.push(change);
    else survivors.push({ change, ...killed });
  }
  return { ...told, changes: changes.length, equal, survivors };
}

/** The cases that come out as they say, or cannot be judged: of a pack's own cases those that its overlays left as they were. */
export function casesThatHold(pack: Pack, cases: readonly PackCase[]): readonly PackCase[] {
  const { judged, unjudged } = judgeable(pack, cases);
  const held = traceCases(pack, judged).flatMap(({ trace, one }) => (caseHolds(trace, one) ? [one] : []));
  return [...held, ...unjudged.map(({ one }) => one)];
}

/** True for a change of what an overlay gave; of any where there is none. */
function isOfOverlays({ kind, before }: Change, { overlays }: Pack): boolean {
  const list = kind === 'limit' ? 'parameters' : 'rules';
  return overlays?.some(({ changed }) => changed[list].includes(before.id)) ?? true;
}

/** True where some case does not come out as it says after a change. */
export function someCaseNotices(pack: Pack, change: Change, traced: readonly TracedCase[]): boolean {
  const changed = applyChange(pack, change);
  if (change.kind === 'limit' && Object.hasOwn(neededParameters, change.before.id)) {
    const resolved: readonly ResolvedCase[] = traced.map(({ one }) => resolveCase(one, { ...pack, ...changed }));
    return traceCases(changed, resolved).some(({ trace, one }) => !caseHolds(trace, one));
  }
  for (const { trace, one } of tracesAfter(changed, affectedBy(pack, change), traced)) {
    if (!caseHolds(trace, one)) return true;
  }
  return false;
}
