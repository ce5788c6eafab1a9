import type { ErrorReport } from '../errors/coded-error.ts';
import { definitionIn, isFactOf } from '../facts/registry/index.ts';
import { inLanguage } from '../units/texts.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { errorIn } from '../words/errors.ts';
import { showWhole } from '../words/numbers.ts';
import { nameBeforeWords } from '../words/phrases.ts';
import { joinWords, unitSuffix } from '../words/units.ts';
import type { GivenAnswer } from './events.ts';
import { noteText, phrases } from './note-texts.ts';
import type { Note } from './notes.ts';
import { packQuestion } from './open-question.ts';
import type { State } from './state.ts';
import type { ViewContext } from './view-context.ts';
import { questionText } from './view-question.ts';
import type { Entry } from './view-types.ts';
import { verdictView } from './view-verdict.ts';

/** The log as shown, oldest first. */
export function entriesOf(state: State, context: ViewContext): Entry[] {
  return state.notes.map((note, index) => entryOf(note, `${note.event}/${index}`, state, context));
}

function entryOf(note: Note, id: string, state: State, context: ViewContext): Entry {
  const { words } = context;
  const undone = state.undone.has(note.event);
  switch (note.kind) {
    case 'typed':
      return { kind: 'person', id, text: note.text, undone };
    case 'pressed':
      return { kind: 'person', id, text: answerText(note.answer, context), undone };
    case 'requested':
      return { kind: 'person', id, text: words.dialogue.person[note.request], undone };
    case 'understood': {
      const said = note.correction ? words.dialogue.corrected : words.dialogue.understood;
      return { kind: 'understood', id, text: said(understoodText(note, context)), undo: note.event, undone };
    }
    case 'question':
      return { kind: 'question', id, text: questionText(note.text, context) };
    case 'error':
      return { kind: 'error', id, error: note.error, text: errorText(note.error, words) };
    case 'verdict':
      return { kind: 'verdict', id, verdict: verdictView(state.verdicts[note.index]!, state, context, null) };
    default:
      return { kind: 'said', id, text: noteText(note, state, context) };
  }
}

/** Readings as said back; those that only stand for the words of a button are said by its words. */
function understoodText({ readings, answer }: Extract<Note, { kind: 'understood' }>, context: ViewContext): string {
  const { pack, words } = context;
  const isStandIn = ({ reading }: (typeof readings)[number]) =>
    answer !== null && answer.choices.length > 0 && reading.type === 'number' && reading.low !== undefined;
  const standIns = readings
    .filter(isStandIn)
    .map(({ fact }) => nameBeforeWords(fact, definitionIn(pack.facts, fact), words));
  const isChoice = answer !== null && answer.choices.length > 0;
  const plain = readings.filter((one) => !isStandIn(one) && !(isChoice && one.reading.type === 'does-not-know'));
  const parts = plain.length === 0 ? [] : [phrases(plain, context)];
  if (answer === null || standIns.length === 0) return parts.join('; ');
  const said = `${joinWords(standIns, words.values.and)}: ${words.values.inSentence(answerText(answer, context))}`;
  return [said, ...parts].join('; ');
}

function errorText(error: ErrorReport, words: Catalogue): string {
  const { code, says, expected, came, next } = errorIn(error, words);
  if (code.startsWith('FORECAST_')) return `${says} ${next}`;
  return words.dialogue.failed(says, expected, came, next);
}

/** What a person's press amounts to in words: the buttons' labels, the numbers with their unit, or "I don't know". */
function answerText({ question, choices, numbers, doesNotKnow }: GivenAnswer, { pack, words }: ViewContext): string {
  const { dialogue } = words;
  if (doesNotKnow) return dialogue.person.doesNotKnow;
  const offered = packQuestion(question, pack)?.choices ?? [];
  const plain: Readonly<Record<string, string>> = { yes: dialogue.yes, no: dialogue.no };
  const labels = choices.map((id) => {
    const choice = offered.find((one) => one.id === id);
    return choice ? inLanguage(choice.label, words.language) : (plain[id] ?? id);
  });
  const values = Object.entries(numbers).map(
    ([fact, value]) =>
      `${showWhole(words, value)}${unitSuffix(isFactOf(pack.facts, fact) ? definitionIn(pack.facts, fact).unit : null, words)}`,
  );
  return joinWords([...labels, ...values], words.values.and) || dialogue.person.nothing;
}
