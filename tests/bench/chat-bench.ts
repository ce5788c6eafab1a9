import { once } from 'node:events';
import { WebSocket } from 'ws';
import { type BenchTalk, openTalk, type TurnTimes } from './chat-client.ts';
import { startChild } from './child.ts';
import { type Timing, timing, timingLine } from './measure.ts';

/** Turns taken in each size of crowd. */
const turns = 2000;
/** As long as an answer is on the wire. */
const echoText = JSON.stringify({ type: 'answer', filler: 'x'.repeat(180) });

/** A chat turn with 1 and with 500 conversations open, each against a bare ws echo with as many sockets. */
export async function benchChat(): Promise<string[]> {
  const lines: string[] = [];
  for (const crowd of [1, 500]) {
    const echo = await measureEcho(crowd);
    const [reply, verdict] = await measureChat(crowd);
    const allowed = 2 * echo.p99 + 2;
    lines.push(
      ...[echo, reply, verdict].map(timingLine),
      `  chat turn p99 ${reply.p99.toFixed(2)} ms, goal at most 2 x echo + 2 ms = ${allowed.toFixed(2)} ms`,
    );
  }
  return lines;
}

/** Turns to their reply, and those with a verdict to its end. */
async function measureChat(crowd: number): Promise<readonly [Timing, Timing]> {
  const server = await startChild(['src/cli/loamward.mjs', 'serve'], {
    LOAMWARD_PORT: '0',
    LOAMWARD_FORECAST: 'off',
    LOAMWARD_MAX_CONNECTIONS_PER_ADDRESS: String(2 * crowd + 10),
    LOAMWARD_MESSAGES_PER_SECOND: '100000',
    LOAMWARD_MESSAGE_BURST: '100000',
  });
  const open = () => openTalk(server.url, 'mill-piece');
  const talks: BenchTalk[] = [];
  for (let index = 0; index < crowd; index++) talks.push(await open());
  const times: TurnTimes[] = [];
  for (let index = 0; times.length < turns; index = (index + 1) % crowd) {
    const time = await talks[index]!.turn();
    if (time !== null) times.push(time);
    else {
      talks[index]!.close();
      talks[index] = await open();
    }
  }
  for (const talk of talks) talk.close();
  await server.stop();
  const withVerdict = times.filter(({ verdict }) => verdict).map(({ settled }) => settled);
  return [
    timing(
      `chat turn to its reply, ${crowd} open`,
      times.map(({ reply }) => reply),
    ),
    timing(`turn to a verdict checked twice, ${crowd} open`, withVerdict),
  ];
}

async function measureEcho(crowd: number): Promise<Timing> {
  const server = await startChild(['src/tools/run.mjs', 'tests/bench/echo-server.ts']);
  const sockets: WebSocket[] = [];
  for (let index = 0; index < crowd; index++) {
    const socket = new WebSocket(server.url.replace('http', 'ws'));
    await once(socket, 'open');
    sockets.push(socket);
  }
  const times: number[] = [];
  for (let index = 0; times.length < turns; index = (index + 1) % crowd) {
    const started = performance.now();
    sockets[index]!.send(echoText);
    await once(sockets[index]!, 'message');
    times.push(performance.now() - started);
  }
  for (const socket of sockets) socket.terminate();
  await server.stop();
  return timing(`bare ws echo, ${crowd} open`, times);
}
