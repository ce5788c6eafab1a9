import { type ErrorReport, isLoamwardError } from '../errors/coded-error.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { compiledByDay } from '../outlook/compiled-by-day.ts';
import type { PackCase } from '../rules/pack-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import { doseFor } from '../sprayer/dose.ts';
import { resolveOnBoth } from './case-facts.ts';
import { decidersOf, type Judgement, judgePair, pairRules, wayOf } from './judge-pair.ts';
import { newTally } from './tally.ts';
import type { Answer, Sides, Transition, Way } from './types.ts';

/** A case that comes out otherwise in anything: verdict, rules met, what lifts them, dose. */
export interface CaseDifference {
  readonly name: string;
  readonly file: string;
  readonly way: Way;
  readonly a: Answer;
  readonly b: Answer;
  /** Rules by which the verdict changed. */
  readonly by: readonly string[];
}

/** Something that could not be judged under both rule sets, and why. */
export interface NotJudged {
  readonly name: string;
  readonly error: ErrorReport;
}

/** Both rule sets on the cases of both. */
export interface CasesCompared {
  readonly transitions: readonly Transition[];
  readonly differing: readonly CaseDifference[];
  readonly notJudged: readonly NotJudged[];
}

/** Judges every case of both packs under both rule sets; a case that stands in both is judged once. */
export function compareOnCases(sides: Sides): CasesCompared {
  const { a, b } = sides;
  const [onA, onB] = [compiledByDay(a.pack), compiledByDay(b.pack)];
  const tally = newTally();
  const differing: CaseDifference[] = [];
  const notJudged: NotJudged[] = [];
  for (const one of casesOf([...a.cases, ...b.cases])) {
    try {
      const facts = resolveOnBoth(one, sides);
      const rules = pairRules(onA(facts.day), onB(facts.day));
      const judged = judgePair(rules, facts.a, facts.b);
      const verdicts = { a: judged.a.verdict, b: judged.b.verdict };
      tally.add(verdicts);
      const [before, after] = [answerOf(rules.a, judged.a, facts.a), answerOf(rules.b, judged.b, facts.b)];
      if (JSON.stringify(before) === JSON.stringify(after)) continue;
      const { name, file } = one;
      differing.push({ name, file, way: wayOf(verdicts), a: before, b: after, by: decidersOf(rules, judged) });
    } catch (error) {
      if (!isLoamwardError(error)) throw error;
      notJudged.push({ name: one.name, error: error.toJSON() });
    }
  }
  return { transitions: tally.transitions(), differing, notJudged };
}

/** What a rule set says of facts that it judged. */
export function answerOf(
  { rules, parameters }: CompiledRules,
  { verdict, outcomes }: Judgement,
  facts: ResolvedFacts,
): Answer {
  const met = rules.filter((_, at) => outcomes[at] === 'met').map(({ rule }) => rule);
  const lifts = met.flatMap(({ id, lifts: how }) => (how === null ? [] : [[id, how] as const]));
  return { verdict, met: met.map(({ id }) => id), lifts: Object.fromEntries(lifts), dose: doseFor(facts, parameters) };
}

function casesOf(all: readonly PackCase[]): readonly PackCase[] {
  const keyOf = ({ name, at, facts }: PackCase) => JSON.stringify([name, at, facts]);
  return [...new Map(all.toReversed().map((one) => [keyOf(one), one])).values()].toReversed();
}
