import { definitionsOf } from '../facts/registry/index.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import type { RuleText } from '../rules/types.ts';
import type { Parameters } from '../units/parameter.ts';
import type { Reason } from '../verdict/types.ts';
import { catalogueOf } from '../words/catalogue.ts';
import { fillRuleText } from '../words/fill.ts';
import { describeRuleMargin } from '../words/margins.ts';
import type { WordedReason } from './decision-types.ts';

/** What the sentences of a reason are made from. */
export interface ReasonContext {
  readonly pack: Pack;
  /** Trace of the reason's rule. */
  readonly rule: RuleTrace | undefined;
  readonly parameters: Parameters;
  readonly language: string;
}

/** A reason with its rule's sentences, values and limits filled in. */
export function wordReason(reason: Reason, { pack, rule, parameters, language }: ReasonContext): WordedReason {
  const text = ruleText(pack, reason.rule, language);
  const words = catalogueOf(language);
  const definitionOf = definitionsOf(pack.facts);
  const fill = (template: string) => (rule ? fillRuleText(template, rule, parameters, definitionOf, words) : template);
  return {
    ...reason,
    title: fill(text?.title ?? reason.rule),
    text: fill((reason.outcome === 'unknown' ? text?.unknown : text?.met) ?? ''),
    lift: text?.lift === undefined ? null : fill(text.lift),
    margins: rule?.margins ?? [],
    marginText:
      rule && reason.effect !== 'advise' ? describeRuleMargin(rule, reason.margin, definitionOf, words) : null,
  };
}

/** The sentences of a rule in a language, English where it lacks that one. */
export function ruleText(pack: Pack, id: string, language: string): RuleText | undefined {
  const text = pack.rules.find((rule) => rule.id === id)?.text;
  return text?.[language] ?? text?.['en'];
}
