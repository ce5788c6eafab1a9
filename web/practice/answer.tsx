import { useEffect, useRef } from 'preact/hooks';
import type { CheckedAnswer, LearnerAnswer } from '../../src/core/practice/check-answer.ts';
import { ownReason } from '../../src/core/practice/own-reason.ts';
import { cardKey, type Review, standingOfCards } from '../../src/core/practice/schedule.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { PracticeWorld } from '../../src/core/practice/types.ts';
import { describeDue } from '../../src/core/words/practice-due.ts';
import { titlesOf } from '../../src/core/words/say-rule.ts';
import { Headline } from '../parts/headline.tsx';
import { Trace } from '../parts/trace.tsx';
import { VerdictMark } from '../parts/verdict-mark.tsx';

interface AnswerProps {
  readonly answer: LearnerAnswer;
  readonly checked: CheckedAnswer;
  /** All answers, this one last. */
  readonly reviews: readonly Review[];
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
  readonly onNext: () => void;
}

/** What the rules say beside what the learner said: verdict, what decides it and by how much, why, and every rule. */
export function Answer({
  answer,
  checked,
  reviews,
  world: { pack },
  speech: { words, practice },
  onNext,
}: AnswerProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { decision, deciding, nothing, result, trace } = checked;
  const last = reviews.at(-1);
  const due = last && standingOfCards(reviews).get(cardKey(last))?.due;
  const reason = answer.rule === null ? practice.nothing : titlesOf(pack.rules, words)(answer.rule);
  const own = ownReason(checked, answer);
  return (
    <section class={`verdict is-${decision.verdict}`} aria-labelledby="answer-heading">
      <h2 id="answer-heading" tabIndex={-1} ref={heading} data-result={result}>
        {practice.results[result]}
      </h2>
      <p>{practice.yours(practice.verdicts[answer.verdict], reason)}</p>
      {answer.typed !== undefined && <p class="quiet">{practice.yourWords(answer.typed)}</p>}
      {own && <p>{own}</p>}
      <div class="verdict-head">
        <h3>
          <Headline text={decision.headline} />
        </h3>
        <VerdictMark verdict={decision.verdict} />
      </div>
      {nothing && <p>{practice.nothingDecides}</p>}
      {deciding.length > 0 && <h3>{nothing ? practice.about : practice.decided}</h3>}
      <ul class="reasons">
        {deciding.map(({ rule, title, text, margin, why, sentence }) => (
          <li key={rule} class="reason">
            <h4>{title}</h4>
            {margin !== null && <p class="reason-margin">{margin}</p>}
            {text !== null && <p>{text}</p>}
            <p>
              <b>{practice.why}</b>: {why}
            </p>
            <p>
              <b>{practice.rule}</b>: {sentence}
            </p>
          </li>
        ))}
      </ul>
      <Trace rules={trace} />
      {due !== undefined && last && <p>{practice.again(describeDue(due - last.at, practice))}</p>}
      <button type="button" class="button is-main" onClick={onNext}>
        {practice.nextDay}
      </button>
    </section>
  );
}
