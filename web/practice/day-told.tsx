import { useEffect, useMemo, useRef } from 'preact/hooks';
import { localDate } from '../../src/core/facts/local-day.ts';
import { type PracticeSpeech, tellDay } from '../../src/core/practice/tell-day.ts';
import type { PracticeDay, PracticeWorld } from '../../src/core/practice/types.ts';
import { parseInstant } from '../../src/core/units/instant.ts';
import { showDay } from '../../src/core/words/times.ts';

interface DayToldProps {
  readonly day: PracticeDay;
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
  /** True once it was answered: the answer takes the focus then. */
  readonly hasAnswer: boolean;
}

/** What is known and not known on a day, by where it is looked for. */
export function DayTold({ day, world, speech, hasAnswer }: DayToldProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const groups = useMemo(() => tellDay(day, world, speech), [day]);
  useEffect(() => {
    // Who goes through the treatments by keys is not taken away from their choice.
    if (!hasAnswer && !(document.activeElement instanceof HTMLSelectElement)) heading.current?.focus();
  }, []);
  const date = showDay(localDate(parseInstant(day.at), world.pack.zone), speech.words);
  return (
    <section aria-labelledby="day-heading">
      <h2 id="day-heading" tabIndex={-1} ref={heading}>
        {speech.practice.dayHeading(date)}
      </h2>
      {groups.map(({ title, facts }) => (
        <section key={title}>
          <h3>{title}</h3>
          <dl class="rule-details day-facts">
            {facts.map(({ fact, label, value, isKnown }) => (
              <div key={fact}>
                <dt>{label}</dt>
                <dd>{isKnown ? <b>{value}</b> : <span class="tag">{value}</span>}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </section>
  );
}
