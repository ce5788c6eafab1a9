import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { CompiledCondition, Limit } from './types.ts';

/** Which of a rule's two engine rules: whether it is surely met, or possibly. */
export type Mode = 'surely' | 'possibly';

/** A condition in the engine's own form. */
export type EngineCondition =
  | { readonly fact: string; readonly operator: string; readonly value: Limit }
  | { readonly all: EngineCondition[] }
  | { readonly any: EngineCondition[] }
  | { readonly not: EngineCondition };

/** Engine fact that holds the choice `yes`: what is always or never so is asked of it. */
export const constantFact = '(constant)';

/** The condition for one mode. `not` swaps the modes; absent members of an eitherOf are left out first. */
export function engineCondition(condition: CompiledCondition, mode: Mode, facts: ResolvedFacts): EngineCondition {
  switch (condition.kind) {
    case 'comparison':
      return { fact: condition.fact, operator: `${mode} ${condition.op}`, value: condition.limit };
    case 'not':
      return { not: engineCondition(condition.member, mode === 'surely' ? 'possibly' : 'surely', facts) };
    case 'rule':
      return engineCondition(condition.member, mode, facts);
    case 'eitherOf': {
      const present = condition.members.filter((member) => isPresent(member, facts));
      if (present.length === 0) return constantCondition(mode === 'possibly');
      return { any: present.map((member) => engineCondition(member, mode, facts)) };
    }
    case 'all':
      return { all: condition.members.map((member) => engineCondition(member, mode, facts)) };
    case 'any':
      return { any: condition.members.map((member) => engineCondition(member, mode, facts)) };
  }
}

/** The condition as the root of an engine rule, which must be a group. */
export function engineRoot(condition: EngineCondition): Exclude<EngineCondition, { fact: string }> {
  return 'fact' in condition ? { all: [condition] } : condition;
}

/** True where a condition depends on which facts are known, through an eitherOf. */
export function hasEitherOf(condition: CompiledCondition): boolean {
  if (condition.kind === 'comparison') return false;
  if (condition.kind === 'not' || condition.kind === 'rule') return hasEitherOf(condition.member);
  return condition.kind === 'eitherOf' || condition.members.some(hasEitherOf);
}

function isPresent(member: CompiledCondition, facts: ResolvedFacts): boolean {
  return member.kind !== 'comparison' || resolvedFact(facts, member.fact).known;
}

function constantCondition(holds: boolean): EngineCondition {
  return { fact: constantFact, operator: 'surely is', value: { kind: 'choices', values: [holds ? 'yes' : 'no'] } };
}
