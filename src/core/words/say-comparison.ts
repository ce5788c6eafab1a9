import type { ChoiceOperator, CompiledComparison, OrderOperator } from '../rules/types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { marked } from './numbers.ts';
import type { DefinitionOf } from './phrases.ts';
import { showMonthDay } from './times.ts';
import { joinWords, unitSuffix } from './units.ts';
import { showChoice } from './values.ts';

/**
 * One comparison from its structure: "soil temperature at 30 cm is above 10 C (soilTemperatureMaxC)", "date is before 1 October
 * (seasonOpens)", "drains running: yes". The limit is told with all its decimals.
 */
export function sayComparison(comparison: CompiledComparison, definitionOf: DefinitionOf, words: Catalogue): string {
  const { fact, op, limit, parameter } = comparison;
  const { say } = words;
  const label = labelOf(fact, definitionOf, words);
  if (limit.kind === 'choices') {
    const names = joinWords(
      limit.values.map((value) => showChoice(value, words, definitionOf(fact))),
      words.values.or,
    );
    return say.choice[op as ChoiceOperator](label, parameter === null ? names : say.named(names, parameter));
  }
  const verb = say.plural.includes(fact) ? say.are : say.is;
  const subject = verb === '' ? label : `${label} ${verb}`;
  if (limit.kind === 'month-day')
    return say.day[op as OrderOperator](subject, showMonthDay(monthDay(limit.value), words), parameter ?? '');
  const number = String(limit.value);
  const value = `${marked(words, number)}${unitSuffix(comparison.unit, words, number)}`;
  return say.number[op as OrderOperator](subject, value, parameter ?? '');
}

function monthDay(value: number): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(Math.floor(value / 100))}-${two(value % 100)}`;
}
