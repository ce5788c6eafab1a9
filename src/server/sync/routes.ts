import { createHash } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import type { ForecastSource, OfferedField } from '../../adapters/conversation/types.ts';
import type { ConversationStore } from '../../adapters/store/conversation-store.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { parseEvents } from '../../core/protocol/events/parse-events.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { Hub } from '../chat/hub.ts';
import type { Log } from '../log.ts';
import type { ServerSettings } from '../settings.ts';
import { createAnswer } from './answer.ts';
import { countOf, degreesOf, tokenOf } from './request-parts.ts';

/** Most bytes that one hand-over may hold. */
export const largestHandOverBytes = 1_048_576;

/** What the routes for pages without a connection need. */
export interface SyncMeans {
  readonly hub: Hub;
  readonly store: ConversationStore;
  /** Rules that there are just then, those in force first. */
  readonly packs: () => readonly [Pack, ...Pack[]];
  readonly fields: readonly OfferedField[];
  readonly forecastService: ForecastSource;
  readonly settings: ServerSettings;
  readonly now: () => EpochSeconds;
  /** Version of the program, for pages that were loaded earlier. */
  readonly coreVersion: string;
  readonly log: Log;
}

/**
 * What a page needs to answer without a connection, and to hand over what was said meanwhile: GET /packs, /fields, /forecast,
 * GET and POST /events. A conversation is named by its token in the Authorization header, never in an address.
 */
export function serveSync(app: FastifyInstance, means: SyncMeans): void {
  const { hub, store, packs, fields, forecastService, settings, now, coreVersion, log } = means;
  let written: { readonly of: readonly Pack[]; readonly body: string; readonly tag: string } | null = null;
  const writtenPacks = () => {
    const of = packs();
    if (written?.of !== of) {
      const body = JSON.stringify({ coreVersion, packs: of });
      written = { of, body, tag: `"${createHash('sha256').update(body).digest('hex')}"` };
    }
    return written;
  };

  const answer = createAnswer({ settings, now, log });

  app.get('/packs', async (request, reply) => {
    const { body, tag } = writtenPacks();
    void reply.headers({ 'cache-control': 'no-cache', etag: tag }).type('application/json; charset=utf-8');
    return request.headers['if-none-match'] === tag ? reply.code(304).send() : reply.send(body);
  });
  app.get('/fields', (request, reply) =>
    answer(request, reply, async () => ({
      fields: fields.map(({ profile, inventedNow, packs }) => ({ profile, inventedNow, ...(packs ? { packs } : {}) })),
    })),
  );
  app.get('/forecast', (request, reply) =>
    answer(request, reply, async () => {
      const { latitude, longitude } = request.query as Readonly<Record<string, unknown>>;
      const point = { latitude: degreesOf(latitude, 90), longitude: degreesOf(longitude, 180) };
      const found = await forecastService.forecastFor(point);
      if ('forecast' in found) return found;
      void reply.code(502);
      return { error: found.error };
    }),
  );
  app.get('/events', (request, reply) =>
    answer(request, reply, async () => {
      const token = tokenOf(request.headers.authorization);
      const have = countOf((request.query as Readonly<Record<string, unknown>>)['have']);
      const kept = await store.read(token, now());
      if (!kept) throw codedError('CONVERSATION_GONE', { expected: 'a conversation that is kept', came: 'none' });
      return { events: kept.events.slice(have), count: kept.events.length };
    }),
  );
  app.post('/events', { bodyLimit: largestHandOverBytes }, (request, reply) =>
    answer(request, reply, async () => {
      const token = tokenOf(request.headers.authorization);
      const parsed = parseEvents(request.body);
      if (!parsed.ok) throw codedError(parsed.error.code, parsed.error);
      const held = await hub.openOrBegin(token);
      try {
        const came = await held.conversation.takeIn(parsed.events);
        const kept = await store.read(token, now());
        log({ event: 'handed-over', taken: came.taken.length, refused: came.refused.length });
        return { ...came, count: kept?.events.length ?? 0 };
      } finally {
        held.release();
      }
    }),
  );
}
