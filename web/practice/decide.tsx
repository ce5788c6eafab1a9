import { useEffect, useRef, useState } from 'preact/hooks';
import type { LearnerAnswer } from '../../src/core/practice/check-answer.ts';
import { reasonChoices } from '../../src/core/practice/deciding.ts';
import { judgeDay } from '../../src/core/practice/judge-day.ts';
import { matchReason } from '../../src/core/practice/match-reason.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { PracticeDay, PracticeWorld } from '../../src/core/practice/types.ts';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { titlesOf } from '../../src/core/words/say-rule.ts';

interface DecideProps {
  readonly day: PracticeDay;
  readonly world: PracticeWorld;
  readonly speech: PracticeSpeech;
  readonly onTake: (answer: LearnerAnswer) => void;
}

/** Most letters of a typed reason. */
const longestText = 500;

const verdicts: readonly VerdictWord[] = ['spray-today', 'wait', 'do-not-spray'];

/** The learner's decision: what to do, then why. */
export function Decide({ day, world, speech, onTake }: DecideProps) {
  const [verdict, setVerdict] = useState<VerdictWord | null>(null);
  const { practice } = speech;
  if (verdict !== null) {
    return <Reason day={day} world={world} speech={speech} onTake={(reason) => onTake({ verdict, ...reason })} />;
  }
  return (
    <section class="question" aria-labelledby="decide-heading">
      <h2 id="decide-heading">{practice.decide}</h2>
      <div class="choices">
        {verdicts.map((one) => (
          <button key={one} type="button" class="choice" onClick={() => setVerdict(one)}>
            <b>{practice.verdicts[one]}</b>
          </button>
        ))}
      </div>
    </section>
  );
}

function Reason({
  day,
  world: { pack, definitionOf },
  speech: { words, practice },
  onTake,
}: Omit<DecideProps, 'onTake'> & { readonly onTake: (reason: Omit<LearnerAnswer, 'verdict'>) => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const [offered, setOffered] = useState<readonly string[]>(() => {
    const judged = judgeDay(day, pack);
    return judged ? reasonChoices(day, judged, pack, 'page') : [];
  });
  const [text, setText] = useState('');
  const [typed, setTyped] = useState<string | null>(null);
  const [told, setTold] = useState('');
  const titleOf = titlesOf(pack.rules, words);
  const take = (rule: string | null, said = typed) => onTake({ rule, ...(said === null ? {} : { typed: said }) });
  const read = () => {
    const said = text.trim();
    if (said === '') return;
    setTyped(said);
    const found = matchReason(said, pack, definitionOf, words, practice);
    if ('rule' in found) return take(found.rule, said);
    if ('nothing' in found) return take(null, said);
    if ('perhaps' in found) setOffered(found.perhaps);
    setTold('perhaps' in found ? practice.perhaps : practice.noMatch);
    heading.current?.focus();
  };
  return (
    <section class="question" aria-labelledby="reason-heading">
      <h2 id="reason-heading" tabIndex={-1} ref={heading}>
        {practice.reason}
      </h2>
      <p aria-live="polite">{told || practice.reasonLead}</p>
      <div class="choices">
        {[...offered, null].map((rule) => (
          <button key={rule} type="button" class="choice" onClick={() => take(rule)}>
            <b>{rule === null ? practice.nothing : titleOf(rule)}</b>
          </button>
        ))}
      </div>
      <form
        class="free-text"
        onSubmit={(event) => {
          event.preventDefault();
          read();
        }}
      >
        <label for="own-reason">{practice.typeLabel}</label>
        <div class="free-line">
          <input
            id="own-reason"
            type="text"
            autoComplete="off"
            maxLength={longestText}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
          <button type="submit" class="button is-main">
            {practice.typeSend}
          </button>
        </div>
      </form>
    </section>
  );
}
