import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { inLanguage } from '../units/texts.ts';
import { catalogueOf } from '../words/catalogue.ts';
import { secondsOf, showTime } from '../words/times.ts';
import type { Conversation } from './conversation.ts';
import { fieldLines } from './field-lines.ts';
import { instantText } from './moment.ts';
import { openQuestion } from './open-question.ts';
import { standingOf } from './standing.ts';
import { type StandingVerdict, standingVerdict } from './standing-verdict.ts';
import { sentencesIn, termsIn } from './terms.ts';
import { nowIn, type ViewContext } from './view-context.ts';
import { entriesOf } from './view-entries.ts';
import { standingOutlook } from './view-outlook.ts';
import { questionView } from './view-question.ts';
import { saidViews } from './view-said.ts';
import type { ConversationView, Entry } from './view-types.ts';
import { verdictView } from './view-verdict.ts';
import { wantedEffects } from './wanted-effects.ts';

/** What a conversation is looked at with; `now` is the reader's time, epoch seconds UTC. */
export interface ViewOptions {
  readonly pack: Pack;
  readonly now: EpochSeconds;
  /** ISO 639-1 code; that of the conversation when absent. */
  readonly language?: string;
}

/** All that a page or terminal shows of a conversation at a time. Pure: the same conversation and time give the same view. */
export function viewOf(
  { state, events }: Conversation,
  { pack, now, language = state.language }: ViewOptions,
): ConversationView {
  const context: ViewContext = { pack, now: nowIn(state, now), words: catalogueOf(language) };
  const open = openQuestion(state, pack);
  const last = standingVerdict(state, pack, context.now);
  const canCheckRest = standingOf(state, pack)?.plan.restLeft === true;
  const field = state.started?.field ?? null;
  const given = last?.is === 'standing' ? last.given : null;
  const waits = wantedEffects(state, pack).map(({ kind }) => kind);
  const fields = fieldLines(state, context);
  const shown: Omit<ConversationView, 'terms'> = {
    language,
    field: field && { id: field.id, name: field.name, invented: field.invented, note: field.note ?? null },
    packTitle: inLanguage(pack.title, language),
    entries: [...entriesOf(state, context), ...withdrawal(last, context)],
    earlier: Math.max(
      0,
      state.notes.findLastIndex(({ kind }) => kind === 'hello'),
    ),
    question: open && questionView(open, state, context),
    verdict: given && verdictView(given, state, context, { canCheckRest }),
    outlook: given && standingOutlook(given.decision, state, context),
    said: saidViews(state, context),
    fields: fields.length > 1 ? fields : [],
    now: instantText(context.now),
    busy: waits.includes('evaluate') ? 'rules' : waits.includes('fetch-forecast') ? 'forecast' : null,
    eventCount: events.reduce((most, { count }) => Math.max(most, count), 0),
  };
  return { ...shown, terms: termsIn(sentencesIn(shown), pack, context.words) };
}

function withdrawal(last: StandingVerdict | null, { pack, now, words }: ViewContext): Entry[] {
  if (last === null || last.is === 'standing' || last.given.decision.verdict !== 'spray-today') return [];
  const { validUntil } = last.given.decision;
  const id = `${last.given.id}/withdrawn`;
  if (last.is === 'stale' || validUntil === null) return [{ kind: 'said', id, text: words.dialogue.withdrawnStale }];
  const time = showTime(secondsOf(validUntil), pack.zone, now, words);
  return [{ kind: 'said', id, text: words.dialogue.withdrawnOld(time) }];
}
