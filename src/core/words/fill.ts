import type { FactId } from '../facts/registry/index.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import type { Parameter, Parameters } from '../units/parameter.ts';
import type { Catalogue } from './catalogue.ts';
import { comparisonsIn } from './margins.ts';
import { marked } from './numbers.ts';
import type { DefinitionOf } from './phrases.ts';
import { showMonthDay } from './times.ts';
import { joinWords, unitSuffix } from './units.ts';
import { describeValue, showChoice } from './values.ts';

/** A parameter for a person: "10 C", "1 October", "England, Scotland or Wales". */
export function describeParameter({ value, unit }: Pick<Parameter, 'value' | 'unit'>, words: Catalogue): string {
  if (typeof value === 'object') {
    return joinWords(
      value.map((one) => showChoice(one, words)),
      words.values.or,
    );
  }
  if (unit === 'month-day') return showMonthDay(String(value), words);
  return `${typeof value === 'number' ? marked(words, String(value)) : value}${unitSuffix(unit, words)}`;
}

/** Fills `{name}` in a sentence; a name that is not given stays as it is. */
export function fillText(template: string, values: Readonly<Record<string, string>>): string {
  return template.replaceAll(/\{([^{}]*)\}/g, (whole, name: string) => values[name] ?? whole);
}

/**
 * Fills a rule's sentence with the values that it read and its limits, each with its unit. A part in double square brackets is
 * left out where a value in it is not known, or is a forecast told in words ("10 mm or more"), which gives no number.
 */
export function fillRuleText(
  template: string,
  rule: RuleTrace,
  parameters: Parameters,
  definitionOf: DefinitionOf,
  words: Catalogue,
): string {
  const values: Record<string, string> = {};
  const comparisons = comparisonsIn(rule.condition);
  const isNumber = (name: string | undefined) =>
    comparisons.every(({ fact, value }) => fact !== name || (value.known && value.source !== 'told'));
  for (const { fact, value } of comparisons) {
    const limits = comparisons.filter((one) => one.fact === fact).flatMap(limitNumbers);
    values[fact satisfies FactId] = describeValue(definitionOf(fact), value, words, limits);
  }
  for (const id of rule.parameters) {
    const parameter = parameters.get(id);
    if (parameter) values[id] = describeParameter(parameter, words);
  }
  const whole = template.replaceAll(/\[\[(.*?)\]\]/g, (_, part: string) =>
    [...part.matchAll(/\{([^{}]*)\}/g)].every(([, name]) => isNumber(name)) ? part : '',
  );
  return fillText(whole, values);
}

function limitNumbers({ limit }: ReturnType<typeof comparisonsIn>[number]): number[] {
  return limit.kind === 'number' ? [limit.value] : [];
}
