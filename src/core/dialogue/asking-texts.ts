import { definitionIn, definitionsOf } from '../facts/registry/index.ts';
import type { Pack } from '../rules/pack-types.ts';
import { inLanguage, sourceIn } from '../units/texts.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { labelOf } from '../words/facts.ts';
import { showAgo, showTime } from '../words/times.ts';
import { capital, joinWords } from '../words/units.ts';
import { describeReading } from '../words/values.ts';
import type { WordedReason } from './decision-types.ts';
import { everyFieldLine, fieldLines } from './field-lines.ts';
import { jobsFor } from './find-out.ts';
import type { Note } from './notes.ts';
import { compiledFor } from './standing.ts';
import type { State } from './state.ts';
import { headWord } from './terms.ts';
import type { ViewContext } from './view-context.ts';
import { standingOutlook } from './view-outlook.ts';
import { wordReason } from './worded-reason.ts';

type NoteOf<K extends Note['kind']> = Extract<Note, { kind: K }>;
type AskedBack = NoteOf<'asked-back'>;

/** What the assistant says to those who ask back, and of other fields. */
export const askingSayings = {
  explained: ({ term }: NoteOf<'explained'>, _: State, { pack, words }: ViewContext) => {
    const found = pack.glossary.find(({ id }) => id === term);
    return words.asking.explained(
      inLanguage(found?.text ?? {}, words.language),
      found ? sourceIn(found.source, words.language) : '',
    );
  },
  'not-explained': (note: NoteOf<'not-explained'>, _: State, { words }: ViewContext) =>
    words.asking.notExplained(note.words),
  'next-field': ({ field }: NoteOf<'next-field'>, state: State, { words }: ViewContext) => {
    const name = state.started?.fields?.find(({ id }) => id === field)?.name;
    return name === undefined ? words.asking.nextUnknown : words.asking.nextField(name);
  },
  fields: (_: NoteOf<'fields'>, state: State, context: ViewContext) => {
    const lines = fieldLines(state, context).map(({ text }) => text);
    const { only, list } = context.words.asking.fields;
    return lines.length === 0 ? only : list(lines.join('; '));
  },
  stopped: (_: { readonly kind: 'stopped' }, state: State, context: ViewContext) =>
    context.words.asking.stopped(
      everyFieldLine(state, context)
        .map((line) => `${line}.`)
        .join(' '),
    ),
  help: ({ terms }: NoteOf<'help'>, _: State, { pack, words }: ViewContext) => {
    const said = pack.glossary.filter(({ id }) => terms.includes(id)).map((term) => headWord(term, words.language));
    const [first] = pack.glossary;
    const help = words.dialogue.help(first ? headWord(first, words.language) : null);
    return [help, ...(said.length > 0 ? [words.asking.wordsHere(said.join(', '))] : [])].join(' ');
  },
  changing: ({ fact }: NoteOf<'changing'>, _: State, { pack, words }: ViewContext) =>
    words.asking.changing(labelOf(fact, definitionsOf(pack.facts), words)),
  carried: ({ carried }: NoteOf<'carried'>, _: State, { pack, now, words }: ViewContext) => {
    const items = carried.observations.map(({ fact, reading, at }) => {
      const definition = definitionIn(pack.facts, fact);
      const said = words.values.sources.said(showAgo(at, now, words));
      return words.dialogue.saidItem(
        labelOf(fact, definitionsOf(pack.facts), words),
        describeReading(definition, reading, words),
        said,
      );
    });
    return words.asking.carried(carried.from.name, items.join('; '));
  },
  'asked-back': (note: AskedBack, state: State, context: ViewContext) => answers[note.ask](note, state, context),
};

const answers: Readonly<Record<AskedBack['ask'], (note: AskedBack, state: State, context: ViewContext) => string>> = {
  'why-not': (note, _, { pack, words }) => {
    const { whyNot } = words.asking;
    const reasons = wordedReasons(note, pack, words);
    const met = reasons.filter(({ outcome }) => outcome === 'met');
    const unknown = reasons.filter(({ outcome }) => outcome === 'unknown');
    if (reasons.length === 0) return whyNot.nothing;
    const sentences = met.map(({ text, marginText }) =>
      [text, ...(marginText ? [`${capital(marginText)}.`] : [])].join(' '),
    );
    return [
      ...(met.length > 0 ? [whyNot.inTheWay(sentences.join(' '))] : []),
      ...(unknown.length > 0 ? [whyNot.notKnown(titlesOf(unknown, words))] : []),
    ].join(' ');
  },
  when: (note, state, context) => {
    const { pack, words } = context;
    const { when } = words.asking;
    const { given, judged } = note;
    const met = wordedReasons(note, pack, words).filter(({ outcome }) => outcome === 'met');
    if (judged.verdict === 'spray-today') {
      const until = judged.validUntil === null ? null : showTime(judged.validUntil, pack.zone, note.at, words);
      return when.today(until);
    }
    if (met.some(({ effect, lifts }) => effect === 'stop' && lifts === 'season')) return when.over;
    const outlook = given && standingOutlook(given, state, context);
    if (outlook) return [outlook.paragraph, ...(outlook.least ? [outlook.least] : [])].join(' ');
    if (met.length === 0) return when.openFirst;
    return when.lifts([...new Set(met.flatMap(({ lift }) => lift ?? []))].join(' '));
  },
  needs: (note, _, { pack, words }) => {
    const { needs } = words.asking;
    const { judged } = note;
    if (judged.verdict === 'spray-today') return needs.nothing;
    const reasons = wordedReasons(note, pack, words);
    const jobs = jobsFor({ ...judged, reasons }, pack, words.language);
    if (jobs.length > 0) return needs.list(jobs.join(' '));
    const lifts = [...new Set(reasons.flatMap(({ outcome, lift }) => (outcome === 'met' && lift ? [lift] : [])))];
    return lifts.length > 0 ? needs.list(lifts.join(' ')) : needs.wait;
  },
};

function wordedReasons({ judged, at }: AskedBack, pack: Pack, words: Catalogue): WordedReason[] {
  const byRule = new Map(judged.trace.map((rule) => [rule.rule, rule]));
  const { parameters } = compiledFor(pack, at);
  return judged.reasons.map((reason) =>
    wordReason(reason, { pack, rule: byRule.get(reason.rule), parameters, language: words.language }),
  );
}

function titlesOf(reasons: readonly WordedReason[], words: Catalogue): string {
  return joinWords(
    reasons.map(({ title }) => words.values.inSentence(title)),
    words.values.and,
  );
}
