import type { ConditionTrace, Margin, RuleTrace } from '../rules/trace-types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { marked, showNumber } from './numbers.ts';
import type { DefinitionOf } from './phrases.ts';
import { unitSuffix } from './units.ts';

type ComparisonTrace = Extract<ConditionTrace, { kind: 'comparison' }>;

/** Every comparison of a condition's trace, in written order. */
export function comparisonsIn(trace: ConditionTrace): ComparisonTrace[] {
  if (trace.kind === 'comparison') return [trace];
  if (trace.kind === 'not' || trace.kind === 'rule') return comparisonsIn(trace.member);
  return trace.members.flatMap(comparisonsIn);
}

/** How far one value is from its limit: "0.4 C too warm", "1.2 km/h room left", "12 days to go"; null without a margin, or for a forecast told in words. */
export function describeMargin(
  comparison: ComparisonTrace,
  definitionOf: DefinitionOf,
  words: Catalogue,
): string | null {
  const { margin, value, outcome } = comparison;
  if (margin === null || !value.known || value.source === 'told') return null;
  if (value.type === 'date') return describeDays(margin, words);
  if (value.type !== 'number' || typeof margin.limit !== 'number') return null;
  const definition = definitionOf(comparison.fact);
  const unit = unitSuffix(definition.unit, words);
  const decimals = decimalsIn(words, showNumber(words, value.value, definition.shownDecimals ?? 1, [margin.limit]));
  const amount = (size: number) => {
    const shown = showNumber(words, Math.abs(size), decimals, [0]);
    return `${shown}${unitSuffix(definition.unit, words, shown)}`;
  };
  if (outcome === 'unknown') return words.margins.bandCrosses(`${marked(words, String(margin.limit))}${unit}`);
  if (value.value === margin.limit) return words.margins.atLimit;
  if (margin.margin > 0) return words.margins.room(amount(margin.worst > 0 ? margin.worst : margin.margin));
  const { tooHigh, tooLow, aboveLimit, belowLimit } = words.margins;
  const how =
    value.value > margin.limit ? (tooHigh[comparison.fact] ?? aboveLimit) : (tooLow[comparison.fact] ?? belowLimit);
  return words.margins.over(amount(margin.margin), how);
}

/** Decimals of a number as shown: a margin is shown as finely as its value, so that value and margin meet at the limit. */
function decimalsIn({ values }: Catalogue, shown: string): number {
  return shown.split(values.decimalMark)[1]?.length ?? 0;
}

function describeDays({ margin }: Margin, words: Catalogue): string {
  const days = Math.abs(margin);
  if (margin === 0) return words.margins.atLimit;
  return margin > 0 ? words.margins.daysLeft(days) : words.margins.daysToGo(days);
}

/** The margin that a reason or rule is told by: that of the number given, else of the nearest limit; null where there is none. */
export function describeRuleMargin(
  rule: RuleTrace,
  margin: number | null,
  definitionOf: DefinitionOf,
  words: Catalogue,
): string | null {
  const found = comparisonsIn(rule.condition).find((one) => one.margin !== null && one.margin.margin === margin);
  return found === undefined ? null : describeMargin(found, definitionOf, words);
}

/** Every margin of a rule with the name of its fact: "soil temperature at 30 cm: 0.4 C too warm". */
export function describeMargins(rule: RuleTrace, definitionOf: DefinitionOf, words: Catalogue): string[] {
  return comparisonsIn(rule.condition).flatMap((comparison) => {
    const text = describeMargin(comparison, definitionOf, words);
    return text === null ? [] : [`${labelOf(comparison.fact, definitionOf, words)}: ${text}`];
  });
}
