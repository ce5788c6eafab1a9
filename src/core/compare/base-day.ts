import { isLoamwardError } from '../errors/coded-error.ts';
import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { compiledByDay } from '../outlook/compiled-by-day.ts';
import type { Cell } from '../rules/mutate/cells.ts';
import type { PackCase } from '../rules/pack-types.ts';
import { fullest } from '../rules/plain-day.ts';
import { resolveOnBoth } from './case-facts.ts';
import { judgePair, pairRules, type RulePair } from './judge-pair.ts';
import type { GivenFacts, Sides } from './types.ts';

/** A fact moved to one of its cells. */
export interface Moved {
  readonly fact: FactId;
  readonly cell: Cell;
}

/** A case with the rules of its day. */
export interface BaseDay {
  readonly one: PackCase;
  readonly day: string;
  /** As A sees them; those that only B knows as B does. */
  readonly facts: ResolvedFacts;
  readonly rules: RulePair;
}

/** Most facts that are moved to make a day good. */
const mostMoved = 6;

/** The fullest case among those that most of the two rule sets call spray today; null where neither has one that can be judged. */
export function baseOf(sides: Sides): BaseDay | null {
  const { a, b } = sides;
  const [onA, onB] = [compiledByDay(a.pack), compiledByDay(b.pack)];
  const judged = [...a.cases, ...b.cases].flatMap((one) => {
    try {
      const both = resolveOnBoth(one, sides);
      const { day } = both;
      const rules = pairRules(onA(day), onB(day));
      const facts = { ...both.b, ...both.a };
      return [{ facts: one.facts, base: { one, day, facts, rules }, well: wellIn(rules, facts) }];
    } catch (error) {
      if (!isLoamwardError(error)) throw error;
      return [];
    }
  });
  const most = Math.max(...judged.map(({ well }) => well));
  return fullest(judged.filter(({ well }) => well === most))?.base ?? null;
}

/**
 * The facts of a day with as few moved, one after another, as bring it to spray today under both rule sets, each to a plain value;
 * as near as that goes where none does.
 */
export function makeWell(
  rules: RulePair,
  facts: ResolvedFacts,
  moves: readonly Moved[],
): { readonly facts: ResolvedFacts; readonly moved: GivenFacts } {
  let best = { facts, moved: {} as GivenFacts, bad: badIn(rules, facts) };
  const plain = moves.filter(({ cell }) => cell.cost === 0);
  for (let round = 0; round < mostMoved; round += 1) {
    let next = best;
    for (const { fact, cell } of plain) {
      const moved = { ...best.facts, [fact]: cell.resolved };
      const bad = badIn(rules, moved);
      if (bad < next.bad) next = { facts: moved, moved: { ...best.moved, [fact]: cell.given }, bad };
    }
    if (next === best) break;
    best = next;
  }
  return { facts: best.facts, moved: best.moved };
}

function wellIn(rules: RulePair, facts: ResolvedFacts): number {
  const { a, b } = judgePair(rules, facts);
  return [a, b].filter(({ verdict }) => verdict === 'spray-today').length;
}

/** How many stops and holds of both stand in the way. */
function badIn(rules: RulePair, facts: ResolvedFacts): number {
  const { a, b } = judgePair(rules, facts);
  const count = (set: RulePair['a'], outcomes: readonly string[]) =>
    set.rules.filter(({ rule: { effect } }, at) => effect !== 'advise' && outcomes[at] !== 'not-met').length;
  return count(rules.a, a.outcomes) + count(rules.b, b.outcomes);
}
