import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { WebSocket } from 'ws';
import type { ConversationView, QuestionView } from '../../src/core/dialogue/view-types.ts';
import type { ServerMessage } from '../../src/core/protocol/messages.ts';

/** Times of one turn, ms: to the first view that shows the answer taken, and to the view with nothing under way. */
export interface TurnTimes {
  readonly reply: number;
  readonly settled: number;
  /** True where a verdict came of it. */
  readonly verdict: boolean;
}

/** One open conversation of the bench. */
export interface BenchTalk {
  /** Answers the open question and waits until nothing is under way. Null at the end of the conversation. */
  readonly turn: () => Promise<TurnTimes | null>;
  readonly close: () => void;
}

/** Opens a socket, begins on the invented field and waits for its first settled view. */
export async function openTalk(url: string, field: string): Promise<BenchTalk> {
  const socket = new WebSocket(`${url.replace('http', 'ws')}/chat`, { origin: url });
  await once(socket, 'open');
  let view: ConversationView | null = null;
  let settle: (() => void) | null = null;
  let replied: number | null = null;
  socket.on('message', (data) => {
    const message = JSON.parse(String(data)) as ServerMessage;
    if (message.type !== 'view') return;
    view = message.view;
    replied ??= performance.now();
    if (view.busy === null) settle?.();
  });
  let count = 0;
  const send = async (message: object): Promise<TurnTimes> => {
    count += 1;
    const stamp = { id: randomUUID(), at: Date.now() / 1000, device: 'bench', count };
    const settled = new Promise<void>((resolve) => {
      settle = resolve;
    });
    replied = null;
    const started = performance.now();
    socket.send(JSON.stringify({ ...message, ...stamp }));
    await settled;
    settle = null;
    const ended = performance.now();
    return { reply: (replied ?? ended) - started, settled: ended - started, verdict: view?.verdict !== null };
  };
  socket.send(JSON.stringify({ type: 'hello', protocol: 2, resume: null }));
  await once(socket, 'message');
  await send({ type: 'start', field });
  return {
    turn: async () => (view?.question ? send(answerTo(view.question)) : null),
    close: () => socket.terminate(),
  };
}

/** The first choice, or a fit number; don't know where there is neither. */
function answerTo({ id, choices, boxes }: QuestionView): object {
  const [choice] = choices;
  const numbers = choice ? {} : Object.fromEntries(boxes.map(({ fact }) => [fact, 8]));
  return { type: 'answer', question: id, choices: choice ? [choice.id] : [], numbers, doesNotKnow: false };
}
