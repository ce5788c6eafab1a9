import type { WordedReason } from '../dialogue/decision-types.ts';
import type { Resolved } from '../facts/types.ts';
import type { ConditionTrace, RuleTrace } from '../rules/trace-types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';
import { labelOf } from './facts.ts';
import { type comparisonsIn, describeMargin } from './margins.ts';
import type { DefinitionOf } from './phrases.ts';
import { joinWords, shortList } from './units.ts';

/** Rules that cannot be judged and are named; the others are counted. */
const mostNamed = 3;

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
  const [first, ...others] = unknown;
  if (first && others.length === 0) return first.text;
  const titles = unknown.map(({ title }) => words.values.inSentence(title));
  return words.verdict.notKnown(joinWords(shortList(titles, mostNamed, words.verdict.more), words.values.and));
}

/**
 * The number that comes nearest to its limit, as a share of the limit, in a sentence; null where none has room left. Left out: a
 * band that a person chose by words, and what decides only together with something else.
 */
function nearestLimit(trace: readonly RuleTrace[], definitionOf: DefinitionOf, words: Catalogue): string | null {
  const candidates = trace
    .flatMap(({ condition }) => decidingAlone(condition))
    .flatMap((comparison) => {
      const { margin, value } = comparison;
      if (margin === null || typeof margin.limit !== 'number' || margin.worst < 0 || isChosenBand(value)) return [];
      return [{ comparison, share: margin.worst / (Math.abs(margin.limit) || 1) }];
    })
    .sort((a, b) => a.share - b.share);
  const [nearest] = candidates;
  if (!nearest) return null;
  const text = describeMargin(nearest.comparison, definitionOf, words);
  return text && words.verdict.nearest(labelOf(nearest.comparison.fact, definitionOf, words), text);
}

function decidingAlone(trace: ConditionTrace): ReturnType<typeof comparisonsIn> {
  if (trace.kind === 'all' || trace.kind === 'not') return [];
  if (trace.kind === 'comparison') return [trace];
  return trace.kind === 'rule' ? decidingAlone(trace.member) : trace.members.flatMap(decidingAlone);
}

function isChosenBand(value: Resolved): boolean {
  const isTold = value.known && (value.source === 'said' || value.source === 'told' || value.source === 'profile');
  return isTold && value.type === 'number' && value.low !== value.high;
}
