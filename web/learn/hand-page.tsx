import { useRef, useState } from 'preact/hooks';
import { seeded } from '../../src/core/practice/seeded.ts';
import {
  afterAnswer,
  enoughInARow,
  newStreaks,
  nextToAsk,
  parseStreaks,
  type Streaks,
} from '../../src/core/tour/streak.ts';
import { joinWords } from '../../src/core/words/units.ts';
import type { Memory } from '../chat/memory.ts';
import { type Feel, feels, HandTest, type SoilGroup, soilGroups } from '../pictures/hand-test.tsx';
import { learnWords } from '../words.ts';
import type { PageProps } from './learning.tsx';
import type { Lesson } from './open-rules.ts';

const keyOf = (group: SoilGroup) => `loamward.hand.${group}`;

function keptStreaks(group: SoilGroup, memory: Memory): Streaks {
  try {
    const kept = parseStreaks(JSON.parse(memory.read(keyOf(group)) ?? 'null'), feels);
    if (kept) return kept;
  } catch {
    // What is kept in another form counts as nothing learnt.
  }
  return newStreaks(seeded(`${group} ${Date.now()}`).shuffled(feels));
}

/** The hand-test trainer: which class is which, until each was right twice in a row. */
export function HandPage({ lesson, memory }: PageProps) {
  const [group, setGroup] = useState<SoilGroup | null>(null);
  const own = learnWords.hand;
  return (
    <>
      <p>{own.lead}</p>
      {group === null ? (
        <>
          <h2>{own.choose}</h2>
          <div class="choices">
            {soilGroups.map((one) => (
              <button key={one} type="button" class="choice" onClick={() => setGroup(one)}>
                {own.groups[one]}
              </button>
            ))}
          </div>
        </>
      ) : (
        <Trainer key={group} group={group} lesson={lesson} memory={memory} onLeave={() => setGroup(null)} />
      )}
      <p class="quiet">{own.kept}</p>
      <p class="quiet">{own.source}</p>
    </>
  );
}

interface TrainerProps {
  readonly group: SoilGroup;
  readonly lesson: Lesson;
  readonly memory: Memory;
  readonly onLeave: () => void;
}

function Trainer({ group, lesson, memory, onLeave }: TrainerProps) {
  const own = learnWords.hand;
  const [streaks, setStreaks] = useState(() => keptStreaks(group, memory));
  const [asked, setAsked] = useState(() => nextToAsk(streaks, null) as Feel | null);
  const [chosen, setChosen] = useState<Feel | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const keep = (next: Streaks) => {
    setStreaks(next);
    memory.write(keyOf(group), JSON.stringify(next));
  };
  const goOn = (from: Streaks, last: string | null) => {
    setChosen(null);
    setAsked(nextToAsk(from, last) as Feel | null);
    requestAnimationFrame(() => heading.current?.focus());
  };
  const begin = () => {
    const fresh = newStreaks(seeded(`${group} ${Date.now()}`).shuffled(feels));
    keep(fresh);
    goOn(fresh, null);
  };
  const sure = streaks.items.filter(({ right }) => right >= enoughInARow).length;
  const buttons = (
    <p class="button-row">
      <button type="button" class="button" onClick={begin}>
        {own.again}
      </button>
      <button type="button" class="button" onClick={onLeave}>
        {own.other}
      </button>
    </p>
  );
  if (asked === null) {
    return (
      <>
        <h2 tabIndex={-1} ref={heading}>
          {own.done}
        </h2>
        {buttons}
      </>
    );
  }
  return (
    <>
      <p class="quiet">
        {own.groups[group]}. {own.progress(sure, feels.length)}
      </p>
      <h2 tabIndex={-1} ref={heading}>
        {own.ask}
      </h2>
      <HandTest group={group} feel={asked} />
      <p>
        <b>{own.thumb}:</b> {own.feels[group][asked]}
      </p>
      <div role="status">{chosen && <Told group={group} asked={asked} chosen={chosen} lesson={lesson} />}</div>
      {chosen ? (
        <button type="button" class="button is-main" onClick={() => goOn(streaks, asked)}>
          {own.next}
        </button>
      ) : (
        <div class="choices">
          {feels.map((feel) => (
            <button
              key={feel}
              type="button"
              class="choice"
              onClick={() => {
                setChosen(feel);
                keep(afterAnswer(streaks, asked, feel === asked));
              }}
            >
              {own.classes[feel]}
            </button>
          ))}
        </div>
      )}
      {buttons}
    </>
  );
}

function Told({
  group,
  asked,
  chosen,
  lesson: { tour, titleOf, words },
}: { readonly asked: Feel; readonly chosen: Feel } & Pick<TrainerProps, 'group' | 'lesson'>) {
  const own = learnWords.hand;
  const answers = tour.steps.find(({ facts }) => facts.includes('soil.feel'))?.answers ?? [];
  const rules = answers.find(({ shape }) => shape.kind === 'choice' && shape.choice === asked)?.rules;
  const met = rules
    ?.filter(({ outcome }) => outcome === 'met')
    .map(({ rule }) => words.values.inSentence(titleOf(rule)));
  return (
    <div class="hand-told">
      <p>
        <b>{chosen === asked ? own.right(own.classes[asked]) : own.wrong(own.classes[asked], own.classes[chosen])}</b>
      </p>
      {chosen !== asked && <p>{own.instead(own.classes[chosen], own.feels[group][chosen])}</p>}
      {met && <p>{met.length === 0 ? own.meansNothing : own.means(joinWords(met, words.values.and))}</p>}
    </div>
  );
}
