import type { RunningConversation } from '../../adapters/conversation/types.ts';
import type { ConversationView, VerdictView } from '../../core/dialogue/view-types.ts';
import { describeError, LoamwardError } from '../../core/errors/coded-error.ts';
import type { EventMessage, Notice } from '../../core/protocol/messages.ts';
import type { Io } from '../io.ts';
import { changeLine } from './change-line.ts';
import { chooseField, type FieldChoice } from './choose-field.ts';
import { dayLines } from './outlook-text.ts';
import { readLine } from './read-line.ts';
import { createScreen, type Screen } from './screen.ts';
import { cautionLines, traceLines } from './view-text.ts';

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
const unfolding: Readonly<
  Record<string, (verdict: VerdictView, outlook: ConversationView['outlook']) => readonly string[]>
> = {
  trace: traceLines,
  'all rules': traceLines,
  cautions: cautionLines,
  days: (_, outlook) => (outlook ? dayLines(outlook) : ['Of the coming days nothing is told.']),
};

/** Holds a conversation line by line until the input ends; resolves to the exit status. */
export async function converse(means: ConverseMeans): Promise<number> {
  const { conversation, io, json, offers } = means;
  const screen = createScreen(io, json);
  const lines = io.lines()[Symbol.asyncIterator]();
  const wishes: Notice[] = [];
  conversation.listen({
    onView: () => {},
    onNotice: (notice) => {
      wishes.push(notice);
    },
    onError: (error) => io.writeError(`${describeError(error.code, error)}\n`),
  });
  const choose = () => chooseField(offers, lines, screen.say, screen.prompt);
  let field = means.field === undefined ? await choose() : means.field;
  let carry = false;
  while (field !== undefined) {
    await start(field, means, screen, carry);
    const wish = await talk(means, screen, lines, wishes);
    carry = wish === 'choose-next';
    field = wish === 'leave' ? undefined : await choose();
  }
  if (json) io.write(`${JSON.stringify(conversation.view())}\n`);
  return 0;
}

async function start(
  field: string | null,
  { conversation, stamp }: ConverseMeans,
  screen: Screen,
  carry: boolean,
): Promise<void> {
  await send(conversation, { type: 'start', ...stamp(), field, ...(carry ? { carry } : {}) });
  screen.show(conversation.view());
}

/** Takes line after line; ends with the input, a word of leaving, or the wish for another field. */
async function talk(
  { conversation, stamp }: ConverseMeans,
  screen: Screen,
  lines: AsyncIterator<string>,
  wishes: Notice[],
): Promise<Notice> {
  screen.prompt();
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    const line = next.value.trim();
    const word = line.toLowerCase();
    if (endWords.has(word)) return 'leave';
    const view = conversation.view();
    if (unfolding[word]) {
      screen.say(view?.verdict ? unfolding[word](view.verdict, view.outlook) : ['There is no verdict yet.']);
    } else if (line !== '') {
      await send(conversation, {
        ...(changeLine(line, view) ?? readLine(line, view?.question ?? null)),
        ...stamp(),
      } as EventMessage);
      screen.show(conversation.view());
      const wish = wishes.shift();
      if (wish) return wish;
    }
    screen.prompt();
  }
  return 'leave';
}

async function send(conversation: RunningConversation, message: EventMessage): Promise<void> {
  const refusal = await conversation.receive(message);
  if (refusal) throw new LoamwardError(refusal.code, refusal);
  await conversation.settled();
}
