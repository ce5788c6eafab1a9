import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import { type CheckedAnswer, checkAnswer, type LearnerAnswer } from '../../src/core/practice/check-answer.ts';
import type { DaySet } from '../../src/core/practice/files.ts';
import { nextDay } from '../../src/core/practice/next-day.ts';
import { type Review, reviewsOf } from '../../src/core/practice/schedule.ts';
import type { PracticeDay, PracticeWorld } from '../../src/core/practice/types.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { TreatmentSelect } from '../learn/treatment-select.tsx';
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
  const [reviews, setReviews] = useState<readonly Review[]>([]);
  const [chosen, choose] = useState<string | null>(null);
  const { practice } = useMemo(speechOfPage, []);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(
    () =>
      void openPractice().then((came) => {
        setReviews(came.reviews);
        setOpened(came);
      }),
    [],
  );
  const packs = opened?.packs ?? [];
  const pack = packs.find(({ id }) => id === chosen) ?? packs[0];
  return (
    <section class="practice learn" aria-labelledby="practice-heading">
      <h1 id="practice-heading" tabIndex={-1} ref={heading}>
        {practice.heading}
      </h1>
      {opened && pack && (
        <>
          <TreatmentSelect treatments={packs} chosen={pack.id} onChoose={choose} />
          <Days
            key={pack.id}
            opened={opened}
            pack={pack}
            reviews={reviewsOf(reviews, pack.id, pack === packs[0])}
            onReview={(row) => setReviews((rows) => [...rows, row])}
          />
        </>
      )}
      {opened && !pack && <p role="status">{practice.noRules}</p>}
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

interface DaysProps {
  readonly opened: OpenedPractice;
  readonly pack: Pack;
  /** Answers about the rules of the pack. */
  readonly reviews: readonly Review[];
  readonly onReview: (row: Review) => void;
}

function Days({ opened, pack, reviews, onReview }: DaysProps) {
  const speech = useMemo(speechOfPage, []);
  const world = useMemo(
    (): PracticeWorld => ({ pack, plain: pack.plainDay ?? null, definitionOf: definitionsOf(pack.facts) }),
    [pack],
  );
  const [set, setSet] = useState<DaySet | null>(null);
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
      pack: pack.id,
      rule,
      kind,
      at,
      day: id,
      verdict,
      reason,
      result: result.result,
      ...(typed === undefined ? {} : { typed }),
    };
    onReview(row);
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
