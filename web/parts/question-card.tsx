import type { QuestionView } from '../../src/core/dialogue/view-types.ts';
import type { Chat, FormAnswer } from '../chat/chat.ts';
import { ReadAloud } from '../speech/read-aloud.tsx';
import { pageWords } from '../words.ts';
import { ChoiceButtons } from './choice-buttons.tsx';
import { HourButtons } from './hour-buttons.tsx';
import { How } from './how.tsx';
import { NumberForm } from './number-form.tsx';
import { PlaceForm } from './place-form.tsx';
import { SignList } from './sign-list.tsx';
import { TermText, useTerms } from './term-text.tsx';
import { Together } from './together.tsx';

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
  readonly onSay: Chat['say'];
}

/** The open question: what, why, how to find out, and the ways to answer. */
export function QuestionCard({ question, isSending, canHurry, isNew, onAnswer, onRequest, onSay }: QuestionCardProps) {
  const words = pageWords.question;
  const ask = useTerms(question.ask);
  return (
    <section class="question" aria-labelledby="question-heading" aria-busy={isSending}>
      <h2 id="question-heading" data-heading="question" tabIndex={-1}>
        {ask.text}
      </h2>
      {ask.told}
      {question.before && <p class="question-before">{question.before}</p>}
      {question.why && (
        <p class="question-why">
          <TermText text={whyOf(question)} />
        </p>
      )}
      <ReadAloud
        sentences={[question, ...question.together].flatMap(({ ask, choices }) => [
          ask,
          ...choices.map(({ label }) => label),
        ])}
        startsByItself={isNew}
      />
      <HourButtons hours={[question, ...question.together].flatMap(({ hours }) => hours)} onSay={onSay} />
      {question.how && question.together.length === 0 && <How question={question} />}
      {question.together.length > 0 ? (
        <Together question={question} onAnswer={onAnswer} />
      ) : (
        <AnswerForm question={question} onAnswer={onAnswer} />
      )}
      {question.before !== null && (
        <button type="button" class="button" onClick={() => onRequest('keep')}>
          {pageWords.asking.keep}
        </button>
      )}
      {question.form !== 'confirm' && question.together.length === 0 && (
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

/** Why it is asked at all, and what it settles now. */
export function whyOf({ why, now }: QuestionView): string {
  return [why, now].filter(Boolean).join(' ');
}

/** The ways to answer a question by its form. */
export function AnswerForm(form: FormProps) {
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
