import type { RuleView } from '../../core/dialogue/view-types.ts';
import type { CheckedAnswer, LearnerAnswer } from '../../core/practice/check-answer.ts';
import { ownReason } from '../../core/practice/own-reason.ts';
import { cardKey, type Review, standingOfCards } from '../../core/practice/schedule.ts';
import type { PracticeSpeech, ToldGroup } from '../../core/practice/tell-day.ts';
import { tellProgress } from '../../core/practice/tell-progress.ts';
import type { PracticeWorld } from '../../core/practice/types.ts';
import { describeDue } from '../../core/words/practice-due.ts';
import { titlesOf } from '../../core/words/say-rule.ts';
import { capital } from '../../core/words/units.ts';
import { choiceLetter } from './view-text.ts';

/** A day as lines: what is known and not known, by where it is looked for. */
export function dayText(groups: readonly ToldGroup[]): string[] {
  return groups.flatMap(({ title, facts }) => [
    '',
    `${title}:`,
    ...facts.map(({ label, value }) => `  ${label}: ${value}`),
  ]);
}

/** Reasons to choose from, a letter each. */
export function reasonLines(titles: readonly string[]): string[] {
  return titles.map((title, index) => `  ${choiceLetter(index)}  ${title}`);
}

/** What the rules say beside what the learner said, and when a day like it comes again. */
export function answerLines(
  checked: CheckedAnswer,
  answer: LearnerAnswer,
  review: Review,
  reviews: readonly Review[],
  { pack }: PracticeWorld,
  { words, practice }: PracticeSpeech,
): string[] {
  const { result, decision, deciding, nothing } = checked;
  const own = ownReason(checked, answer);
  const reason = answer.rule === null ? practice.nothing : titlesOf(pack.rules, words)(answer.rule);
  const due = standingOfCards(reviews).get(cardKey(review))?.due;
  return [
    '',
    practice.results[result],
    practice.yours(practice.verdicts[answer.verdict], reason),
    ...(answer.typed === undefined ? [] : [practice.yourWords(answer.typed)]),
    ...(own === null ? [] : [own]),
    '',
    decision.headline,
    ...(nothing ? [practice.nothingDecides] : []),
    ...(deciding.length > 0 ? [`${nothing ? practice.about : practice.decided}:`] : []),
    ...deciding.flatMap(({ title, text, margin, why, sentence }) => [
      `  ${title}${margin === null ? '' : `: ${margin}`}`,
      ...(text === null ? [] : [`    ${text}`]),
      `    ${practice.why}: ${why}`,
      `    ${practice.rule}: ${sentence}`,
    ]),
    ...(due === undefined ? [] : ['', practice.again(describeDue(due - review.at, practice))]),
  ];
}

/** Every rule of a day with its outcome and margins. */
export function ruleLines(rules: readonly RuleView[], { practice }: PracticeSpeech): string[] {
  return [
    practice.trace(rules.length),
    ...rules.flatMap(({ title, outcomeText, margins }) => [
      `  ${title}: ${outcomeText}`,
      ...margins.map((margin) => `    ${capital(margin)}`),
    ]),
  ];
}

/** How far a learner is, under its heading. */
export function progressLines(
  reviews: readonly Review[],
  { pack }: PracticeWorld,
  speech: PracticeSpeech,
  now: number,
): string[] {
  return [`${speech.practice.progress}:`, ...tellProgress(reviews, pack, speech, now).map((row) => `  ${row}`)];
}
