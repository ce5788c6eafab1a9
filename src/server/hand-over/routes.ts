import { createHash, randomBytes } from 'node:crypto';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ConversationStore } from '../../adapters/store/conversation-store.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import { catalogueOf } from '../../core/words/catalogue.ts';
import { handOverOf } from '../../core/words/hand-over.ts';
import { secondsOf, showDay } from '../../core/words/times.ts';
import type { Hub } from '../chat/hub.ts';
import type { Log } from '../log.ts';
import type { ServerSettings } from '../settings.ts';
import { createAnswer } from '../sync/answer.ts';
import { tokenOf } from '../sync/request-parts.ts';
import type { WebFiles } from '../web-files.ts';
import { agingStyle, gonePage, type ShownPage, shownPage } from './shown-page.ts';
import type { ShownAnswer, ShownStore } from './shown-store.ts';

/** What handing an answer over needs. */
export interface HandOverMeans {
  readonly hub: Hub;
  readonly store: ConversationStore;
  readonly shown: ShownStore;
  readonly files: WebFiles;
  readonly settings: ServerSettings;
  readonly now: () => EpochSeconds;
  readonly log: Log;
}

const secondsPerDay = 86_400;

/** Headers of a shown page beside those of every answer and its own policy: found by no search, kept nowhere. */
const shownHeaders = {
  'x-robots-tag': 'noindex, nofollow, noarchive',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
} as const;

/**
 * POST /hand-over shows the answer that stands under an address of its own, GET /hand-over lists those of a conversation,
 * DELETE /hand-over/<id> takes one back; all by the token in the Authorization header. GET /shown/<id> is the page.
 */
export function serveHandOver(app: FastifyInstance, means: HandOverMeans): void {
  const { hub, store, shown, files, settings, now, log } = means;
  const answer = createAnswer({ settings, now, log });
  const styles = stylesOf(files);

  app.post('/hand-over', (request, reply) =>
    answer(request, reply, async () => {
      const token = tokenOf(request.headers.authorization);
      if (!(await store.read(token, now()))) throw gone();
      const held = await hub.openOrBegin(token);
      try {
        const view = held.conversation.view();
        const { language = view?.language } = request.query as Readonly<Record<string, unknown>>;
        const handOver = view && handOverOf(view, catalogueOf(String(language)));
        if (!handOver) throw codedError('HAND_OVER_NOTHING', { expected: 'an answer that stands', came: 'none' });
        const made: ShownAnswer = {
          id: randomBytes(32).toString('hex'),
          maker: makerOf(token),
          handOver,
          madeAt: now(),
          until: now() + settings.shownDays * secondsPerDay,
        };
        await shown.add(made);
        log({ event: 'shown' });
        return linkOf(made);
      } finally {
        held.release();
      }
    }),
  );
  app.get('/hand-over', (request, reply) =>
    answer(request, reply, async () => {
      const mine = await shown.listOf(makerOf(tokenOf(request.headers.authorization)), now());
      return { links: mine.map(linkOf) };
    }),
  );
  app.delete('/hand-over/:id', (request, reply) =>
    answer(request, reply, async () => {
      const maker = makerOf(tokenOf(request.headers.authorization));
      const isRemoved = await shown.remove((request.params as { readonly id: string }).id, maker);
      if (!isRemoved) throw codedError('SHOWN_GONE', { expected: 'an answer that you show', came: 'none' });
      log({ event: 'taken-back' });
      return { removed: true };
    }),
  );
  app.get('/shown/:id', async (request, reply) => {
    const found = await shown.read((request.params as { readonly id: string }).id, now());
    const words = catalogueOf(found?.handOver.language ?? 'en');
    if (!found) return sendPage(reply.code(404), gonePage(styles, words, 'SHOWN_GONE'));
    const page = pageOf(found, now());
    return sendPage(reply, shownPage(page, styles, words), page.secondsLeft);
  });
}

function sendPage(reply: FastifyReply, html: string, secondsLeft: number | null = null): FastifyReply {
  const style = secondsLeft === null ? '' : ` 'sha256-${sha256(agingStyle(secondsLeft)).digest('base64')}'`;
  const policy = `default-src 'none'; style-src 'self'${style}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;
  return reply
    .headers({ ...shownHeaders, 'content-security-policy': policy })
    .type('text/html; charset=utf-8')
    .send(html);
}

function sha256(text: string) {
  return createHash('sha256').update(text);
}

/** The conversation's time runs on as the server's does: that of an invented day too. */
function pageOf({ handOver, madeAt, until }: ShownAnswer, at: number): ShownPage {
  const { shown } = catalogueOf(handOver.language).handOver;
  const moment = secondsOf(handOver.madeAt) + (at - madeAt);
  const left = handOver.validUntil === null ? null : secondsOf(handOver.validUntil) - moment;
  const day = new Date(until * 1000).toISOString().slice(0, 10);
  return {
    handOver,
    untilText: shown.until(showDay(day, catalogueOf(handOver.language))),
    isWithdrawn: left !== null && left < 0,
    secondsLeft: left !== null && left >= 0 ? left : null,
  };
}

function linkOf({ id, until, madeAt, handOver }: ShownAnswer) {
  return { id, address: `/shown/${id}`, until, madeAt, headline: handOver.headline };
}

function makerOf(token: string): string {
  return sha256(token).digest('hex');
}

function gone() {
  return codedError('CONVERSATION_GONE', { expected: 'a conversation that is kept', came: 'none' });
}

/** Addresses of the built page's style sheets. */
function stylesOf(files: WebFiles): string[] {
  const html = files.get('/')?.body.toString('utf8') ?? '';
  return [...html.matchAll(/<link[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g)].map((match) => match[1]!);
}
