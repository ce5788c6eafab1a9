import { useEffect, useRef, useState } from 'preact/hooks';
import type { QuestionView } from '../../src/core/dialogue/view-types.ts';
import type { FormAnswer } from '../chat/chat.ts';
import { coreWords, pageWords } from '../words.ts';
import { How } from './how.tsx';
import { AnswerForm, type FormProps, whyOf } from './question-card.tsx';
import { TermText, useTerms } from './term-text.tsx';

/**
 * Two questions that go together: each is answered in its own right, and once both are, they are sent as one. The focus goes on to
 * the question that is left, or back to one that is to be changed, since the button that had it is gone.
 */
export function Together({ question, onAnswer }: FormProps) {
  const parts = [question, ...question.together];
  const [answers, setAnswers] = useState<Readonly<Record<string, FormAnswer>>>({});
  const next = useRef<string | null>(null);
  useEffect(() => {
    if (next.current !== null) document.getElementById(headingOf(question, next.current))?.focus();
    next.current = null;
  }, [answers]);
  const send = (given: Readonly<Record<string, FormAnswer>>): void => {
    const all = parts.flatMap(({ id }) => (given[id] ? [{ question: id, ...given[id] }] : []));
    const [first, ...also] = all;
    if (!first || first.question !== question.id) return;
    const { question: _, ...answer } = first;
    onAnswer({ ...answer, ...(also.length > 0 ? { also } : {}) });
  };
  const take = (id: string, answer: FormAnswer): void => {
    const given = { ...answers, [id]: answer };
    next.current = parts.find((part) => !given[part.id])?.id ?? null;
    setAnswers(given);
    if (next.current === null) send(given);
  };
  const reopen = (id: string): void => {
    next.current = id;
    setAnswers(without(answers, id));
  };
  return (
    <>
      {parts.map((part, index) => {
        const answer = answers[part.id];
        return (
          <section key={part.id} class="question-part" aria-labelledby={index === 0 ? undefined : `part-${part.id}`}>
            <PartHead part={part} isFirst={index === 0} />
            {part.how && <How question={part} />}
            {answer ? (
              <button type="button" class="button" onClick={() => reopen(part.id)}>
                {pageWords.asking.taken(answerText(part, answer))} ({pageWords.asking.change})
              </button>
            ) : (
              <>
                <AnswerForm question={part} onAnswer={(one) => take(part.id, one)} />
                <div class="question-others">
                  <button
                    type="button"
                    class="button"
                    onClick={() => take(part.id, { choices: [], numbers: {}, doesNotKnow: true })}
                  >
                    {pageWords.question.dontKnow}
                  </button>
                </div>
              </>
            )}
          </section>
        );
      })}
      {answers[question.id] && (
        <button type="button" class="button is-quiet" onClick={() => send(answers)}>
          {pageWords.asking.sendOne}
        </button>
      )}
    </>
  );
}

/** The first question stands in the heading of the card, every other in one of its own. */
function headingOf(first: QuestionView, id: string): string {
  return id === first.id ? 'question-heading' : `part-${id}`;
}

/** What is asked and why; of the first question both stand at the head of the card. */
function PartHead({ part, isFirst }: { readonly part: QuestionView; readonly isFirst: boolean }) {
  const ask = useTerms(part.ask);
  return (
    <>
      <h3 id={`part-${part.id}`} tabIndex={-1} hidden={isFirst}>
        {isFirst ? part.ask : ask.text}
      </h3>
      {ask.told}
      {!isFirst && (
        <p class="question-why">
          <TermText text={whyOf(part)} />
        </p>
      )}
    </>
  );
}

function without(answers: Readonly<Record<string, FormAnswer>>, id: string): Readonly<Record<string, FormAnswer>> {
  return Object.fromEntries(Object.entries(answers).filter(([one]) => one !== id));
}

function answerText(part: QuestionView, { choices, numbers, doesNotKnow }: FormAnswer): string {
  if (doesNotKnow) return pageWords.question.dontKnow;
  const labels = choices.map((id) => part.choices.find((one) => one.id === id)?.label ?? id);
  return [...labels, ...Object.values(numbers)].join(', ') || coreWords.dialogue.person.nothing;
}
