import * as z from 'zod';
import { codedError } from '../errors/coded-error.ts';
import type { Pack } from '../rules/pack-types.ts';
import { answerResults } from './check-answer.ts';
import { judgeDay } from './judge-day.ts';
import type { Review } from './schedule.ts';
import { madeKinds, type PracticeDay } from './types.ts';

/** Days that an adviser gives: of recorded weather at a place in one season. */
export interface DaySet {
  readonly format: 'loamward-practice-days';
  /** The rules that the days were chosen by. */
  readonly pack: { readonly id: string; readonly hash: string };
  /** Where the weather was recorded. */
  readonly place: string;
  /** Year in which the season opened. */
  readonly season: number;
  readonly days: readonly PracticeDay[];
}

const verdicts = ['spray-today', 'wait', 'do-not-spray'] as const;
const card = { rule: z.string().min(1), kind: z.enum([...madeKinds, 'weather']) };

const daySet = z.strictObject({
  format: z.literal('loamward-practice-days'),
  pack: z.strictObject({ id: z.string(), hash: z.string() }),
  place: z.string(),
  season: z.int(),
  days: z
    .array(
      z.strictObject({
        id: z.string().min(1),
        ...card,
        facts: z.record(z.string(), z.unknown()),
        at: z.string(),
        near: z.strictObject({ fact: z.string(), within: z.nullable(z.number()) }).optional(),
      }),
    )
    .min(1),
});

const review = z.strictObject({
  ...card,
  pack: z.string().optional(),
  at: z.number(),
  day: z.string(),
  verdict: z.enum(verdicts),
  result: z.enum(answerResults),
  reason: z.nullable(z.string()),
  typed: z.string().optional(),
});

/** A set of days as read from a file, every one of which the rules can judge. Throws PRACTICE_FILE_MISFIT, or the error of its facts. */
export function parseDaySet(json: unknown, pack: Pack, file: string): DaySet {
  const found = daySet.safeParse(json);
  if (!found.success) throw misfit('a set of practice days', found.error, file);
  const set = found.data as DaySet;
  if (set.pack.id !== pack.id) {
    const expected = `days of the treatment ${pack.id}`;
    throw codedError('PRACTICE_FILE_MISFIT', { expected, came: set.pack.id, file, pointer: '/pack/id' });
  }
  for (const day of set.days) judgeDay(day, pack);
  return set;
}

/** One answer as kept. Throws PRACTICE_FILE_MISFIT. */
export function parseReview(json: unknown, file: string): Review {
  const found = review.safeParse(json);
  if (!found.success) throw misfit('an answer to a practice day', found.error, file);
  return found.data as Review;
}

function misfit(expected: string, error: z.ZodError, file: string) {
  const [issue] = error.issues;
  const pointer = (issue?.path ?? []).map((step) => `/${String(step)}`).join('');
  return codedError('PRACTICE_FILE_MISFIT', { expected, came: issue?.message ?? 'something else', file, pointer });
}
