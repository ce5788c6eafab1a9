import { type ErrorReport, isLoamwardError, reportOf } from '../errors/coded-error.ts';
import { localDate } from '../facts/local-day.ts';
import type { FactId } from '../facts/registry/index.ts';
import { compiledByDay } from '../outlook/compiled-by-day.ts';
import { parseInstant } from '../units/instant.ts';
import type { VerdictWord } from '../verdict/types.ts';
import { decidersOf, judgePair, pairRules, wayOf } from './judge-pair.ts';
import { newTally } from './tally.ts';
import type { SavedVerdict, Sides, Transition, Way } from './types.ts';

/** A saved verdict that comes out otherwise under A, under B, or than it did then. */
export interface VerdictDifference {
  /** Moment judged, ISO instant UTC. */
  readonly at: string;
  readonly saved: VerdictWord;
  readonly a: VerdictWord;
  readonly b: VerdictWord;
  readonly way: Way;
  /** Rules by which the verdict changed from A to B. */
  readonly by: readonly string[];
}

/** Saved verdicts that could not be judged, by why. */
export interface Unjudged {
  readonly error: ErrorReport;
  readonly count: number;
}

/** Both rule sets on verdicts of earlier conversations. */
export interface VerdictsCompared {
  readonly verdicts: number;
  /** From A to B. */
  readonly transitions: readonly Transition[];
  /** How many came out as A says now. */
  readonly asThen: number;
  readonly differing: readonly VerdictDifference[];
  /** Facts that rules read now and that some of the verdicts had not kept; they count as not known. */
  readonly notKept: readonly FactId[];
  readonly unjudged: readonly Unjudged[];
}

/**
 * Judges the facts that verdicts stood on, as they were resolved then, under both rule sets with the limits of that day. A verdict of
 * another pack, or of a day on which a limit is not in force, is not judged and counted with the reason.
 */
export function compareOnVerdicts({ a, b }: Sides, saved: readonly SavedVerdict[]): VerdictsCompared {
  const [onA, onB] = [compiledByDay(a.pack), compiledByDay(b.pack)];
  const tally = newTally();
  const differing: VerdictDifference[] = [];
  const notKept = new Set<FactId>();
  const unjudged = new Map<string, { error: ErrorReport; count: number }>();
  let asThen = 0;
  for (const { verdict, at, facts, pack } of saved) {
    try {
      if (pack.id !== a.pack.id && pack.id !== b.pack.id) throwAway(unjudged, otherPack(pack.id, a.pack.id));
      else {
        const day = localDate(parseInstant(at), a.pack.zone);
        const rules = pairRules(onA(day), onB(day));
        for (const { facts: read } of [...rules.a.rules, ...rules.b.rules]) {
          for (const id of read) if (facts[id] === undefined) notKept.add(id);
        }
        const judged = judgePair(rules, facts);
        const verdicts = { a: judged.a.verdict, b: judged.b.verdict };
        tally.add(verdicts);
        if (verdict === verdicts.a) asThen += 1;
        if (verdict === verdicts.a && verdict === verdicts.b) continue;
        differing.push({ at, saved: verdict, ...verdicts, way: wayOf(verdicts), by: decidersOf(rules, judged) });
      }
    } catch (error) {
      if (!isLoamwardError(error)) throw error;
      throwAway(unjudged, error.toJSON());
    }
  }
  return {
    verdicts: saved.length,
    transitions: tally.transitions(),
    asThen,
    differing,
    notKept: [...notKept],
    unjudged: [...unjudged.values()],
  };
}

function otherPack(came: string, expected: string): ErrorReport {
  return reportOf('PACK_UNKNOWN', { expected: `a verdict of ${expected}`, came });
}

function throwAway(unjudged: Map<string, { error: ErrorReport; count: number }>, error: ErrorReport): void {
  const key = JSON.stringify(error);
  unjudged.set(key, { error, count: (unjudged.get(key)?.count ?? 0) + 1 });
}
