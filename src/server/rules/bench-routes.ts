import { basename } from 'node:path';
import type { FastifyInstance } from 'fastify';
import * as z from 'zod';
import type { RulesOfFiles } from '../../adapters/pack-files/read-rules.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { localDate } from '../../core/facts/local-day.ts';
import { shortText } from '../../core/protocol/zod-report.ts';
import type { Pack } from '../../core/rules/pack-types.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { Log } from '../log.ts';
import type { ServerSettings } from '../settings.ts';
import { createAnswer } from '../sync/answer.ts';
import { folderToWrite, whyNoWrites } from './may-write.ts';
import type { RuleBook } from './rule-book.ts';
import { inForce, takeOverlay } from './take-overlay.ts';

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
 * GET /bench: of the treatment that `pack` names, else of the first, the pack as shipped with its cases, the overlays of the folder,
 * whether the page may write there, and what of the files was not taken; PACK_UNKNOWN for one without sound rules. POST /overlays:
 * writes one, from this machine alone and only where the server was started for it.
 */
export function serveBench(app: FastifyInstance, { rules, settings, now, log }: BenchMeans): void {
  const answer = createAnswer({ settings, now, log });
  const todayOf = ({ shipped }: RulesOfFiles): string => localDate(now(), shipped.zone);
  const treatments = (): readonly Pack[] => {
    const ids = [rules.files().shipped.id, ...rules.others().map(({ id }) => id)];
    return ids.flatMap((id) => rules.filesOf(id)?.shipped ?? []);
  };
  const refusedOf = (id: string) =>
    id === rules.files().shipped.id ? rules.refused() : (rules.others().find((one) => one.id === id)?.refused ?? null);

  app.get<{ readonly Querystring: { readonly pack?: string } }>('/bench', (request, reply) =>
    answer(request, reply, async () => {
      const { pack: named } = request.query;
      const files = named === undefined ? rules.files() : rules.filesOf(named);
      if (files === null) {
        const expected = `one of ${treatments()
          .map(({ id }) => id)
          .join(', ')}`;
        throw codedError('PACK_UNKNOWN', { expected, came: shortText(named ?? '') });
      }
      const { shipped, cases, overlays } = files;
      return {
        treatments: treatments().map(({ id, title }) => ({ id, title })),
        shipped,
        cases,
        overlays: overlays.map(({ file, content }) => ({ file: basename(file), content })),
        inForce: inForce(rules, shipped.id).map(({ hash }) => hash),
        today: todayOf(files),
        whyNoWrites: whyNoWrites(request, settings),
        refused: refusedOf(shipped.id),
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
      const written = await takeOverlay({ overlay, replaces }, { folder, rules, dayOf: todayOf });
      log({ event: 'overlay-written' });
      return written;
    }),
  );
}
