import { setImmediate } from 'node:timers/promises';
import fastify, { type FastifyInstance } from 'fastify';
import { type Clock, systemTimers, type Timers } from '../adapters/clock.ts';
import { createConversation } from '../adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../adapters/conversation/dialogue-over.ts';
import { offerOf, packsInForce, treatmentOffers } from '../adapters/conversation/offers.ts';
import type { Dialogue, ForecastSource, OfferedField } from '../adapters/conversation/types.ts';
import type { ConversationStore } from '../adapters/store/conversation-store.ts';
import type { Pack } from '../core/rules/pack-types.ts';
import { hollinBankFarm } from '../demo/hollin-bank-farm.ts';
import { attachChat } from './chat/chat-server.ts';
import { createHub } from './chat/hub.ts';
import { serveHandOver } from './hand-over/routes.ts';
import { createShownStore, type ShownStore } from './hand-over/shown-store.ts';
import { faultName, type Log, silentLog } from './log.ts';
import { sendError, sendNotFound, servePages } from './pages.ts';
import { serveBench } from './rules/bench-routes.ts';
import { healthOf } from './rules/health.ts';
import { fixedRules, type RuleBook } from './rules/rule-book.ts';
import { securityHeaders } from './security-headers.ts';
import type { ServerSettings } from './settings.ts';
import { largestHandOverBytes, serveSync } from './sync/routes.ts';
import { readWebFiles } from './web-files.ts';

/** All that the server needs of the world. */
export interface AppMeans {
  readonly clock: Clock;
  readonly forecastService: ForecastSource;
  /** Treatment packs, checked: those in force first, that for conversations that name none before the others. */
  readonly packs: readonly [Pack, ...Pack[]];
  /** Rules that follow their files; `packs` for good where none are given. Closed with the server. */
  readonly rules?: RuleBook;
  readonly store: ConversationStore;
  readonly settings: ServerSettings;
  /** Makes a random UUID. */
  readonly newId: () => string;
  /** Version of the program, told to pages that go on without a connection. */
  readonly coreVersion?: string;
  /** Where answers shown under a link are kept; the server's memory where none is given. */
  readonly shown?: ShownStore;
  /** Folder of the built page. */
  readonly webRoot: string;
  /** Fields offered at the start; the invented farm where none are given. */
  readonly fields?: readonly OfferedField[];
  /** The conversation's own logic; that of the core over `packs` where none is given. */
  // biome-ignore lint/suspicious/noExplicitAny: its state is its own affair
  readonly dialogue?: Dialogue<any>;
  readonly timers?: Timers;
  readonly log?: Log;
}

/**
 * Makes the server without listening. Close it by `app.close()`: chat clients are told (1001) and gone within 2 s. The rules stay
 * open: whoever opened them closes them.
 */
export async function buildApp(means: AppMeans): Promise<FastifyInstance> {
  const { clock, packs, store, settings, newId, forecastService } = means;
  const {
    fields = hollinBankFarm,
    coreVersion = '',
    shown = createShownStore(),
    timers = systemTimers,
    log = silentLog,
    rules = fixedRules(packs),
  } = means;
  const inForce = () => packsInForce(rules.packs());
  const files = await readWebFiles(means.webRoot);
  const app = fastify({
    logger: false,
    forceCloseConnections: true,
    bodyLimit: 1024,
    requestTimeout: 10_000,
    frameworkErrors: (_error, _request, reply) => {
      void sendError(reply.headers(securityHeaders(undefined)), 'REQUEST_WRONG', {
        expected: 'a request for a page',
        came: 'another',
      });
    },
  });
  app.addHook('onRequest', async (request, reply) => {
    reply.headers(securityHeaders(request.headers.host));
  });
  app.setNotFoundHandler((_request, reply) => sendNotFound(reply));
  app.setErrorHandler((error, _request, reply) => {
    const status = (error as { readonly statusCode?: number }).statusCode ?? 500;
    if (status === 413) {
      return sendError(reply, 'EVENTS_TOO_LARGE', { expected: `at most ${largestHandOverBytes} bytes`, came: 'more' });
    }
    if (status < 500) return sendError(reply, 'REQUEST_WRONG', { expected: 'a request for a page', came: 'another' });
    log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
    return sendError(reply, 'SERVER_FAULT', { expected: 'an answer', came: 'a fault of the server' });
  });

  const dialogue = means.dialogue ?? dialogueOver(rules.packs);
  const hub = createHub({
    store,
    now: clock.now,
    newId,
    run: (keep, restored) =>
      createConversation(
        {
          dialogue,
          clock,
          newId,
          nextTurn: setImmediate,
          forecastService,
          fields,
          keep,
          get packs() {
            return inForce();
          },
        },
        restored,
      ),
  });
  const chat = attachChat(app.server, {
    settings,
    timers,
    log,
    hub,
    now: clock.now,
    offers: (language) => ({
      fields: fields.map(({ profile }) => offerOf(profile)),
      treatments: treatmentOffers(inForce(), fields, language),
    }),
  });
  const stopListening = rules.listen(() => chat.tell({ type: 'rules' }));
  app.addHook('preClose', async () => {
    stopListening();
    await chat.close();
  });
  app.get('/health', async (_request, reply) => {
    void reply.header('cache-control', 'no-store');
    return healthOf(rules);
  });
  app.get('/chat', (_request, reply) =>
    sendError(reply, 'UPGRADE_NEEDED', { expected: 'a web socket upgrade', came: 'a plain request' }),
  );
  serveSync(app, {
    hub,
    store,
    packs: rules.packs,
    fields,
    forecastService,
    settings,
    log,
    now: clock.now,
    coreVersion,
  });
  serveHandOver(app, { hub, store, shown, files, settings, log, now: clock.now });
  serveBench(app, { rules, settings, log, now: clock.now });
  servePages(app, files);
  return app;
}
