import { localDate } from '../facts/local-day.ts';
import { definitionIn, definitionsOf } from '../facts/registry/index.ts';
import { givesDose } from '../rules/reach.ts';
import { labelOf } from '../words/facts.ts';
import { noteIn } from '../words/notes.ts';
import { phraseOf } from '../words/phrases.ts';
import { describeSource } from '../words/sources.ts';
import { showDay, showTime } from '../words/times.ts';
import { joinWords } from '../words/units.ts';
import { describeValue } from '../words/values.ts';
import { askingSayings } from './asking-texts.ts';
import { momentOf } from './note-down.ts';
import type { Note, NotedReading, PlainNote } from './notes.ts';
import { packQuestion } from './open-question.ts';
import type { State } from './state.ts';
import { isUnderstood } from './understand/languages.ts';
import type { ViewContext } from './view-context.ts';
import { ruleText } from './worded-reason.ts';

type Kind = Exclude<Note['kind'], PlainNote>;
type NoteOf<K extends Kind> = Extract<Note, { kind: K }>;
type Spoken = Exclude<Kind, 'typed' | 'pressed' | 'requested' | 'understood' | 'question' | 'verdict' | 'error'>;
type Say<K extends Spoken> = (note: NoteOf<K>, state: State, context: ViewContext) => string;

/** What the assistant says for each kind of note that has data. */
const sayings: { readonly [K in Spoken]: Say<K> } = {
  hello: ({ field }, state, { pack, words }) => {
    const day = state.started?.shiftSeconds ? localDate(momentOf(state, state.started), pack.zone) : null;
    return [
      ...(field ? [words.dialogue.field(field.name, field.invented, day && showDay(day, words))] : []),
      ...(field?.note === undefined ? [] : [noteIn(field.note, words)]),
      words.dialogue.hello,
      ...(pack.languages.includes(words.language) ? [] : [words.dialogue.packInEnglish]),
      ...(isUnderstood(words.language) ? [] : [words.dialogue.readAsEnglish]),
    ].join(' ');
  },
  'not-understood': ({ pieces }, _, { words }) =>
    words.dialogue.notUnderstood(joinWords(pieces.map(words.dialogue.quote), words.values.and)),
  declined: ({ question }, _, { pack, words }) => {
    const asked = packQuestion(question, pack);
    const labels = (asked?.facts ?? []).map((fact) => labelOf(fact, definitionsOf(pack.facts), words));
    const say = asked?.forDose ? words.dialogue.declinedDose : words.dialogue.declined;
    return say(joinWords(labels, words.values.and));
  },
  remark: ({ code, quote }, _, { words }) => (words.dialogue.remarks[code] ?? words.dialogue.remark)(quote),
  undone: ({ readings }, _, context) => {
    const { dialogue } = context.words;
    return readings.length === 0 ? dialogue.undoneNothing : dialogue.undone(phrases(readings, context));
  },
  confirmed: ({ readings }, _, context) => context.words.dialogue.confirmed(phrases(readings, context)),
  denied: ({ readings }, _, context) => context.words.dialogue.denied(phrases(readings, context)),
  why: ({ question, rules }, _, { pack, words }) => {
    const asked = packQuestion(question, pack);
    const text = asked?.text[words.language] ?? asked?.text['en'];
    const titles = rules.map((rule) => ruleText(pack, rule, words.language)?.title ?? rule);
    if (titles.length === 0) return [text?.why ?? '', words.dialogue.whyNow].join(' ').trim();
    return words.dialogue.whyAsked(text?.why ?? '', joinWords(titles.map(words.values.inSentence), words.values.and));
  },
  'said-so-far': ({ values, at }, { forecast }, { pack, words }) => {
    const times = { now: at, forecastFetchedAt: forecast?.fetchedAt ?? null };
    const items = values.map(({ fact, resolved }) => {
      const definition = definitionIn(pack.facts, fact);
      const value = describeValue(definition, resolved, words);
      return words.dialogue.saidItem(
        labelOf(fact, definitionsOf(pack.facts), words),
        value,
        describeSource(resolved, times, words),
      );
    });
    return items.length === 0 ? words.dialogue.saidNothing : words.dialogue.saidSoFar(items.join('; '));
  },
  clamped: ({ at }, state, { pack, now, words }) =>
    words.dialogue.clamped(showTime((at + (state.started?.shiftSeconds ?? 0)) as typeof at, pack.zone, now, words)),
  forecast: ({ fetchedAt, attribution }, _, { pack, now, words }) =>
    words.dialogue.forecastCame(showTime(fetchedAt, pack.zone, now, words), noteIn(attribution, words)),
  supposed: ({ readings, verdict, outcome, rules }, _, context) => {
    const { pack, words } = context;
    const titles = rules
      .slice(0, 3)
      .map((rule) => words.values.inSentence(ruleText(pack, rule, words.language)?.title ?? rule));
    const because = joinWords(titles, words.values.and);
    return words.dialogue.supposed[outcome](phrases(readings, context), words.verdict.names[verdict], because);
  },
  ...askingSayings,
  'past-verdict': ({ headline }, _, { words }) => words.dialogue.earlierVerdict(headline),
  dose: ({ decision }, _, { pack, words }) => {
    if (decision?.verdict === 'do-not-spray') return words.dialogue.doseNone;
    if (!givesDose(pack.parameters)) return words.dialogue.doseOnLabel;
    return decision && !('needs' in decision.dose) ? decision.doseText : words.dialogue.doseAsked;
  },
};

/** What the assistant says for a note. */
export function noteText(
  note: Extract<Note, { kind: Spoken | PlainNote }>,
  state: State,
  context: ViewContext,
): string {
  if (note.kind in sayings) return (sayings[note.kind as Spoken] as Say<Spoken>)(note as never, state, context);
  return context.words.dialogue.plain[note.kind as PlainNote];
}

/** Readings as said back, one after the other. */
export function phrases(readings: readonly NotedReading[], { pack, words }: ViewContext): string {
  return readings.map(({ fact, reading }) => phraseOf(fact, reading, definitionsOf(pack.facts), words)).join('; ');
}
