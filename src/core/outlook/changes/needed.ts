import { definitionIn, type FactRegistry } from '../../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../../facts/resolved.ts';
import type { FactDefinition } from '../../facts/types.ts';
import { outcomeOf } from '../../rules/outcome.ts';
import type { CompiledRule, CompiledRules, Lifts } from '../../rules/types.ts';
import type { EpochSeconds } from '../../units/brands.ts';
import type { NeededChange } from '../types.ts';
import { applyChange } from './apply.ts';
import { distanceOf, type LeafChange } from './leaf.ts';
import { leastChanges } from './ways.ts';

/** What changes are looked for from. */
export interface ChangesInput {
  readonly compiled: CompiledRules;
  readonly facts: ResolvedFacts;
  readonly at: EpochSeconds;
  /** The day at the field, YYYY-MM-DD. */
  readonly today: string;
  /** First hour of the forecast at which a rule no longer holds for certain; null where there is none. */
  readonly forecastAt: (rule: string) => EpochSeconds | null;
}

interface Step {
  readonly from: CompiledRule;
  readonly change: LeafChange;
}

/** For each stop and hold that is met the least changes that lift it, in the order of the rules; several where one is not enough. */
export function changesByRule(input: ChangesInput): NeededChange[] {
  return blockingRules(input.compiled, input.facts).flatMap((rule) =>
    stepsFor(rule, input.facts, input).map((step) => neededOf(step, input)),
  );
}

/**
 * The smallest set of changes after which no stop or hold is met: least changes rule by rule, judged anew after each, then
 * every one dropped that is not needed. What a set leaves unknown is for asking. Empty where nothing blocks or nothing helps.
 */
export function smallestSetOf(input: ChangesInput): NeededChange[] {
  const { compiled, facts, at } = input;
  let steps: readonly Step[] = [];
  for (let round = 0; round <= 2 * compiled.rules.length; round += 1) {
    const now = applyAll(facts, steps, at, compiled.registry);
    const [rule] = blockingRules(compiled, now);
    if (rule === undefined) break;
    steps = [...steps, ...stepsFor(rule, now, input)];
  }
  if (blockingRules(compiled, applyAll(facts, steps, at, compiled.registry)).length > 0) return [];
  return withoutNeedless(steps, input).map((step) => neededOf(step, input));
}

function withoutNeedless(steps: readonly Step[], { compiled, facts, at }: ChangesInput): readonly Step[] {
  return steps.reduce((kept, step) => {
    const without = kept.filter((other) => other !== step);
    return blockingRules(compiled, applyAll(facts, without, at, compiled.registry)).length === 0 ? without : kept;
  }, steps);
}

function applyAll(
  facts: ResolvedFacts,
  steps: readonly Step[],
  at: EpochSeconds,
  registry: FactRegistry,
): ResolvedFacts {
  return steps.reduce((sofar, { change }) => applyChange(sofar, change, at, registry), facts);
}

function blockingRules({ rules }: CompiledRules, facts: ResolvedFacts): CompiledRule[] {
  return rules.filter(({ rule, condition }) => rule.effect !== 'advise' && outcomeOf(condition, facts) === 'met');
}

function stepsFor(rule: CompiledRule, facts: ResolvedFacts, { today, compiled }: ChangesInput): Step[] {
  const date = resolvedFact(facts, 'date');
  const day = date.known && date.type === 'date' ? date.iso : today;
  return (leastChanges(rule.condition, false, { facts, today: day, registry: compiled.registry }) ?? []).map(
    (change) => ({ from: rule, change }),
  );
}

function neededOf({ from, change }: Step, { facts, compiled, forecastAt }: ChangesInput): NeededChange {
  const { fact, how, to } = change;
  const now = resolvedFact(facts, fact);
  const definition = definitionIn(compiled.registry, fact);
  return {
    rule: from.rule.id,
    fact,
    unit: definition.unit,
    now,
    how,
    to,
    by: distanceOf(change, now),
    lifts: liftsOf(definition, from.rule.lifts ?? 'days'),
    forecastAt: forecastAt(from.rule.id),
  };
}

/** What brings a change of this fact: weather within hours where it is weather, whatever else holds its rule for days. */
function liftsOf({ forecastAt, forecast }: FactDefinition, ofRule: Lifts): Lifts {
  return ofRule === 'days' && (forecastAt ?? forecast) !== undefined ? 'hours' : ofRule;
}
