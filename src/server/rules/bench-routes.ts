import { basename } from 'node:path';
import type { FastifyInstance } from 'fastify';
import * as z from 'zod';
import { codedError } from '../../core/errors/coded-error.ts';
import { localDate } from '../../core/facts/local-day.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { Log } from '../log.ts';
import type { ServerSettings } from '../settings.ts';
import { createAnswer } from '../sync/answer.ts';
import { folderToWrite, whyNoWrites } from './may-write.ts';
import type { RuleBook } from './rule-book.ts';
import { takeOverlay } from './take-overlay.ts';

/** Most bytes of an overlay that a page may send. */
export const largestOverlayBytes = 262_144;

/** What the routes of the adviser's bench need. */
export interface BenchMeans {
  readonly rules: RuleBook;
  readonly settings: ServerSettings;
  readonly now: () => EpochSeconds;
  readonly log: Log;
}

const toWriteSchema = z.strictObject({ overlay: z.unknown(), replaces: z.string().nullable() });

/**
 * GET /bench: the pack as shipped with its cases, the overlays of the folder, whether the page may write there, and what of the
 * files was not taken. POST /overlays: writes one, from this machine alone and only where the server was started for it.
 */
export function serveBench(app: FastifyInstance, { rules, settings, now, log }: BenchMeans): void {
  const answer = createAnswer({ settings, now, log });
  const today = (): string => localDate(now(), rules.files().shipped.zone);

  app.get('/bench', (request, reply) =>
    answer(request, reply, async () => {
      const { shipped, cases, overlays } = rules.files();
      return {
        shipped,
        cases,
        overlays: overlays.map(({ file, content }) => ({ file: basename(file), content })),
        inForce: (rules.packs()[0].overlays ?? []).map(({ hash }) => hash),
        today: today(),
        whyNoWrites: whyNoWrites(request, settings),
        refused: rules.refused(),
      };
    }),
  );
  app.post('/overlays', { bodyLimit: largestOverlayBytes }, (request, reply) =>
    answer(request, reply, async () => {
      const folder = folderToWrite(request, settings);
      const parsed = toWriteSchema.safeParse(request.body);
      if (!parsed.success) {
        throw codedError('REQUEST_WRONG', { expected: 'an object with overlay and replaces', came: 'another' });
      }
      const { overlay, replaces } = parsed.data;
      const written = await takeOverlay({ overlay, replaces }, { folder, rules, day: today() });
      log({ event: 'overlay-written' });
      return written;
    }),
  );
}
