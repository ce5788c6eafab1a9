import { useEffect, useMemo, useState } from 'preact/hooks';
import { type CheckedAnswer, checkAnswer, type LearnerAnswer } from '../../src/core/practice/check-answer.ts';
import type { DaySet } from '../../src/core/practice/files.ts';
import { nextDay } from '../../src/core/practice/next-day.ts';
import type { Review } from '../../src/core/practice/schedule.ts';
import type { PracticeDay, PracticeWorld } from '../../src/core/practice/types.ts';
import { Answer } from './answer.tsx';
import { DayTold } from './day-told.tsx';
import { Decide } from './decide.tsx';
import { type OpenedPractice, openPractice, speechOfPage } from './open-practice.ts';
import { Progress } from './progress.tsx';
import { SetChoice } from './set-choice.tsx';
import '../styles/learn.css';

const now = (): number => Date.now() / 1000;

/** Practice days: a day is told, the learner decides and gives a reason, then sees what the rules say. */
export function PracticePage() {
  const [opened, setOpened] = useState<OpenedPractice | null>(null);
  const { practice } = useMemo(speechOfPage, []);
  useEffect(() => void openPractice().then(setOpened), []);
  return (
    <section class="practice learn" aria-labelledby="practice-heading">
      <h1 id="practice-heading" tabIndex={-1} ref={(heading) => heading?.focus()}>
        {practice.heading}
      </h1>
      {opened?.world && <Days opened={opened} world={opened.world} />}
      {opened && !opened.world && <p role="status">{practice.noRules}</p>}
      <p>
        <a class="button" href="#start">
          {practice.leave}
        </a>
      </p>
    </section>
  );
}

interface Shown {
  readonly day: PracticeDay | null;
  readonly answer: LearnerAnswer | null;
  readonly checked: CheckedAnswer | null;
}

function Days({ opened, world }: { readonly opened: OpenedPractice; readonly world: PracticeWorld }) {
  const speech = useMemo(speechOfPage, []);
  const [set, setSet] = useState<DaySet | null>(null);
  const [reviews, setReviews] = useState<readonly Review[]>(opened.reviews);
  const [isKept, setKept] = useState(opened.kept !== null);
  const dayAfter = (rows: readonly Review[], days: DaySet | null): Shown => ({
    day: nextDay({ world, days: days?.days ?? null, reviews: rows, now: now(), seed: 'page' }),
    answer: null,
    checked: null,
  });
  const [shown, setShown] = useState<Shown>(() => dayAfter(reviews, set));
  const { day, answer, checked } = shown;
  const { practice } = speech;
  const open = (days: DaySet | null) => {
    setSet(days);
    setShown(dayAfter(reviews, days));
  };
  const take = async (on: PracticeDay, given: LearnerAnswer) => {
    const result = await checkAnswer(on, given, world, speech.words);
    const { rule, kind, id } = on;
    const { verdict, rule: reason, typed } = given;
    const at = now();
    const row = {
      rule,
      kind,
      at,
      day: id,
      verdict,
      reason,
      result: result.result,
      ...(typed === undefined ? {} : { typed }),
    };
    setReviews([...reviews, row]);
    setShown({ day: on, answer: given, checked: result });
    await opened.kept?.add(row).catch(() => setKept(false));
  };
  return (
    <>
      <p>{set ? practice.leadSet(set.place, String(set.season)) : practice.lead}</p>
      {set && set.pack.hash !== world.pack.hash && <p>{practice.otherRules}</p>}
      {!isKept && <p role="status">{practice.notKept}</p>}
      {day === null ? (
        <p role="status">{practice.noDays}</p>
      ) : (
        <>
          <DayTold
            key={`told ${reviews.length} ${day.id}`}
            day={day}
            world={world}
            speech={speech}
            hasAnswer={checked !== null}
          />
          {!checked && (
            <Decide
              key={`decide ${reviews.length} ${day.id}`}
              day={day}
              world={world}
              speech={speech}
              onTake={(given) => void take(day, given)}
            />
          )}
          {checked && answer && (
            <Answer
              answer={answer}
              checked={checked}
              reviews={reviews}
              world={world}
              speech={speech}
              onNext={() => setShown(dayAfter(reviews, set))}
            />
          )}
        </>
      )}
      <Progress reviews={reviews} now={now()} world={world} speech={speech} />
      <SetChoice world={world} speech={speech} isOpen={set !== null} onOpen={open} />
    </>
  );
}
