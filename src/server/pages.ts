import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type ErrorDetails, reportOf } from '../core/errors/coded-error.ts';
import type { ErrorEntry } from '../core/errors/entry.ts';
import { type ErrorCode, errorTable } from '../core/errors/table.ts';
import type { WebFile, WebFiles } from './web-files.ts';
import { wordsAhead } from './words-ahead.ts';

/** Serves the built page from memory; every other address is answered with a coded error. */
export function servePages(app: FastifyInstance, files: WebFiles): void {
  const words = wordsAhead(files);
  app.get('/*', (request, reply) => {
    const path = pathOf(request.raw.url ?? '/');
    const file = files.get(path);
    if (file === undefined) return path === '/' ? sendNotBuilt(reply) : sendNotFound(reply);
    const link = file === files.get('/') ? words(request.headers['accept-language']) : null;
    return sendFile(request, reply, file, link);
  });
}

function sendNotBuilt(reply: FastifyReply): FastifyReply {
  return sendError(reply, 'PAGE_NOT_BUILT', { expected: 'a built page', came: 'an empty folder' });
}

/** 404 as coded JSON; what was asked for is not repeated. */
export function sendNotFound(reply: FastifyReply): FastifyReply {
  return sendError(reply, 'ROUTE_UNKNOWN', { expected: '/, /health, or a file of the page', came: 'another address' });
}

/** A coded error with its HTTP status. */
export function sendError(reply: FastifyReply, code: ErrorCode, details: ErrorDetails): FastifyReply {
  const status = (errorTable[code] as ErrorEntry).httpStatus ?? 500;
  return reply.code(status).header('cache-control', 'no-store').send(reportOf(code, details));
}

/** The path as it was sent, without its query: nothing is decoded, so nothing can be smuggled in. */
function pathOf(url: string): string {
  return url.split('?', 1)[0]!;
}

function sendFile(request: FastifyRequest, reply: FastifyReply, file: WebFile, link: string | null): FastifyReply {
  const vary = link === null ? 'accept-encoding' : 'accept-encoding, accept-language';
  reply.headers({ 'cache-control': file.cacheControl, etag: file.etag, vary, ...(link && { link }) }).type(file.type);
  if (request.headers['if-none-match'] === file.etag) return reply.code(304).send();
  const taken = encodingsIn(String(request.headers['accept-encoding'] ?? ''));
  const [encoding, body] = file.encoded.find(([name]) => taken.has(name)) ?? [null, file.body];
  return encoding === null ? reply.send(body) : reply.header('content-encoding', encoding).send(body);
}

/** The content encodings that a client takes (RFC 9110, section 12.5.3): those named, but for a weight of 0. */
function encodingsIn(header: string): ReadonlySet<string> {
  const named = header.split(',').map((one) =>
    one
      .trim()
      .toLowerCase()
      .split(/\s*;\s*q\s*=\s*/),
  );
  return new Set(named.flatMap(([name, weight = '1']) => (name && Number(weight) > 0 ? [name] : [])));
}
