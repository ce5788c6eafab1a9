import type { FactId } from '../facts/registry/index.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { CompiledRules, Effect } from '../rules/types.ts';
import type { Tour } from './types.ts';

/** Columns of the picture, in the direction in which a question works. */
export const columns = ['question', 'fact', 'rule', 'effect'] as const;
/** A column of the picture. */
export type Column = (typeof columns)[number];

/** One thing of the picture with what it is linked to in the column before and after, in the order of that column. */
export interface GraphNode {
  /** Column and name: "rule:too-windy". */
  readonly id: string;
  readonly column: Column;
  readonly name: string;
  readonly back: readonly string[];
  readonly on: readonly string[];
}

/** The rule set as a picture: questions, facts, rules, effects. */
export type RuleGraph = ReadonlyMap<string, GraphNode>;

/** Id of a thing in the picture. */
export function nodeId(column: Column, name: string): string {
  return `${column}:${name}`;
}

const effects: readonly Effect[] = ['stop', 'hold', 'advise'];

/** Everything that rules hang on, linked: each question of the tour, each fact asked or read, each rule, each effect. */
export function ruleGraph(pack: Pick<Pack, 'questions'>, { rules }: CompiledRules, tour: Tour): RuleGraph {
  const factsOf = new Map(pack.questions.map(({ id, facts }) => [id, facts]));
  const questions = tour.steps.map(({ question }) => question);
  const facts = [
    ...new Set<FactId>([...tour.steps.flatMap((step) => step.facts), ...tour.unasked.map(({ fact }) => fact)]),
  ];
  const ruleOrder = [...rules].sort((a, b) => firstFact(a.facts, facts) - firstFact(b.facts, facts));
  const nodes = [
    ...questions.map((name) => node('question', name, [], ids('fact', factsOf.get(name) ?? []))),
    ...facts.map((name) =>
      node(
        'fact',
        name,
        ids(
          'question',
          questions.filter((one) => factsOf.get(one)?.includes(name)),
        ),
        ids(
          'rule',
          ruleOrder.filter((one) => one.facts.includes(name)).map(({ rule }) => rule.id),
        ),
      ),
    ),
    ...ruleOrder.map((one) =>
      node(
        'rule',
        one.rule.id,
        ids(
          'fact',
          facts.filter((fact) => one.facts.includes(fact)),
        ),
        ids('effect', [one.rule.effect]),
      ),
    ),
    ...effects.map((name) =>
      node(
        'effect',
        name,
        ids(
          'rule',
          ruleOrder.filter(({ rule }) => rule.effect === name).map(({ rule }) => rule.id),
        ),
        [],
      ),
    ),
  ];
  return new Map(nodes.map((one) => [one.id, one]));
}

function firstFact(read: readonly FactId[], facts: readonly FactId[]): number {
  return Math.min(...read.map((fact) => facts.indexOf(fact)));
}

function ids(column: Column, names: readonly string[]): string[] {
  return names.map((name) => nodeId(column, name));
}

function node(column: Column, name: string, back: readonly string[], on: readonly string[]): GraphNode {
  return { id: nodeId(column, name), column, name, back, on };
}
