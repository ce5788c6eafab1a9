import { nodeId } from '../../../src/core/tour/graph.ts';
import type { TourStep } from '../../../src/core/tour/types.ts';
import { labelOf } from '../../../src/core/words/facts.ts';
import { capital } from '../../../src/core/words/units.ts';
import { Fold } from '../../parts/fold.tsx';
import { TermText } from '../../parts/term-text.tsx';
import { learnWords } from '../../words.ts';
import type { Lesson } from '../open-rules.ts';
import { askOf, factNames, ruleNames } from './names.ts';
import { answerLines, shapeName } from './say-answer.ts';

interface StepsProps {
  readonly lesson: Lesson;
  /** Shows a thing in the picture. */
  readonly onShow: (id: string) => void;
}

/** The tour as numbered steps, each unfolding to its answers. */
export function Steps({ lesson, onShow }: StepsProps) {
  const own = learnWords.logic;
  const { tour, definitionOf, words } = lesson;
  return (
    <section aria-labelledby="steps-heading">
      <h2 id="steps-heading">{own.steps}</h2>
      <p>{own.stepsLead}</p>
      <ol class="tour-steps">
        {tour.steps.map((step) => (
          <li key={step.question}>
            <Fold title={`${step.number}. ${askOf(step.question, lesson)}`}>
              <Step step={step} lesson={lesson} onShow={onShow} />
            </Fold>
          </li>
        ))}
      </ol>
      {tour.unasked.length > 0 && (
        <>
          <h3>{own.unaskedHeading}</h3>
          <p>{own.unasked}</p>
          <ul>
            {tour.unasked.map(({ fact, rules }) => (
              <li key={fact}>
                {capital(labelOf(fact, definitionOf, words))}. {own.reads(ruleNames(rules, lesson))}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function Step({ step, lesson, onShow }: { readonly step: TourStep } & StepsProps) {
  const own = learnWords.logic;
  const { pack, words } = lesson;
  const question = pack.questions.find(({ id }) => id === step.question);
  if (!question) return null;
  const text = question.text[words.language] ?? question.text['en'];
  return (
    <>
      <p>
        <TermText text={text?.why ?? ''} />
      </p>
      <p>
        {capital(factNames(step.facts, lesson))}.{' '}
        {step.forDose ? own.forDose : step.rules.length === 0 ? own.noReader : own.reads(ruleNames(step.rules, lesson))}
      </p>
      {step.rules.length > 0 && (
        <dl class="tour-answers">
          {step.answers.map((answer) => {
            const name = shapeName(answer.shape, question, lesson);
            return (
              <div key={name}>
                <dt>{name}</dt>
                {answerLines(answer, lesson).map((line) => (
                  <dd key={line}>{line}</dd>
                ))}
              </div>
            );
          })}
        </dl>
      )}
      <p class="for-screen">
        <button type="button" class="button" onClick={() => onShow(nodeId('question', step.question))}>
          {own.toPicture}
        </button>
      </p>
    </>
  );
}
