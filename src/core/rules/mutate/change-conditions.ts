import type { FactId } from '../../facts/registry/index.ts';
import type { FactDefinition } from '../../facts/types.ts';
import { membersOf, operatorOf } from '../reads.ts';
import type { Comparison, Condition } from '../types.ts';
import type { ChangeKind } from './types.ts';

/** Looks a fact up in the registry. */
export type DefinitionOf = (id: FactId) => FactDefinition;

/** A condition with one thing in it changed. */
export interface ChangedCondition {
  readonly kind: Extract<ChangeKind, 'operator' | 'choice' | 'connective' | 'negation' | 'member' | 'reference'>;
  readonly when: Condition;
}

const swapped: Readonly<Record<string, string>> = {
  above: 'atLeast',
  atLeast: 'above',
  below: 'atMost',
  atMost: 'below',
  is: 'isNot',
  isNot: 'is',
  oneOf: 'noneOf',
  noneOf: 'oneOf',
};

const connectives: Readonly<Record<string, readonly string[]>> = {
  all: ['any'],
  any: ['all'],
  eitherOf: ['all', 'any'],
};

/**
 * Every single change of a condition: each operator swapped for its neighbour, each choice for each other, each connective for
 * the other, each `not` taken away or put in, each member or reference left out. Rules that it names are not changed here.
 */
export function changeCondition(condition: Condition, definitionOf: DefinitionOf): ChangedCondition[] {
  return [...changeHere(condition, definitionOf), ...changeInside(condition, definitionOf)];
}

function changeHere(condition: Condition, definitionOf: DefinitionOf): ChangedCondition[] {
  if ('not' in condition) return [{ kind: 'negation', when: condition.not }];
  const negated: ChangedCondition = { kind: 'negation', when: { not: condition } };
  if ('rule' in condition) return [negated];
  if ('fact' in condition) return [negated, ...changeComparison(condition, definitionOf)];
  const group = Object.keys(condition)[0] ?? '';
  const members = membersOf(condition);
  const joined = (connectives[group] ?? []).map(
    (other): ChangedCondition => ({ kind: 'connective', when: groupOf(other, members) }),
  );
  if (members.length < 2) return [negated];
  const left = members.map(
    (member, out): ChangedCondition => ({
      kind: 'rule' in member ? 'reference' : 'member',
      when: groupOf(
        group,
        members.filter((_, at) => at !== out),
      ),
    }),
  );
  return [negated, ...joined, ...left];
}

function changeInside(condition: Condition, definitionOf: DefinitionOf): ChangedCondition[] {
  if ('fact' in condition || 'rule' in condition) return [];
  if ('not' in condition) {
    return changeCondition(condition.not, definitionOf)
      .filter(({ when }) => !('not' in when))
      .map(({ kind, when }) => ({ kind, when: { not: when } }));
  }
  const group = Object.keys(condition)[0] ?? '';
  const members = membersOf(condition);
  return members.flatMap((member, at) =>
    changeCondition(member, definitionOf).map(({ kind, when }) => ({
      kind,
      when: groupOf(group, members.with(at, when)),
    })),
  );
}

function changeComparison(comparison: Comparison, definitionOf: DefinitionOf): ChangedCondition[] {
  const { fact } = comparison;
  const { op, operand } = operatorOf(comparison);
  const other = swapped[op];
  const operator = other === undefined ? [] : [{ kind: 'operator' as const, when: comparisonOf(fact, other, operand) }];
  const all = definitionOf(fact).choices ?? [];
  const operands =
    op === 'is' || op === 'isNot' || op === 'has'
      ? all.filter((choice) => choice !== operand)
      : Array.isArray(operand)
        ? changeList(operand as readonly string[], all)
        : [];
  const choices = operands.map((each) => ({ kind: 'choice' as const, when: comparisonOf(fact, op, each) }));
  return [...operator, ...choices];
}

/** A list with one entry left out (never the last one) or one of the others put in. */
export function changeList(list: readonly string[], all: readonly string[]): (readonly string[])[] {
  const fewer = list.length < 2 ? [] : list.map((_, out) => list.filter((__, at) => at !== out));
  const more = all.filter((each) => !list.includes(each)).map((each) => [...list, each]);
  return [...fewer, ...more];
}

function groupOf(group: string, members: readonly Condition[]): Condition {
  return { [group]: members } as unknown as Condition;
}

function comparisonOf(fact: FactId, op: string, operand: unknown): Condition {
  return { fact, [op]: operand } as unknown as Condition;
}
