import { definitionIn, definitionsOf, type FactId } from '../facts/registry/index.ts';
import type { Question } from '../rules/pack-types.ts';
import { inLanguage } from '../units/texts.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { labelOf } from '../words/facts.ts';
import { phraseOf } from '../words/phrases.ts';
import { capital, joinWords } from '../words/units.ts';
import { describeReading } from '../words/values.ts';
import { hoursToSay } from './hours-to-say.ts';
import type { NotedReading, QuestionNote } from './notes.ts';
import { type OpenQuestion, packQuestion, questionNote } from './open-question.ts';
import { settlesNow, standingAnswer } from './settles-now.ts';
import type { State } from './state.ts';
import type { ViewContext } from './view-context.ts';
import type { NumberBoxView, QuestionView } from './view-types.ts';

/** The open question as shown, with its buttons and boxes. */
export function questionView(open: OpenQuestion, state: State, context: ViewContext): QuestionView {
  const { pack, words } = context;
  const put = questionNote(open, state, pack);
  const ask = questionText(put.kind === 'pack' ? { ...put, together: [] } : put, context);
  if (open.kind !== 'pack') return confirmView(open, ask, context);
  const { question, together, isChange } = open;
  const view = packQuestionView(question, ask, state, context);
  const standing = isChange || question.form === 'signs' ? standingAnswer(question, state, context) : null;
  return {
    ...view,
    before: isChange ? standing : null,
    // Who told one sign is asked for the others: what was told is said back, or they would seem not to have been heard.
    now: isChange || standing === null ? view.now : `${standing} ${view.now}`,
    together: together.map((one) => packQuestionView(one, askOf(one, words), state, context)),
  };
}

function packQuestionView(question: Question, ask: string, state: State, context: ViewContext): QuestionView {
  const { words } = context;
  const text = question.text[words.language] ?? question.text['en'];
  return {
    id: question.id,
    ask,
    why: text?.why ?? '',
    how: text?.how ?? '',
    picture: question.picture ?? null,
    form: question.form,
    choices: (question.choices ?? []).map(({ id, label, help }) => ({
      id,
      label: inLanguage(label, words.language),
      help: help ? inLanguage(help, words.language) : null,
    })),
    boxes: boxesOf(question, context),
    hours: hoursToSay(question, state, context),
    now: settlesNow(question, state, context),
    before: null,
    together: [],
  };
}

/** The sentence by which a question is put. */
export function questionText(asked: QuestionNote, context: ViewContext): string {
  const { pack, words } = context;
  if (asked.kind !== 'pack') {
    const what = phraseOf(asked.readings.fact, asked.readings.reading, definitionsOf(pack.facts), words);
    if (asked.kind === 'unusual') return words.dialogue.confirmUnusual(capital(what));
    return words.dialogue.confirmDoubtful(asked.quote ?? what, what);
  }
  const question = pack.questions.find(({ id }) => id === asked.question);
  const together = pack.questions.filter(({ id }) => asked.together.includes(id)).map((one) => askOf(one, words));
  const ask = question ? askOf(question, words) : asked.question;
  return [...conflictText(asked.conflict, context), ask, ...together].join(' ');
}

function askOf({ id, text }: Question, words: Catalogue): string {
  return (text[words.language] ?? text['en'])?.ask ?? id;
}

function conflictText(conflict: readonly NotedReading[], { pack, words }: ViewContext): string[] {
  const definitionOf = definitionsOf(pack.facts);
  const facts = [...new Set(conflict.map(({ fact }) => fact))];
  return facts.map((fact) => {
    const definition = definitionOf(fact);
    const values = conflict
      .filter((one) => one.fact === fact)
      .map(({ reading }) => describeReading(definition, reading, words));
    return words.dialogue.confirmConflict(labelOf(fact, definitionOf, words), joinWords(values, words.values.and));
  });
}

function confirmView(
  open: Extract<OpenQuestion, { kind: 'unusual' | 'doubtful' }>,
  ask: string,
  context: ViewContext,
): QuestionView {
  const { pack, words } = context;
  const { dialogue } = words;
  const fact = open.kind === 'unusual' ? open.unusual.fact : open.observation.fact;
  const isNumber = definitionIn(pack.facts, fact).type === 'number' && packQuestion(open.id, pack) !== null;
  return {
    id: open.id,
    ask,
    why: open.kind === 'unusual' ? dialogue.confirmWhyUnusual : dialogue.confirmWhyDoubtful,
    how: dialogue.confirmHow,
    picture: null,
    form: 'confirm',
    choices: [
      { id: 'yes', label: dialogue.yes, help: null },
      { id: 'no', label: dialogue.no, help: null },
    ],
    boxes: isNumber ? [boxOf(fact, context)] : [],
    hours: [],
    now: '',
    before: null,
    together: [],
  };
}

function boxesOf({ form, facts }: Question, context: ViewContext): NumberBoxView[] {
  if (form !== 'number' && form !== 'place') return [];
  return facts
    .filter((fact) => definitionIn(context.pack.facts, fact).type === 'number')
    .map((fact) => boxOf(fact, context));
}

function boxOf(fact: FactId, { pack, words }: ViewContext): NumberBoxView {
  const { unit, range, shownDecimals = 1 } = definitionIn(pack.facts, fact);
  const [low, high] = range ?? [null, null];
  const decimals = fact === 'field.latitude' || fact === 'field.longitude' ? 4 : shownDecimals;
  const label = labelOf(fact, definitionsOf(pack.facts), words);
  return { fact, label, unit, low, high, step: Number((10 ** -decimals).toFixed(decimals)) };
}
