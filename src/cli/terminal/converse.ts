import type { RunningConversation } from '../../adapters/conversation/types.ts';
import type { ConversationView, VerdictView } from '../../core/dialogue/view-types.ts';
import { LoamwardError } from '../../core/errors/coded-error.ts';
import type { EventMessage, Notice } from '../../core/protocol/messages.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { errorLine } from '../error-line.ts';
import type { Io } from '../io.ts';
import { changeLine } from './change-line.ts';
import { choose, type FieldChoice } from './choose.ts';
import { dayLines } from './outlook-text.ts';
import { readLine } from './read-line.ts';
import type { Screen } from './screen.ts';
import { cautionLines, traceLines } from './view-text.ts';

/** What a conversation in a terminal needs. */
export interface ConverseMeans {
  readonly conversation: RunningConversation;
  readonly io: Io;
  readonly lines: AsyncIterator<string>;
  readonly screen: Screen;
  /** Print only the last state, as JSON. */
  readonly json: boolean;
  /** Field id, null for an own field, undefined where the person is to choose. */
  readonly field: string | null | undefined;
  readonly offers: readonly FieldChoice[];
  /** Words of the language that is read and typed. */
  readonly words: Catalogue;
  readonly stamp: () => Pick<EventMessage, 'id' | 'at' | 'device' | 'count'>;
}

/** The part of the standing verdict that a typed word unfolds; null where it is no such word. */
function unfolded(word: string, view: ConversationView | null, words: Catalogue): readonly string[] | null {
  const { typed, noVerdict, noDays } = words.terminal;
  const parts: readonly (readonly [readonly string[], (verdict: VerdictView) => readonly string[]])[] = [
    [typed.trace, (verdict) => traceLines(verdict, words)],
    [typed.cautions, (verdict) => cautionLines(verdict, words)],
    [typed.days, () => (view?.outlook ? dayLines(view.outlook) : [noDays])],
  ];
  const part = parts.find(([names]) => names.includes(word));
  if (part === undefined) return null;
  return view?.verdict ? part[1](view.verdict) : [noVerdict];
}

/** Holds a conversation line by line until the input ends; resolves to the exit status. */
export async function converse(means: ConverseMeans): Promise<number> {
  const { conversation, io, lines, screen, json, offers, words } = means;
  const wishes: Notice[] = [];
  conversation.listen({
    onView: () => {},
    onNotice: (notice) => {
      wishes.push(notice);
    },
    onError: (error) => io.writeError(`${errorLine(error, words)}\n`),
  });
  const chooseField = () => choose({ heading: words.terminal.whichField, choices: offers }, lines, screen, words);
  let field = means.field === undefined ? await chooseField() : means.field;
  let carry = false;
  while (field !== undefined) {
    await start(field, means, screen, carry);
    const wish = await talk(means, screen, lines, wishes);
    carry = wish === 'choose-next';
    field = wish === 'leave' ? undefined : await chooseField();
  }
  if (json) io.write(`${JSON.stringify(conversation.view())}\n`);
  return 0;
}

async function start(
  field: string | null,
  { conversation, stamp, words }: ConverseMeans,
  screen: Screen,
  carry: boolean,
): Promise<void> {
  await send(conversation, {
    type: 'start',
    ...stamp(),
    field,
    language: words.language,
    ...(carry ? { carry } : {}),
  });
  screen.show(conversation.view());
}

/**
 * Takes line after line; ends with the input, a word of leaving, or the wish for another field. Who only stops asking may go on: what
 * was told is kept as long as the terminal is open.
 */
async function talk(
  { conversation, stamp, words }: ConverseMeans,
  screen: Screen,
  lines: AsyncIterator<string>,
  wishes: Notice[],
): Promise<Notice> {
  screen.prompt();
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    const line = next.value.trim();
    const word = line.toLowerCase();
    if (words.terminal.typed.end.includes(word)) return 'leave';
    const view = conversation.view();
    const part = unfolded(word, view, words);
    if (part) screen.say(part);
    else if (line !== '') {
      await send(conversation, {
        ...(changeLine(line, view) ?? readLine(line, view?.question ?? null)),
        ...stamp(),
      } as EventMessage);
      screen.show(conversation.view());
      const wish = wishes.shift();
      if (wish === 'leave') screen.say([words.terminal.howToLeave]);
      else if (wish) return wish;
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
