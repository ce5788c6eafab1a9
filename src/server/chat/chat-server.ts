import type { IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { type WebSocket, WebSocketServer } from 'ws';
import type { Timers } from '../../adapters/clock.ts';
import { reportOf } from '../../core/errors/coded-error.ts';
import type { ErrorCode } from '../../core/errors/table.ts';
import { largestClientFrameBytes, type ServerMessage } from '../../core/protocol/messages.ts';
import { faultName, type Log } from '../log.ts';
import { peerAddress } from '../peer-address.ts';
import type { ServerSettings } from '../settings.ts';
import { createConnectionCaps } from './connection-caps.ts';
import { guard } from './guard.ts';
import { startHeartbeat } from './heartbeat.ts';
import { isOriginAllowed } from './origin.ts';
import { refuseUpgrade } from './refuse-upgrade.ts';
import { createSender, type Sender } from './sender.ts';
import { type ChatSession, createChatSession, type SessionMeans } from './session.ts';
import { createTokenBucket } from './token-bucket.ts';

/** Path of the socket. */
const chatPath = '/chat';

/** What the chat needs beside the session's means. */
export interface ChatMeans extends Pick<SessionMeans, 'hub' | 'offers' | 'now'> {
  readonly settings: ServerSettings;
  readonly timers: Timers;
  readonly log: Log;
}

/** The running chat. */
export interface ChatServer {
  readonly connections: () => number;
  /** Sends a message to every client that is connected. */
  readonly tell: (message: ServerMessage) => void;
  /** Tells every client that the server goes (1001) and resolves once all are gone, cut off after 2 s at the latest. */
  readonly close: () => Promise<void>;
}

/** Takes web socket upgrades of an HTTP server at /chat. Does not listen by itself. */
export function attachChat(server: Server, means: ChatMeans): ChatServer {
  const { settings, log, timers } = means;
  const sockets = new WebSocketServer({
    noServer: true,
    clientTracking: false,
    maxPayload: largestClientFrameBytes,
    maxFragments: 16,
    maxBufferedChunks: 64,
    perMessageDeflate: false,
  });
  const onFault = (error: unknown) => log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
  const caps = createConnectionCaps(settings.connections, settings.connectionsPerAddress);
  const heartbeat = startHeartbeat(timers, () => log({ event: 'silent' }), onFault);
  const open = new Map<WebSocket, Sender>();
  let closing: (() => void) | null = null;

  const connect = (socket: WebSocket): void => {
    socket.on(
      'error',
      guard(onFault, (error: NodeJS.ErrnoException) =>
        sender.close(badFrames[error.code ?? ''] ?? 'MESSAGE_BAD_FRAME'),
      ),
    );
    const sender: Sender = createSender(socket, timers, (code) => log({ event: 'closing', code }));
    const { hub, offers, now } = means;
    const bucket = createTokenBucket(settings.messagesPerSecond, settings.messageBurst, now);
    const session: ChatSession = createChatSession({ hub, offers, now, timers, log, bucket, ...sender });
    socket.on(
      'message',
      guard(onFault, (data: Buffer, isBinary: boolean) =>
        session.receive(isBinary ? '' : data.toString('utf8'), isBinary),
      ),
    );
    socket.on(
      'pong',
      guard(onFault, () => heartbeat.answered(socket)),
    );
    socket.on(
      'close',
      guard(onFault, (closeCode: number) => {
        heartbeat.remove(socket);
        sender.closed();
        open.delete(socket);
        session.end();
        log({ event: 'disconnected', closeCode, connections: open.size });
        if (open.size === 0) closing?.();
      }),
    );
    heartbeat.add(socket);
    open.set(socket, sender);
    log({ event: 'connected', connections: open.size });
  };
  /** A place for the connection, or the code why it gets none. */
  const admit = ({ url, headers, socket }: IncomingMessage): { release: () => void } | { code: ErrorCode } => {
    if (closing) return { code: 'SERVER_CLOSING' };
    if (url?.split('?', 1)[0] !== chatPath) return { code: 'ROUTE_UNKNOWN' };
    if (!isOriginAllowed(headers.origin, headers.host, settings)) return { code: 'ORIGIN_REFUSED' };
    return caps.take(peerAddress(headers['x-forwarded-for'], socket.remoteAddress, settings));
  };
  const upgrade = (request: IncomingMessage, socket: Duplex, head: Buffer): void => {
    socket.on('error', () => socket.destroy());
    const place = admit(request);
    if ('code' in place) {
      log({ event: 'refused', code: place.code });
      refuseUpgrade(socket, place.code);
      return;
    }
    socket.once('close', place.release);
    sockets.handleUpgrade(request, socket, head, guard(onFault, connect));
  };
  server.on('upgrade', guard(onFault, upgrade));

  return {
    connections: () => open.size,
    tell: (message) => {
      for (const sender of open.values()) sender.send(message);
    },
    close: () =>
      new Promise((resolve) => {
        closing = resolve;
        heartbeat.stop();
        const error = reportOf('SERVER_CLOSING', { expected: 'a server that goes on', came: 'one that closes' });
        for (const sender of open.values()) {
          sender.send({ type: 'error', error, of: null });
          sender.close('SERVER_CLOSING');
        }
        if (open.size === 0) resolve();
      }),
  };
}

/** What the faults that ws finds in a frame are called here; any other is a frame that breaks the standard. */
const badFrames: Readonly<Record<string, ErrorCode>> = {
  WS_ERR_UNSUPPORTED_MESSAGE_LENGTH: 'MESSAGE_TOO_LARGE',
  WS_ERR_TOO_MANY_BUFFERED_PARTS: 'MESSAGE_IN_PIECES',
  WS_ERR_INVALID_UTF8: 'MESSAGE_BAD_TEXT',
};
