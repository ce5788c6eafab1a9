import type { RunningConversation } from '../../adapters/conversation/types.ts';
import type { ConversationView, VerdictView } from '../../core/dialogue/view-types.ts';
import { LoamwardError } from '../../core/errors/coded-error.ts';
import type { EventMessage } from '../../core/protocol/messages.ts';
import type { Io } from '../io.ts';
import { chooseField, type FieldChoice } from './choose-field.ts';
import { readLine } from './read-line.ts';
import { cautionLines, entryLines, fieldLine, questionLines, traceLines } from './view-text.ts';

/** What a conversation in a terminal needs. */
export interface ConverseMeans {
  readonly conversation: RunningConversation;
  readonly io: Io;
  /** Print only the last state, as JSON. */
  readonly json: boolean;
  /** Field id, null for an own field, undefined where the person is to choose. */
  readonly field: string | null | undefined;
  readonly offers: readonly FieldChoice[];
  readonly stamp: () => Pick<EventMessage, 'id' | 'at' | 'device' | 'count'>;
}

const endWords = new Set(['quit', 'exit', 'bye']);
/** Words that unfold a part of the standing verdict. */
const unfolding: Readonly<Record<string, (verdict: VerdictView) => string[]>> = {
  trace: traceLines,
  'all rules': traceLines,
  cautions: cautionLines,
};

/** Holds a conversation line by line until the input ends; resolves to the exit status. */
export async function converse(means: ConverseMeans): Promise<number> {
  const { conversation, io, json, stamp } = means;
  const say = (lines: readonly string[]) => {
    if (!json && lines.length > 0) io.write(`${lines.join('\n')}\n`);
  };
  const shown = new Set<string>();
  const show = () => say(newLines(conversation.view(), shown));
  const lines = io.lines()[Symbol.asyncIterator]();
  const prompt = () => {
    if (io.interactive && !json) io.write('> ');
  };
  const start = async (field: string | null) => {
    await send(conversation, { type: 'start', ...stamp(), field });
    const view = conversation.view();
    const named = view && fieldLine(view);
    say(named ? [named] : []);
    show();
  };

  const field = means.field === undefined ? await chooseField(means.offers, lines, say, prompt) : means.field;
  if (field === undefined) return 0;
  await start(field);
  prompt();
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    const line = next.value.trim();
    if (endWords.has(line.toLowerCase())) break;
    const view = conversation.view();
    const unfold = unfolding[line.toLowerCase()];
    if (unfold) say(view?.verdict ? unfold(view.verdict) : ['There is no verdict yet.']);
    else if (line !== '') {
      await send(conversation, { ...readLine(line, view?.question ?? null), ...stamp() } as EventMessage);
      show();
    }
    prompt();
  }
  if (json) io.write(`${JSON.stringify(conversation.view())}\n`);
  return 0;
}

async function send(conversation: RunningConversation, message: EventMessage): Promise<void> {
  const refusal = await conversation.receive(message);
  if (refusal) throw new LoamwardError(refusal.code, refusal);
  await conversation.settled();
}

/** What has come since the last time: new entries of the log, then the question where it is another. */
function newLines(view: ConversationView | null, shown: Set<string>): string[] {
  if (!view) return [];
  const entries = view.entries.filter((entry) => !shown.has(entry.id));
  for (const entry of entries) shown.add(entry.id);
  return [...entries.flatMap(entryLines), ...(view.question ? questionLines(view.question) : [])];
}
