import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { WebSocketServer } from 'ws';

/** A bare ws server that sends back what comes, until its standard input ends; prints its address. */
export async function main(): Promise<number> {
  const server = new WebSocketServer({ port: 0, host: '127.0.0.1' });
  server.on('connection', (socket) => socket.on('message', (data) => socket.send(String(data))));
  await once(server, 'listening');
  process.stdout.write(`http://127.0.0.1:${(server.address() as AddressInfo).port}\n`);
  await once(process.stdin.resume(), 'end');
  for (const socket of server.clients) socket.terminate();
  server.close();
  return 0;
}
