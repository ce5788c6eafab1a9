import type { Question } from '../../../src/core/rules/pack-types.ts';
import type { Effect } from '../../../src/core/rules/types.ts';
import type { AnswerShape, TourAnswer } from '../../../src/core/tour/types.ts';
import { inLanguage } from '../../../src/core/units/texts.ts';
import { showWhole } from '../../../src/core/words/numbers.ts';
import { capital, unitSuffix } from '../../../src/core/words/units.ts';
import { learnWords } from '../../words.ts';
import type { Lesson } from '../open-rules.ts';
import { askOf, factNames, ruleNames } from './names.ts';

/** How an answer is called: the button's label, or "above 9 C, up to 10 C". */
export function shapeName(shape: AnswerShape, question: Question, { words, definitionOf }: Lesson): string {
  if (shape.kind === 'choice') {
    const choice = question.choices?.find(({ id }) => id === shape.choice);
    return choice ? inLanguage(choice.label, words.language) : shape.choice;
  }
  const { from, to, withFrom, withTo } = shape;
  const own = learnWords.logic.stretch;
  const { unit } = definitionOf(shape.fact);
  const shown = (value: number) => `${showWhole(words, value)}${unitSuffix(unit, words, showWhole(words, value))}`;
  if (from === null) return to === null ? '' : withTo ? own.upTo(shown(to)) : own.below(shown(to));
  if (to === null) return withFrom ? own.from(shown(from)) : own.above(shown(from));
  if (from === to) return own.just(shown(from));
  return withFrom ? own.between(shown(from), shown(to)) : own.aboveTo(shown(from), shown(to));
}

const effects: readonly Effect[] = ['stop', 'hold', 'advise'];

/** What an answer opens or closes, a sentence a line. */
export function answerLines({ rules, after, closes }: TourAnswer, lesson: Lesson): string[] {
  const own = learnWords.logic;
  const effectOf = new Map(lesson.compiled.rules.map(({ rule }) => [rule.id, rule.effect]));
  const metBy = (effect: Effect) =>
    rules.filter(({ rule, outcome }) => outcome === 'met' && effectOf.get(rule) === effect).map(({ rule }) => rule);
  const away = rules.filter(({ outcome }) => outcome === 'not-met').map(({ rule }) => rule);
  return [
    ...effects.flatMap((effect) => {
      const met = metBy(effect);
      return met.length === 0 ? [] : [own.settled(own.met[effect], ruleNames(met, lesson))];
    }),
    ...(away.length > 0 ? [own.notMet(ruleNames(away, lesson))] : []),
    ...rules
      .filter(({ outcome }) => outcome === 'unknown')
      .map(({ rule, waitsFor }) => own.open(lesson.titleOf(rule), factNames(waitsFor, lesson))),
    ...(closes.length > 0 ? [own.closes(closes.map((id) => askOf(id, lesson)).join(' '))] : []),
    own.after[after],
  ].map(capital);
}
