import { factsBehind } from '../facts/derive/reads.ts';
import { definitionIn, type FactId, type FactRegistry } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { Pack, Question } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import type { RuleTrace, Trace } from '../rules/trace-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import { usefulFacts } from '../verdict/useful.ts';
import { questionsInOrder } from './asking-order.ts';
import { deferredFacts } from './deferred.ts';

/** What was answered and asked for so far. */
export interface PlanState {
  /** Ids of questions that are not asked again: answered, or answered by "don't know". */
  readonly spent: ReadonlySet<string>;
  /** True where the person wants the rest too although the answer is sure. */
  readonly checkRest: boolean;
  readonly wantsDose: boolean;
  /** Id of the question that stands open; it stays as long as it still matters, so that it does not change under a person's hand. */
  readonly current?: string | null;
  /** `no-place`: it could be fetched if the place were known. */
  readonly forecast: 'no-place' | 'coming' | 'there' | 'failed';
}

/** What to do next. */
export interface Plan {
  readonly question: Question | null;
  /** Questions that go together with it and are open too: shown beside it. */
  readonly together: readonly Question[];
  /** True where only the forecast under way keeps the questions from going on or ending. */
  readonly waitsForForecast: boolean;
  /** True where more could be asked although the answer is already sure; not past a stop that holds all season. */
  readonly restLeft: boolean;
}

/**
 * The next question: the cheapest (effort, then group, then order in the pack) that can still change the verdict given what is
 * known; null where none can. A met stop ends the questions; a met hold ends them once the stops of the season and the holds
 * that a person lifts are known too.
 */
export function nextQuestion(
  pack: Pack,
  compiled: CompiledRules,
  facts: ResolvedFacts,
  state: PlanState,
): Question | null {
  return planOf(pack, evaluateReference(compiled, facts), facts, state).question;
}

/** The next question with what stands beside it, from the trace of the facts. */
export function planOf(pack: Pack, trace: Trace, facts: ResolvedFacts, state: PlanState): Plan {
  const { question, together, waits } = choose(pack, facts, askedRules(trace, state.checkRest), state);
  const isOver = trace.some((rule) => rule.effect === 'stop' && rule.lifts === 'season' && rule.outcome === 'met');
  const restLeft =
    question === null && !isOver && choose(pack, facts, askedRules(trace, true), state).question !== null;
  if (question !== null || waits) return { question, together, waitsForForecast: waits, restLeft };
  const dose = doseQuestions(pack, trace, facts, state);
  const first = cheapest(dose, pack);
  return { question: first, together: besides(first, dose), waitsForForecast: false, restLeft };
}

/** The unknown stops and holds whose facts are asked for. */
function askedRules(trace: Trace, checkRest: boolean): RuleTrace[] {
  const unknown = trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'unknown');
  if (checkRest) return unknown;
  if (trace.some(({ effect, outcome }) => effect === 'stop' && outcome === 'met')) return [];
  if (!trace.some(({ effect, outcome }) => effect === 'hold' && outcome === 'met')) return unknown;
  return unknown.filter(({ effect, lifts }) => (effect === 'stop' ? lifts === 'season' : lifts === 'person'));
}

function choose(
  pack: Pack,
  facts: ResolvedFacts,
  rules: readonly RuleTrace[],
  { spent, forecast, current }: PlanState,
): Pick<Plan, 'question' | 'together'> & { readonly waits: boolean } {
  const useful = usefulFacts(rules);
  const wanted = askableBehind(useful, pack);
  const open = pack.questions.filter(
    (question) => question.forDose !== true && question.form !== 'place' && !spent.has(question.id),
  );
  const helpful = open.filter((question) => question.facts.some((fact) => wanted.has(fact)));
  const byForecast = [...wanted].some((fact) => forecastMayTell(fact, pack.facts));
  const place = pack.questions.find(
    ({ id, form, facts: asked }) =>
      form === 'place' && !spent.has(id) && asked.some((fact) => !resolvedFact(facts, fact).known),
  );
  const placeHelps =
    place !== undefined && ((forecast === 'no-place' && byForecast) || place.facts.some((fact) => useful.has(fact)));
  const holdsBack = forecast === 'coming' || (forecast === 'no-place' && place !== undefined);
  const candidates = helpful.filter(
    ({ facts: asked }) => !holdsBack || asked.some((fact) => wanted.has(fact) && !forecastMayTell(fact, pack.facts)),
  );
  if (placeHelps) candidates.push(place);
  const next = inTurn(candidates, wanted, deferredFacts(rules));
  const question = next.find(({ id }) => id === current) ?? cheapest(next, pack);
  return {
    question,
    together: besides(question, candidates),
    waits: forecast === 'coming' && question === null && helpful.length > 0,
  };
}

/** The facts, and in the place of each that no question settles those that it is worked out from: Delta T from air and humidity. */
function askableBehind(useful: ReadonlySet<FactId>, { questions }: Pack): ReadonlySet<FactId> {
  const settled = new Set(questions.flatMap(({ facts }) => facts));
  return new Set([...useful].flatMap((fact) => (settled.has(fact) ? [fact] : [...factsBehind([fact])])));
}

/** The candidates without those that only settle facts whose turn has not come. */
function inTurn(
  candidates: readonly Question[],
  useful: ReadonlySet<FactId>,
  deferred: ReadonlySet<FactId>,
): readonly Question[] {
  return candidates.filter(
    ({ form, facts }) => form === 'place' || facts.some((fact) => useful.has(fact) && !deferred.has(fact)),
  );
}

/** Facts worked out from a forecast where there is one. */
const workedOutFromForecast: readonly FactId[] = ['crop.frostOnLeaves', 'soil.drainsExpected7d', 'air.inversionRisk'];

/** True for a fact that a forecast may tell, so that nobody is asked before it has come or failed. */
function forecastMayTell(fact: FactId, registry: FactRegistry): boolean {
  return definitionIn(registry, fact).obtained.includes('forecast') || workedOutFromForecast.includes(fact);
}

function doseQuestions(pack: Pack, trace: Trace, facts: ResolvedFacts, { wantsDose, spent }: PlanState) {
  if (!wantsDose || trace.some(({ effect, outcome }) => effect === 'stop' && outcome === 'met')) return [];
  return pack.questions.filter(
    ({ id, forDose, facts: asked }) =>
      forDose === true && !spent.has(id) && asked.some((fact) => !resolvedFact(facts, fact).known),
  );
}

/** The first of the open questions that a question names as going with it; two on a card are enough. */
function besides(question: Question | null, open: readonly Question[]): readonly Question[] {
  const named = question?.with?.flatMap((id) => open.find((one) => one.id === id) ?? []) ?? [];
  return named.slice(0, 1);
}

function cheapest(questions: readonly Question[], pack: Pack): Question | null {
  return questionsInOrder(pack).find((question) => questions.includes(question)) ?? null;
}
