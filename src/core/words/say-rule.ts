import type { CompiledRule, Rule } from '../rules/types.ts';
import type { Parameter } from '../units/parameter.ts';
import type { Catalogue } from './catalogue.ts';
import { describeParameter } from './fill.ts';
import { type SaidLine, type SayWorld, sayCondition, sayConditionLines } from './say-condition.ts';
import { showDay } from './times.ts';

/** A rule told from its structure: one sentence, and the same in lines where it is long. */
export interface SaidRule {
  readonly rule: string;
  /** "Holds (lifts in days): when soil temperature at 30 cm is above 10 C (soilTemperatureMaxC)." */
  readonly sentence: string;
  readonly lines: readonly SaidLine[];
}

/**
 * What a rule does, what lifts it and when it is met, from its structure and the limits that it was compiled with: never from its
 * own words. Only the titles of rules that it names come from texts, with their ids.
 */
export function sayRule({ rule, condition }: CompiledRule, world: SayWorld, words: Catalogue): SaidRule {
  const head = headOf(rule, words);
  const sentence = words.say.sentence(head, sayCondition(condition, world, words));
  const told = sayConditionLines(condition, world, words);
  const first = (text: string) => (told.length === 1 ? sentence : words.say.opening(head, text));
  const lines = told.map((line, at) => (at === 0 ? { ...line, text: first(line.text) } : line));
  return { rule: rule.id, sentence, lines };
}

/** What a rule does and what lifts it: "Holds (lifts in days)". */
function headOf({ effect, lifts }: Pick<Rule, 'effect' | 'lifts'>, { say }: Catalogue): string {
  return lifts === null ? say.effects[effect] : `${say.effects[effect]} (${say.lifts[lifts]})`;
}

/** A parameter from its structure: "soilTemperatureMaxC is 10 C from 1 January 2026; lower is tighter." */
export function sayParameter(parameter: Parameter, words: Catalogue): string {
  const { id, tighter, validFrom, validTo } = parameter;
  const span = words.say.span(showDay(validFrom, words), validTo === undefined ? null : showDay(validTo, words));
  return words.say.parameter(id, describeParameter(parameter, words), words.say.tighter[tighter], span);
}

/** Titles of rules by id, in the language of the words, else in the first that there is; an id without a rule stays as it is. */
export function titlesOf(rules: readonly Rule[], words: Catalogue): SayWorld['titleOf'] {
  const titles = new Map(
    rules.map(({ id, text }) => [id, (text[words.language] ?? Object.values(text)[0])?.title] as const),
  );
  return (rule) => titles.get(rule) ?? rule;
}
