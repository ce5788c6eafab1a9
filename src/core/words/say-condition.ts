import type { CompiledCondition } from '../rules/types.ts';
import type { Catalogue } from './catalogue.ts';
import type { DefinitionOf } from './phrases.ts';
import { sayComparison } from './say-comparison.ts';

/** What sentences about rules are said with: names of facts and titles of the rules that a condition names. */
export interface SayWorld {
  readonly definitionOf: DefinitionOf;
  /** The title of a rule in the language of the words. */
  readonly titleOf: (rule: string) => string;
}

/** One line of a rule told in lines; `depth` is 0 for the outermost. */
export interface SaidLine {
  readonly depth: number;
  readonly text: string;
}

/** Longest part of a condition that stands on one line, in characters. */
const longestLine = 140;

/**
 * A condition as running text, made from its structure alone. Groups within groups stand in brackets, so that no two conditions
 * that differ in operator, limit, connective or member read the same.
 */
export function sayCondition(condition: CompiledCondition, world: SayWorld, words: Catalogue): string {
  return inline(condition, world, words, false);
}

/** The same cut into lines where it is long: a lead such as "any of these holds:", then its members one step deeper. */
export function sayConditionLines(
  condition: CompiledCondition,
  world: SayWorld,
  words: Catalogue,
  depth = 0,
): SaidLine[] {
  const text = inline(condition, world, words, false);
  if (text.length <= longestLine || condition.kind === 'comparison') return [{ depth, text }];
  const lead = leadOf(condition, world, words);
  if ('member' in condition) {
    return sayConditionLines(condition.member, world, words, depth).map((line, at) =>
      at === 0 ? { depth, text: `${lead} ${line.text}` } : line,
    );
  }
  const inner = condition.members.flatMap((member) => sayConditionLines(member, world, words, depth + 1));
  return [{ depth, text: lead }, ...inner];
}

type Group = Exclude<CompiledCondition, { kind: 'comparison' }>;

function leadOf(condition: Group, world: SayWorld, words: Catalogue): string {
  const { say } = words;
  if (condition.kind === 'rule') return say.rule.lead(world.titleOf(condition.rule), condition.rule);
  return acrossNewYear(condition, say[condition.kind].lead, words);
}

function inline(condition: CompiledCondition, world: SayWorld, words: Catalogue, nested: boolean): string {
  const { say } = words;
  const inside = (member: CompiledCondition) => inline(member, world, words, false);
  switch (condition.kind) {
    case 'comparison':
      return sayComparison(condition, world.definitionOf, words);
    case 'not':
      return say.not.whole(inside(condition.member));
    case 'rule':
      return say.rule.whole(world.titleOf(condition.rule), condition.rule, inside(condition.member));
    case 'eitherOf':
      return say.eitherOf.whole(
        condition.members.map((member) => inline(member, world, words, true)).join(say.eitherOf.joiner),
      );
    default: {
      const { joiner, one } = say[condition.kind];
      const isOne = condition.members.length === 1;
      const text = condition.members.map((member) => inline(member, world, words, !isOne)).join(joiner);
      if (isOne) return one(text);
      const whole = acrossNewYear(condition, text, words);
      return nested ? `(${whole})` : whole;
    }
  }
}

/** Marks days before one date or after a later one, which together run across the new year. */
function acrossNewYear(condition: Group, text: string, words: Catalogue): string {
  if (condition.kind !== 'any' || condition.members.length !== 2) return text;
  const day = (...ops: readonly string[]) =>
    condition.members.flatMap((member) =>
      member.kind === 'comparison' && member.limit.kind === 'month-day' && ops.includes(member.op)
        ? [member.limit.value]
        : [],
    )[0];
  const [from, until] = [day('above', 'atLeast'), day('below', 'atMost')];
  return (from ?? 0) > (until ?? Number.POSITIVE_INFINITY) ? words.say.acrossNewYear(text) : text;
}
