import type { QuestionView } from '../../src/core/dialogue/view-types.ts';
import type { Chat, FormAnswer } from '../chat/chat.ts';
import { ReadAloud } from '../speech/read-aloud.tsx';
import { pageWords } from '../words.ts';
import { ChoiceButtons } from './choice-buttons.tsx';
import { How } from './how.tsx';
import { NumberForm } from './number-form.tsx';
import { PlaceForm } from './place-form.tsx';
import { SignList } from './sign-list.tsx';

/** What every form of an answer takes. */
export interface FormProps {
  readonly question: QuestionView;
  /** Gives the answer; does nothing while one is under way. */
  readonly onAnswer: (answer: FormAnswer) => void;
}

interface QuestionCardProps extends FormProps {
  readonly isSending: boolean;
  /** True where no answer stands that could be asked for early. */
  readonly canHurry: boolean;
  /** True where it came of something that the person did: only then it is read aloud by itself. */
  readonly isNew: boolean;
  readonly onRequest: Chat['request'];
}

/** The open question: what, why, how to find out, and the ways to answer. */
export function QuestionCard({ question, isSending, canHurry, isNew, onAnswer, onRequest }: QuestionCardProps) {
  const words = pageWords.question;
  return (
    <section class="question" aria-labelledby="question-heading" aria-busy={isSending}>
      <h2 id="question-heading" data-heading="question" tabIndex={-1}>
        {question.ask}
      </h2>
      {question.why && <p class="question-why">{question.why}</p>}
      <ReadAloud sentences={[question.ask, ...question.choices.map(({ label }) => label)]} startsByItself={isNew} />
      {question.how && <How question={question} />}
      <AnswerForm question={question} onAnswer={onAnswer} />
      {question.form !== 'confirm' && (
        <div class="question-others">
          <button
            type="button"
            class="button"
            onClick={() => onAnswer({ choices: [], numbers: {}, doesNotKnow: true })}
          >
            {words.dontKnow}
          </button>
          {canHurry && (
            <button type="button" class="button is-quiet" onClick={() => onRequest('verdict-now')}>
              {words.verdictNow}
            </button>
          )}
        </div>
      )}
    </section>
  );
}

function AnswerForm(form: FormProps) {
  switch (form.question.form) {
    case 'choice':
      return <ChoiceButtons {...form} />;
    case 'number':
    case 'confirm':
      return (
        <>
          <ChoiceButtons {...form} />
          <NumberForm {...form} />
        </>
      );
    case 'signs':
      return <SignList {...form} />;
    case 'place':
      return <PlaceForm {...form} />;
  }
}
