import type * as z from 'zod';
import type { ErrorDetails } from '../../core/errors/coded-error.ts';

/** The first problem of a form as error details: what was expected, what came, and the JSON Pointer (RFC 6901) to it. */
export function problemIn(error: z.ZodError, input: unknown): ErrorDetails {
  const issue = error.issues[0];
  const path = issue?.path ?? [];
  const came = path.reduce<unknown>(
    (value, key) => (value && typeof value === 'object' ? Reflect.get(value, key) : undefined),
    input,
  );
  const pointer = path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
  return { expected: issue?.message ?? 'another form', came: shown(came), ...(pointer ? { pointer } : {}) };
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  return (JSON.stringify(value) ?? typeof value).slice(0, 60);
}
