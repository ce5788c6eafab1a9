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
  const takesGzip = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
  if (file.gzipped && takesGzip) return reply.header('content-encoding', 'gzip').send(file.gzipped);
  return reply.send(file.body);
}
