import type { WordedReason } from '../dialogue/decision-types.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';
import { comparisonsIn, describeMargin } from './margins.ts';
import type { DefinitionOf } from './phrases.ts';
import { joinWords } from './units.ts';

/** What the why is made from. */
export interface WhyInput {
  readonly verdict: VerdictWord;
  readonly reasons: readonly WordedReason[];
  readonly trace: readonly RuleTrace[];
}

/**
 * Why, in one or two plain sentences: the leading reasons that are met; else what is not known; else, for spray today, that
 * nothing is in the way and what comes nearest to its limit.
 */
export function whyOf({ verdict, reasons, trace }: WhyInput, definitionOf: DefinitionOf, words: Catalogue): string {
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  if (met.length > 0) {
    return met
      .slice(0, 2)
      .map(({ text }) => text)
      .join(' ');
  }
  const unknown = reasons.filter(({ outcome }) => outcome === 'unknown');
  if (unknown.length > 0) return whyUnknown(unknown, words);
  if (verdict !== 'spray-today') return words.verdict.nothingRead;
  const blocking = trace.filter(({ effect }) => effect !== 'advise');
  const nearest = nearestLimit(blocking, definitionOf, words);
  return [words.verdict.allClear(blocking.length), ...(nearest === null ? [] : [nearest])].join(' ');
}

function whyUnknown(unknown: readonly WordedReason[], words: Catalogue): string {
  const shown = unknown.slice(0, 3).map(({ title }) => title.charAt(0).toLowerCase() + title.slice(1));
  const sentence = words.verdict.notKnown(joinWords(shown, words.values.and));
  return unknown.length === 1 ? (unknown[0]?.text ?? sentence) : sentence;
}

/** The number that comes nearest to its limit, as a share of the limit, in a sentence; null where no number has room left. */
function nearestLimit(trace: readonly RuleTrace[], definitionOf: DefinitionOf, words: Catalogue): string | null {
  const candidates = trace
    .flatMap(({ condition }) => comparisonsIn(condition))
    .flatMap((comparison) => {
      const { margin, value } = comparison;
      if (margin === null || typeof margin.limit !== 'number' || margin.worst < 0 || !value.known) return [];
      return [{ comparison, share: margin.worst / Math.max(Math.abs(margin.limit), 1) }];
    })
    .sort((a, b) => a.share - b.share);
  const nearest = candidates[0]?.comparison;
  const text = nearest === undefined ? null : describeMargin(nearest, definitionOf, words);
  return nearest === undefined || text === null ? null : words.verdict.nearest(definitionOf(nearest.fact).label, text);
}
