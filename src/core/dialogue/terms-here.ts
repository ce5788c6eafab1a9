import type { Pack, Question } from '../rules/pack-types.ts';
import { inLanguage } from '../units/texts.ts';
import { catalogueOf } from '../words/catalogue.ts';
import { openQuestion } from './open-question.ts';
import type { State } from './state.ts';
import { sentencesIn, termsIn } from './terms.ts';

/** Ids of the trade terms that the open question and the answer given last say. */
export function termsHere(state: State, pack: Pack): string[] {
  const { language } = state;
  const open = openQuestion(state, pack);
  const questions = open?.kind === 'pack' ? [open.question, ...open.together] : [];
  const answer = state.verdicts.at(-1)?.decision;
  const said = [
    ...questions.flatMap((question) => wordsOf(question, language)),
    ...(answer ? sentencesIn([answer.why, answer.reasons, answer.advice]) : []),
  ];
  return termsIn(said, pack, catalogueOf(language)).map(({ id }) => id);
}

function wordsOf({ text, choices = [] }: Question, language: string): string[] {
  const labels = choices.flatMap(({ label, help = {} }) => [inLanguage(label, language), inLanguage(help, language)]);
  return [...sentencesIn(text[language] ?? text['en']), ...labels];
}
