import type { PackCase } from '../../rules/pack-types.ts';
import type { Outcome, Trace } from '../../rules/trace-types.ts';
import type { Lifts } from '../../rules/types.ts';
import type { VerdictWord } from '../types.ts';
import { usefulFacts } from '../useful.ts';
import { verdictWord } from '../verdict-of.ts';

/** What a case is judged by, each list in order: what it says, or what a trace gives for it. */
export interface CaseOutcome {
  readonly verdict: VerdictWord;
  /** Every stop and hold that is met, and the advice that the case names. */
  readonly met: readonly string[];
  readonly notMet: readonly string[];
  readonly unknown: readonly string[];
  /** Facts that could still change the verdict, of those that the case names. */
  readonly missing: readonly string[];
  /** What lifts a rule that is met, of the rules that the case names so. */
  readonly lifts: Readonly<Record<string, Lifts | null>>;
}

/** What a case says. */
export function expectedOf({ expect }: Pick<PackCase, 'expect'>): CaseOutcome {
  const { verdict, met = [], notMet = [], unknown = [], missing = [], lifts = {} } = expect;
  return {
    verdict,
    met: met.toSorted(),
    notMet: notMet.toSorted(),
    unknown: unknown.toSorted(),
    missing: missing.toSorted(),
    lifts,
  };
}

/** The same of a trace, looking only at what the case names beyond verdict and the stops and holds that are met. */
export function givenBy(trace: Trace, { expect }: Pick<PackCase, 'expect'>): CaseOutcome {
  const named = (outcome: Outcome, among: readonly string[] = []) =>
    trace.filter((rule) => rule.outcome === outcome && among.includes(rule.rule)).map(({ rule }) => rule);
  const blocking = trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'met');
  const met = new Set([...blocking.map(({ rule }) => rule), ...named('met', expect.met)]);
  const lifts = Object.keys(expect.lifts ?? {}).map((id) => {
    const rule = trace.find((one) => one.rule === id && one.outcome === 'met');
    return [id, rule?.lifts ?? null] as const;
  });
  return {
    verdict: verdictWord(trace),
    met: [...met].sort(),
    notMet: named('not-met', expect.notMet).sort(),
    unknown: named('unknown', expect.unknown).sort(),
    missing: expect.missing === undefined ? [] : usefulAmong(expect.missing, trace),
    lifts: Object.fromEntries(lifts),
  };
}

function usefulAmong(named: readonly string[], trace: Trace): readonly string[] {
  const useful: ReadonlySet<string> = usefulFacts(trace);
  return named.filter((fact) => useful.has(fact)).toSorted();
}

/** True where a trace gives what a case says, but for the dose. */
export function caseHolds(trace: Trace, one: Pick<PackCase, 'expect'>): boolean {
  return JSON.stringify(givenBy(trace, one)) === JSON.stringify(expectedOf(one));
}
