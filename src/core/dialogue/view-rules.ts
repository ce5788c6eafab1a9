import { definitionIn, definitionsOf } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import { inLanguage, sourceIn } from '../units/texts.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { labelOf } from '../words/facts.ts';
import { describeParameter } from '../words/fill.ts';
import { describeOutcome } from '../words/labels.ts';
import { comparisonsIn, describeMargins } from '../words/margins.ts';
import { describeSource } from '../words/sources.ts';
import { secondsOf } from '../words/times.ts';
import { describeValue } from '../words/values.ts';
import type { Decision } from './decision-types.ts';
import { compiledFor } from './standing.ts';
import type { RuleView } from './view-types.ts';
import { ruleText } from './worded-reason.ts';

const made = new WeakMap<Decision, { readonly words: Catalogue; readonly views: RuleView[] }>();

/**
 * Every rule of a decision in words: outcome, facts with their source, limits with theirs, margins. Pack order of ids. Made
 * once for each decision, since a given one never changes.
 */
export function ruleViews(decision: Decision, pack: Pack, words: Catalogue): RuleView[] {
  const known = made.get(decision);
  if (known?.words === words) return known.views;
  const views = decision.trace.map((rule) => ruleView(rule, decision, pack, words));
  made.set(decision, { words, views });
  return views;
}

function ruleView(rule: RuleTrace, decision: Decision, pack: Pack, words: Catalogue): RuleView {
  const { rule: id, effect, authority, outcome } = rule;
  const written = pack.rules.find((one) => one.id === id);
  const at = secondsOf(decision.at);
  const { parameters } = compiledFor(pack, at);
  const times = { now: at, forecastFetchedAt: decision.forecast && secondsOf(decision.forecast.fetchedAt) };
  return {
    rule: id,
    title: ruleText(pack, id, words.language)?.title ?? id,
    outcome,
    outcomeText: describeOutcome(effect, outcome, words),
    effect,
    authority,
    source: written ? sourceIn(written.source, words.language) : '',
    why: written ? inLanguage(written.why, words.language) : '',
    facts: rule.facts.map((fact) => {
      const definition = definitionIn(pack.facts, fact);
      const resolved = resolvedFact(decision.facts, fact);
      const value = describeValue(definition, resolved, words, limitsOf(rule, fact));
      return {
        fact,
        label: labelOf(fact, definitionsOf(pack.facts), words),
        value,
        from: describeSource(resolved, times, words),
      };
    }),
    limits: rule.parameters.flatMap((parameter) => {
      const found = parameters.get(parameter);
      return found
        ? [{ parameter, value: describeParameter(found, words), source: sourceIn(found.source, words.language) }]
        : [];
    }),
    margins: describeMargins(rule, definitionsOf(pack.facts), words),
  };
}

function limitsOf(rule: RuleTrace, fact: string): number[] {
  return comparisonsIn(rule.condition).flatMap((one) =>
    one.fact === fact && one.limit.kind === 'number' ? [one.limit.value] : [],
  );
}
