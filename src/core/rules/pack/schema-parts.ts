import { DateTime } from 'luxon';
import * as z from 'zod';

/** Object schema that refuses unknown keys; the message of that issue lists the right ones for `zod-findings.ts`. */
export function strict<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? Object.keys(shape).join(' ') : undefined),
  });
}

/** A kebab-case id. */
export const kebab = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'a kebab-case id');
/** A camelCase id. */
export const camel = z.string().regex(/^[a-z][a-zA-Z0-9]*$/, 'a camelCase id');
/** A day, YYYY-MM-DD. */
export const isoDay = z.iso.date('a date YYYY-MM-DD');
/** A moment with Z or an offset. */
export const instant = z
  .string()
  .refine(
    (text) => /T.*(Z|[+-]\d\d:\d\d)$/.test(text) && DateTime.fromISO(text).isValid,
    'an ISO instant such as 2026-11-06T09:00Z',
  );
/** A text that is not empty. */
export const words = z.string().regex(/\S/, 'a text that is not empty');
/** A text in each language. */
export const localised = z.record(z.string(), words);
/** Where something comes from. */
export const source = z.union([words, localised], 'a title, or a text in each language');
