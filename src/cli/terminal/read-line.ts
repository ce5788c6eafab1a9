import type { QuestionView } from '../../core/dialogue/view-types.ts';
import type { EventMessage } from '../../core/protocol/messages.ts';
import { choiceLetter } from './view-text.ts';

/** What a typed line is sent as, before its stamp. */
export type LineMessage =
  | { readonly type: 'say'; readonly text: string }
  | Pick<Extract<EventMessage, { type: 'answer' }>, 'type' | 'question' | 'choices' | 'numbers' | 'doesNotKnow'>;

/** A line as an answer by letters of the open question; anything else is free text. */
export function readLine(line: string, question: QuestionView | null): LineMessage {
  const letters = line
    .trim()
    .toLowerCase()
    .split(/[\s,]+/);
  const choices = question?.choices ?? [];
  const taken = letters.map((letter) => choices.findIndex((_, index) => choiceLetter(index) === letter));
  const fits = taken.every((index) => index >= 0) && (taken.length === 1 || question?.form === 'signs');
  if (!question || question.form === 'confirm' || !fits) return { type: 'say', text: line.trim() };
  return {
    type: 'answer',
    question: question.id,
    choices: taken.map((index) => choices[index]!.id),
    numbers: {},
    doesNotKnow: false,
  };
}
