import type { QuestionView } from '../../core/dialogue/view-types.ts';
import type { EventMessage } from '../../core/protocol/messages.ts';
import { choiceLetter } from './view-text.ts';

type AnswerMessage = Extract<EventMessage, { type: 'answer' }>;

/** What a typed line is sent as, before its stamp. */
export type LineMessage =
  | { readonly type: 'say'; readonly text: string }
  | Pick<AnswerMessage, 'type' | 'question' | 'choices' | 'numbers' | 'doesNotKnow' | 'also'>;

/**
 * A line as an answer by letters of the open question and of those that stand beside it: several letters where a question takes
 * several, or one for each. Anything else is free text.
 */
export function readLine(line: string, question: QuestionView | null): LineMessage {
  const say: LineMessage = { type: 'say', text: line.trim() };
  if (!question || question.form === 'confirm') return say;
  const parts = [question, ...question.together];
  const offered = parts.flatMap((part) => part.choices.map(({ id }) => ({ part, id })));
  const letters = line
    .trim()
    .toLowerCase()
    .split(/[\s,]+/);
  const taken = letters.map((letter) => offered.find((_, index) => choiceLetter(index) === letter));
  if (taken.some((one) => one === undefined)) return say;
  const answers = parts.flatMap((part) => {
    const choices = taken.flatMap((one) => (one?.part === part ? [one.id] : []));
    return choices.length === 0
      ? []
      : [{ part, answer: { question: part.id, choices, numbers: {}, doesNotKnow: false } }];
  });
  if (answers.some(({ part, answer }) => answer.choices.length > 1 && part.form !== 'signs')) return say;
  const [first, ...rest] = answers.map(({ answer }) => answer);
  if (!first) return say;
  return { type: 'answer', ...first, ...(rest.length > 0 ? { also: rest } : {}) };
}
