import type * as z from 'zod';
import type { ErrorDetails } from '../../core/errors/coded-error.ts';
import { reportIssue } from '../../core/protocol/zod-report.ts';

/** The first problem of a form as error details: what was expected in words, what came, and the JSON Pointer (RFC 6901) to it. */
export function problemIn(error: z.ZodError, input: unknown): ErrorDetails {
  const { expected, came, pointer } = reportIssue(error.issues, input);
  return { expected, came, ...(pointer === undefined || pointer === '/' ? {} : { pointer }) };
}
