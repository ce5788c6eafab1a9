import type { Effect, Lifts, Rule } from '../types.ts';
import { changeCondition, type DefinitionOf } from './change-conditions.ts';
import { changeLimit, factsByParameter } from './change-limits.ts';
import type { Change, RuleSet } from './types.ts';

const effects: readonly Effect[] = ['stop', 'hold', 'advise'];
const allLifts: readonly Lifts[] = ['hours', 'days', 'person', 'season'];

/** Every single change of a rule set, each once: limits in the order of parameters, then rules in theirs. */
export function changesOf({ rules, parameters }: RuleSet, definitionOf: DefinitionOf): Change[] {
  const facts = factsByParameter(rules);
  const limits = parameters.flatMap((before) => {
    const read = facts.get(before.id);
    return read
      ? changeLimit(before, read, definitionOf).map((after) => ({ kind: 'limit' as const, before, after }))
      : [];
  });
  return [...limits, ...rules.flatMap((rule) => changeRule(rule, definitionOf))];
}

/** Every single change of one rule: of its condition, each once, of its effect and of what lifts it. */
export function changeRule(before: Rule, definitionOf: DefinitionOf): Change[] {
  const seen = new Set([JSON.stringify(before.when)]);
  const conditions = changeCondition(before.when, definitionOf).flatMap(({ kind, when }) => {
    const key = JSON.stringify(when);
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ kind, before, after: { ...before, when } }];
  });
  const otherEffects = effects
    .filter((effect) => effect !== before.effect)
    .map((effect) => {
      const lifts = effect === 'advise' ? null : (before.lifts ?? 'days');
      return { kind: 'effect' as const, before, after: { ...before, effect, lifts } };
    });
  const otherLifts = (before.lifts === null ? [] : allLifts)
    .filter((lifts) => lifts !== before.lifts)
    .map((lifts) => ({ kind: 'lifts' as const, before, after: { ...before, lifts } }));
  return [...conditions, ...otherEffects, ...otherLifts];
}
