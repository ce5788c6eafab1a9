import type { FastifyRequest } from 'fastify';
import { codedError } from '../../core/errors/coded-error.ts';
import type { ErrorCode } from '../../core/errors/table.ts';
import { isLoopback, isOriginAllowed } from '../chat/origin.ts';
import type { ServerSettings } from '../settings.ts';

/** Settings that decide whether the bench may write. */
export type WriteSettings = Pick<ServerSettings, 'host' | 'behindProxy' | 'overlays' | 'benchWrites'>;

/** Headers by which a proxy says for whom it asks. */
const proxied = ['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip'];

/**
 * Why the bench may not write here; null where it may. There is no sign-in, so only this machine itself may: the server listens on
 * loopback, was started for it with a folder, and the one who asks is no proxy and stands on loopback too.
 */
export function whyNoWrites(request: FastifyRequest, settings: WriteSettings): ErrorCode | null {
  if (!settings.benchWrites || settings.overlays === null) return 'BENCH_WRITES_OFF';
  const { headers, socket } = request;
  const peer = (socket.remoteAddress ?? '').replace(/^::ffff:/i, '');
  const isNear = isLoopback(settings.host) && isLoopback(peer) && isLoopback(nameIn(headers.host));
  return isNear && !settings.behindProxy && proxied.every((name) => headers[name] === undefined)
    ? null
    : 'BENCH_NOT_HERE';
}

/** The folder that the bench may write to, for a page of this very server. Throws BENCH_WRITES_OFF, BENCH_NOT_HERE, ORIGIN_REFUSED. */
export function folderToWrite(request: FastifyRequest, settings: WriteSettings): string {
  const why = whyNoWrites(request, settings);
  if (why === 'BENCH_WRITES_OFF' || settings.overlays === null) {
    throw codedError('BENCH_WRITES_OFF', {
      expected: 'LOAMWARD_BENCH_WRITES=yes and LOAMWARD_OVERLAYS',
      came: 'a server without them',
    });
  }
  if (why !== null) throw codedError(why, { expected: 'a page on the same machine', came: 'another way in' });
  const { origin, host } = request.headers;
  if (!isOriginAllowed(origin, host, { origins: [], host: settings.host })) {
    throw codedError('ORIGIN_REFUSED', { expected: 'a page of this server', came: 'another' });
  }
  return settings.overlays;
}

function nameIn(host: string | undefined): string {
  return (host ?? '').replace(/:\d+$/, '');
}
