import { decideFacts } from '../dialogue/decide.ts';
import type { Decision } from '../dialogue/decision-types.ts';
import { compiledFor } from '../dialogue/standing.ts';
import { ruleViews } from '../dialogue/view-rules.ts';
import type { RuleView } from '../dialogue/view-types.ts';
import { ruleText } from '../dialogue/worded-reason.ts';
import { parseInstant } from '../units/instant.ts';
import { inLanguage } from '../units/texts.ts';
import { decidingMargin } from '../verdict/reasons.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { describeRuleMargin } from '../words/margins.ts';
import { sayRule, titlesOf } from '../words/say-rule.ts';
import { type Deciding, decidingOf } from './deciding.ts';
import { judgeDay } from './judge-day.ts';
import type { PracticeDay, PracticeWorld } from './types.ts';

/** A learner's decision: what to do and why. `rule` is null for "nothing stands in the way". */
export interface LearnerAnswer {
  readonly verdict: VerdictWord;
  readonly rule: string | null;
  /** What was typed, as it was typed. */
  readonly typed?: string;
}

/** How an answer was. */
export type AnswerResult = (typeof answerResults)[number];

/** Every result: the best first. */
export const answerResults = ['right', 'reason-wrong', 'wrong'] as const;

/** A rule that decided a day, or that the day is about, told to learn from. */
export interface DecidingRule {
  readonly rule: string;
  readonly title: string;
  /** The rule's own sentence about this day; null where it is not met and not unknown. */
  readonly text: string | null;
  /** The distance from the limit that decided it, in words; null where none did. */
  readonly margin: string | null;
  readonly why: string;
  /** What the rule says, by its structure. */
  readonly sentence: string;
}

/** An answer beside what the rules say. */
export interface CheckedAnswer extends Pick<Deciding, 'nothing'> {
  readonly result: AnswerResult;
  /** By both evaluators. */
  readonly decision: Decision;
  readonly deciding: readonly DecidingRule[];
  readonly trace: readonly RuleView[];
}

/** How a decision with its reason was; pure and without sentences. */
export function resultOf(
  answer: Pick<LearnerAnswer, 'verdict' | 'rule'>,
  verdict: VerdictWord,
  { rules, nothing }: Deciding,
) {
  if (answer.verdict !== verdict) return 'wrong' satisfies AnswerResult;
  const isRight = answer.rule === null ? nothing : rules.includes(answer.rule);
  return (isRight ? 'right' : 'reason-wrong') satisfies AnswerResult;
}

/**
 * Judges a learner's answer by the rules, with all that is to be learnt from it: verdict, trace, and for each rule that decided (and
 * the one that the day is about) the margin, the why and the sentence. Throws as `decideFacts` does.
 */
export async function checkAnswer(
  day: PracticeDay,
  answer: LearnerAnswer,
  { pack, definitionOf }: PracticeWorld,
  words: Catalogue,
): Promise<CheckedAnswer> {
  const at = parseInstant(day.at);
  const { language } = words;
  const decision = await decideFacts({ pack, facts: day.facts, forecast: null, at, now: at, language });
  const judged = judgeDay(day, pack);
  const deciding = judged ? decidingOf(judged) : { rules: [], nothing: false };
  const compiled = compiledFor(pack, at);
  const world = { definitionOf, titleOf: titlesOf(pack.rules, words) };
  const told = new Set([...deciding.rules, ...(deciding.nothing || day.near ? [day.rule] : [])]);
  const rules = [...told].flatMap((id): DecidingRule[] => {
    const rule = compiled.rules.find((one) => one.rule.id === id);
    const trace = decision.trace.find((one) => one.rule === id);
    if (!rule || !trace) return [];
    const margin = decidingMargin(trace.condition);
    const reason = [...decision.reasons, ...decision.advice].find((one) => one.rule === id);
    return [
      {
        rule: id,
        title: ruleText(pack, id, language)?.title ?? id,
        text: reason?.text ?? null,
        margin: margin && describeRuleMargin(trace, margin.margin, definitionOf, words),
        why: inLanguage(rule.rule.why, language),
        sentence: sayRule(rule, world, words).sentence,
      },
    ];
  });
  return {
    result: resultOf(answer, decision.verdict, deciding),
    decision,
    deciding: rules,
    nothing: deciding.nothing,
    trace: ruleViews(decision, pack, words),
  };
}
