import type { FastifyReply, FastifyRequest } from 'fastify';
import { codedError, type ErrorReport, isLoamwardError } from '../../core/errors/coded-error.ts';
import type { ErrorEntry } from '../../core/errors/entry.ts';
import { errorTable } from '../../core/errors/table.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import { isOriginAllowed } from '../chat/origin.ts';
import { faultName, type Log } from '../log.ts';
import { peerAddress } from '../peer-address.ts';
import type { ServerSettings } from '../settings.ts';
import { createAddressBuckets } from './address-buckets.ts';

/** Answers one request with what `work` gives and the server's time, or with a coded error and its status. Never rejects. */
export type Answer = (request: FastifyRequest, reply: FastifyReply, work: () => Promise<object>) => Promise<object>;

/** Answers requests of pages of this server only, each address at the rate of the chat's messages. */
export function createAnswer(means: {
  readonly settings: ServerSettings;
  readonly now: () => EpochSeconds;
  readonly log: Log;
}): Answer {
  const { settings, now, log } = means;
  const buckets = createAddressBuckets(settings.messagesPerSecond, settings.messageBurst, now);
  return async (request, reply, work) => {
    void reply.header('cache-control', 'no-store');
    try {
      const { origin, host, 'x-forwarded-for': forwarded } = request.headers;
      if (!buckets.take(peerAddress(forwarded, request.socket.remoteAddress, settings))) {
        throw codedError('REQUESTS_TOO_FAST', { expected: 'fewer requests a second', came: 'more' });
      }
      if (origin !== undefined && !isOriginAllowed(origin, host, settings)) {
        throw codedError('ORIGIN_REFUSED', { expected: 'a page of this server', came: 'another' });
      }
      return { ...(await work()), serverTime: now() };
    } catch (error) {
      return refuse(reply, error, log);
    }
  };
}

function refuse(reply: FastifyReply, error: unknown, log: Log): { readonly error: ErrorReport } {
  if (!isLoamwardError(error)) log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
  const known = isLoamwardError(error)
    ? error
    : codedError('SERVER_FAULT', { expected: 'an answer', came: 'a fault of the server' });
  void reply.code((errorTable[known.code] as ErrorEntry).httpStatus ?? (isLoamwardError(error) ? 400 : 500));
  return { error: known.toJSON() };
}
