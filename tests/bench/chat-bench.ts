import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { WebSocket, WebSocketServer } from 'ws';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { reportOf } from '../../src/core/errors/coded-error.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { startServer } from '../../src/server/main.ts';
import { standardServerSettings } from '../../src/server/settings.ts';
import { type BenchTalk, openTalk } from './chat-client.ts';
import { type Timing, timing, timingLine } from './measure.ts';

/** Turns taken in each size of crowd. */
const turns = 2000;
/** As long as an answer is on the wire. */
const echoText = JSON.stringify({ type: 'answer', filler: 'x'.repeat(180) });

/** A chat turn with 1 and with 500 conversations open, each against a bare ws echo with as many sockets. */
export async function benchChat(root: string): Promise<string[]> {
  const lines: string[] = [];
  for (const crowd of [1, 500]) {
    const echo = await measureEcho(crowd);
    const chat = await measureChat(root, crowd);
    const allowed = 2 * echo.p99 + 2;
    lines.push(
      timingLine(echo),
      timingLine(chat),
      `  chat p99 ${chat.p99.toFixed(2)} ms, goal at most 2 x echo + 2 ms = ${allowed.toFixed(2)} ms`,
    );
  }
  return lines;
}

async function measureChat(root: string, crowd: number): Promise<Timing> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const error = reportOf('FORECAST_OFF', { expected: 'a forecast', came: 'none in the bench' });
  const server = await startServer({
    settings: {
      ...standardServerSettings,
      port: 0,
      connectionsPerAddress: 2 * crowd + 10,
      messagesPerSecond: 100_000,
      messageBurst: 100_000,
    },
    packs: [pack],
    forecastService: { forecastFor: async () => ({ error }) },
    webRoot: join(root, 'dist', 'web'),
  });
  const open = () => openTalk(server.url, 'mill-piece');
  const talks: BenchTalk[] = [];
  for (let index = 0; index < crowd; index++) talks.push(await open());
  const times: number[] = [];
  for (let index = 0; times.length < turns; index = (index + 1) % crowd) {
    const time = await talks[index]!.turn();
    if (time !== null) times.push(time);
    else {
      talks[index]!.close();
      talks[index] = await open();
    }
  }
  for (const talk of talks) talk.close();
  await server.close();
  return timing(`chat turn, ${crowd} open`, times);
}

async function measureEcho(crowd: number): Promise<Timing> {
  const server = new WebSocketServer({ port: 0, host: '127.0.0.1' });
  server.on('connection', (socket) => socket.on('message', (data) => socket.send(String(data))));
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const sockets: WebSocket[] = [];
  for (let index = 0; index < crowd; index++) {
    const socket = new WebSocket(`ws://127.0.0.1:${port}`);
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
  server.close();
  return timing(`bare ws echo, ${crowd} open`, times);
}
