import { Engine, type RuleProperties } from 'json-rules-engine';
import { codedError } from '../errors/coded-error.ts';
import type { FactId } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import { constantFact, engineCondition, engineRoot, hasEitherOf, type Mode } from './engine-conditions.ts';
import { type EngineFact, engineFactOf, enginePairs } from './engine-operators.ts';
import type { Outcome } from './trace-types.ts';
import type { CompiledRule, CompiledRules } from './types.ts';

const modes = ['surely', 'possibly'] as const satisfies Mode[];

const builtInOperators = [
  'equal',
  'notEqual',
  'in',
  'notIn',
  'contains',
  'doesNotContain',
  'lessThan',
  'lessThanInclusive',
  'greaterThan',
  'greaterThanInclusive',
];

/** An engine rule and where its rule stands among the compiled ones. */
interface Prepared {
  readonly rules: readonly CompiledRule[];
  /** Engine rules, surely and possibly of each rule in turn; null where they depend on which facts are known. */
  readonly fixed: readonly (RuleProperties | null)[];
  readonly facts: readonly FactId[];
}

const preparedRules = new WeakMap<CompiledRules, Prepared>();

/**
 * Evaluates every rule by json-rules-engine: two engine rules each, surely and possibly; met = surely, not-met = not possibly,
 * else unknown. A new engine every time. Throws EVALUATION_INCOMPLETE unless every rule is accounted for twice, and
 * FACT_MALFORMED for a fact that is not well formed.
 */
export async function evaluateWithEngine(
  compiled: CompiledRules,
  facts: ResolvedFacts,
): Promise<ReadonlyMap<string, Outcome>> {
  const prepared = prepare(compiled);
  const engine = newEngine(engineRulesOf(prepared, facts));
  const result = await engine.run(engineFactsOf(prepared, facts));
  const answers = new Map<string, boolean>();
  for (const { event } of result.results) answers.set(event?.type ?? '', true);
  for (const { event } of result.failureResults) answers.set(event?.type ?? '', false);
  const outcomes = new Map<string, Outcome>();
  for (const { rule } of prepared.rules) outcomes.set(rule.id, outcomeOf(rule.id, answers));
  const came = result.results.length + result.failureResults.length;
  if (came !== 2 * outcomes.size) throw incomplete(`${2 * outcomes.size} answers`, String(came));
  return outcomes;
}

/** The engine's rules for these facts, for a measurement of the engine alone. */
export function engineRulesFor(compiled: CompiledRules, facts: ResolvedFacts): RuleProperties[] {
  return engineRulesOf(prepare(compiled), facts);
}

/** The engine's facts for these facts, for a measurement of the engine alone. */
export function engineFactsFor(compiled: CompiledRules, facts: ResolvedFacts): Record<string, EngineFact> {
  return engineFactsOf(prepare(compiled), facts);
}

/** A new engine with our strict operators and none of its own, no undefined facts, and no paths into facts. */
export function newEngine(rules: RuleProperties[]): Engine {
  const engine = new Engine(rules, { pathResolver: refusePath });
  for (const name of builtInOperators) engine.removeOperator(name);
  for (const [name, pair] of Object.entries(enginePairs)) {
    engine.addOperator(`surely ${name}`, pair[0]);
    engine.addOperator(`possibly ${name}`, pair[1]);
  }
  return engine;
}

function prepare(compiled: CompiledRules): Prepared {
  const ready = preparedRules.get(compiled);
  if (ready) return ready;
  const facts = new Set(compiled.rules.flatMap((rule) => rule.facts));
  const fixed = compiled.rules.flatMap((rule) =>
    modes.map((mode) => (hasEitherOf(rule.condition) ? null : engineRule(rule, mode, {}))),
  );
  const prepared = { rules: compiled.rules, fixed, facts: [...facts] };
  preparedRules.set(compiled, prepared);
  return prepared;
}

function engineRulesOf({ rules, fixed }: Prepared, facts: ResolvedFacts): RuleProperties[] {
  return rules.flatMap((rule, index) =>
    modes.map((mode, second) => fixed[2 * index + second] ?? engineRule(rule, mode, facts)),
  );
}

function engineRule({ rule, condition }: CompiledRule, mode: Mode, facts: ResolvedFacts): RuleProperties {
  return {
    conditions: engineRoot(engineCondition(condition, mode, facts)),
    event: { type: `${mode} ${rule.id}` },
  };
}

function engineFactsOf({ facts: read }: Prepared, facts: ResolvedFacts): Record<string, EngineFact> {
  const values: Record<string, EngineFact> = { [constantFact]: { known: true, possible: ['yes'], sure: null } };
  for (const id of read) values[id] = engineFactOf(resolvedFact(facts, id));
  return values;
}

function outcomeOf(id: string, answers: ReadonlyMap<string, boolean>): Outcome {
  const surely = answers.get(`surely ${id}`);
  const possibly = answers.get(`possibly ${id}`);
  if (surely === undefined || possibly === undefined || (surely && !possibly)) {
    throw incomplete(`surely and possibly of ${id}`, `surely ${surely}, possibly ${possibly}`, id);
  }
  if (surely) return 'met';
  return possibly ? 'unknown' : 'not-met';
}

function refusePath(_value: object, path: string): never {
  throw codedError('FACT_MALFORMED', { expected: 'no path into a fact', came: path });
}

function incomplete(expected: string, came: string, rule?: string) {
  return codedError('EVALUATION_INCOMPLETE', { expected, came, ...(rule === undefined ? {} : { rule }) });
}
