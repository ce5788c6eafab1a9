import { planOf } from '../dialogue/plan.ts';
import type { FactId } from '../facts/registry/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { FactObservation, ResolvedFacts } from '../facts/resolved.ts';
import type { Pack, Question } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import type { RuleTrace, Trace } from '../rules/trace-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { usefulFacts } from '../verdict/useful.ts';
import type { GivenAnswer } from './answers.ts';
import type { After, RuleAfter, TourAnswer } from './types.ts';

/** What answers are judged in: the rules of a day, and a moment on it. */
export interface TourWorld {
  readonly pack: Pack;
  readonly compiled: CompiledRules;
  readonly at: EpochSeconds;
}

/** The facts where an answer is all that was said; the day is known always. */
export function factsAfter(gives: GivenAnswer['gives'], { pack, compiled, at }: TourWorld): ResolvedFacts {
  const observations = Object.entries(gives).map(
    ([fact, reading]): FactObservation => ({ fact, reading, at, source: 'said' }),
  );
  const { parameters, registry } = compiled;
  return resolveFacts({ observations, forecast: null, at, zone: pack.zone, parameters, registry });
}

/** What one answer opens or closes, as the evaluator has it. `before` is the trace with nothing answered. */
export function answerEffect(
  question: Question,
  { shape, gives }: GivenAnswer,
  before: Trace,
  world: TourWorld,
): TourAnswer {
  const facts = factsAfter(gives, world);
  const trace = evaluateReference(world.compiled, facts);
  const plan = planOf(world.pack, trace, facts, {
    spent: new Set([question.id]),
    checkRest: false,
    wantsDose: false,
    forecast: 'failed',
  });
  const held = trace.some(({ effect, outcome }) => effect !== 'advise' && outcome === 'met');
  const after: After = plan.question === null ? 'ends' : held ? 'waits' : 'asks-on';
  const rules = trace.filter((rule, at) => reads(rule, question) || differs(rule, before[at]));
  return {
    shape,
    rules: rules.map(ruleAfter),
    after,
    closes: after === 'asks-on' ? closedBy(trace, before, question, world.pack) : [],
  };
}

function reads({ facts }: RuleTrace, question: Question): boolean {
  return question.facts.some((fact) => facts.includes(fact));
}

function differs(after: RuleTrace, before: RuleTrace | undefined): boolean {
  return before === undefined || after.outcome !== before.outcome || waits(after).length !== waits(before).length;
}

function ruleAfter(rule: RuleTrace): RuleAfter {
  return { rule: rule.rule, outcome: rule.outcome, waitsFor: waits(rule) };
}

/** Facts on which a rule hangs, advice too. */
function waits(rule: RuleTrace): readonly FactId[] {
  return [...usefulFacts([{ ...rule, effect: 'stop' }])];
}

function closedBy(after: Trace, before: Trace, question: Question, { questions }: Pack): string[] {
  const was = usefulFacts(before);
  const now = usefulFacts(after);
  return questions
    .filter(({ id, facts }) => id !== question.id && facts.some((fact) => was.has(fact)))
    .filter(({ facts }) => !facts.some((fact) => now.has(fact)))
    .map(({ id }) => id);
}
