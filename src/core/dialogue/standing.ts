import { localDate } from '../facts/local-day.ts';
import type { FactId } from '../facts/registry/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Unknown } from '../facts/types.ts';
import { compileRules } from '../rules/compile.ts';
import type { Pack } from '../rules/pack-types.ts';
import { evaluateReference } from '../rules/reference.ts';
import type { Trace } from '../rules/trace-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { remember } from '../units/remember.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import { conflictsOf } from './conflicts.ts';
import { forecastStage } from './forecast-need.ts';
import { type Plan, planOf } from './plan.ts';
import { spentQuestions } from './spent.ts';
import type { State, StateObservation } from './state.ts';
import { tagOf } from './tag.ts';

/** What a state comes to under a pack: facts, trace, tag, what to ask. */
export interface Standing {
  readonly at: EpochSeconds;
  readonly facts: ResolvedFacts;
  readonly compiled: CompiledRules;
  readonly trace: Trace;
  /** Worked out when first asked for: while questions are open nothing is evaluated, and nobody asks. */
  readonly tag: string;
  readonly conflicts: ReadonlyMap<FactId, readonly StateObservation[]>;
  readonly plan: Plan;
  /** Understood with doubt, and spray today rests on it: read back first. */
  readonly doubtful: StateObservation | null;
}

/** Most days whose compiled rules are kept of a pack: a server may run for years. */
const mostDays = 64;
const compiledByPack = new WeakMap<Pack, (day: string) => CompiledRules>();
const standings = new WeakMap<State, { readonly pack: Pack; readonly standing: Standing | null }>();

/** What a state comes to; null before the start. The same state and pack give the same object. */
export function standingOf(state: State, pack: Pack): Standing | null {
  const known = standings.get(state);
  if (known?.pack === pack) return known.standing;
  const standing = state.at === null ? null : workOut(state, state.at, pack);
  standings.set(state, { pack, standing });
  return standing;
}

/** The same state with something changed that no standing reads (notes, the question last put): it need not be worked out again. */
export function keepStanding(before: State, after: State): State {
  const known = standings.get(before);
  if (known) standings.set(after, known);
  return after;
}

/** The rules of a pack on the day of a moment in the pack's zone; compiled once a day and pack while it is among the days kept. */
export function compiledFor(pack: Pack, at: EpochSeconds): CompiledRules {
  const compiledOn = compiledByPack.get(pack) ?? remember((day: string) => compileRules(pack, day), mostDays);
  compiledByPack.set(pack, compiledOn);
  return compiledOn(localDate(at, pack.zone));
}

function workOut(state: State, at: EpochSeconds, pack: Pack): Standing {
  const compiled = compiledFor(pack, at);
  const { parameters, registry } = compiled;
  const matters = new Set(
    compiled.rules.flatMap((one) => (one.rule.effect === 'advise' ? [] : factsOf(one.condition))),
  );
  const conflicts = conflictsOf({
    observations: state.observations,
    at,
    zone: pack.zone,
    parameters,
    registry,
    matters,
  });
  const judge = (observations: readonly StateObservation[]) => {
    const settled = observations.filter(({ fact }) => !conflicts.has(fact));
    const resolved = resolveFacts({
      observations: settled,
      forecast: state.forecast,
      at,
      zone: pack.zone,
      parameters,
      registry,
    });
    const facts = { ...resolved, ...Object.fromEntries([...conflicts.keys()].map((fact) => [fact, inConflict])) };
    return { facts, trace: evaluateReference(compiled, facts) };
  };
  const { facts, trace } = judge(state.observations);
  let tag: string | null = null;
  return {
    at,
    facts,
    compiled,
    trace,
    get tag() {
      tag ??= tagOf(pack.hash, facts);
      return tag;
    },
    conflicts,
    plan: planOf(pack, trace, facts, {
      spent: spentQuestions(state.answered, pack, facts),
      checkRest: state.checkRest,
      wantsDose: state.wantsDose,
      current: state.asked,
      forecast: forecastStage(state, facts, parameters),
    }),
    doubtful: verdictWord(trace) === 'spray-today' ? restsOnDoubt(state.observations, judge) : null,
  };
}

const inConflict: Unknown = { known: false, reason: 'in-conflict' };

/** What was doubted and must be read back: without it, and without the older answers that it took the place of, no spray-today. */
function restsOnDoubt(
  observations: readonly StateObservation[],
  judge: (observations: readonly StateObservation[]) => { readonly trace: Trace },
): StateObservation | null {
  const doubtful = observations.filter((one) => one.doubtful);
  const bears = (doubted: readonly StateObservation[]): boolean => {
    const left = observations.filter((one) => !doubted.some(({ fact, at }) => one.fact === fact && one.at <= at));
    return verdictWord(judge(left).trace) !== 'spray-today';
  };
  const alone = doubtful.find((one) => bears([one]));
  return alone ?? (doubtful.length > 1 && bears(doubtful) ? (doubtful[0] ?? null) : null);
}

function factsOf(condition: CompiledRules['rules'][number]['condition']): FactId[] {
  if (condition.kind === 'comparison') return [condition.fact];
  return 'member' in condition ? factsOf(condition.member) : condition.members.flatMap(factsOf);
}
