import { codedError } from '../../core/errors/coded-error.ts';
import { shortText } from '../../core/protocol/zod-report.ts';

/** The token of an `Authorization: Bearer` header: 64 lower-case hex digits. Throws TOKEN_MISSING; what came is not repeated. */
export function tokenOf(authorization: string | undefined): string {
  const token = /^Bearer ([0-9a-f]{64})$/.exec(authorization ?? '')?.[1];
  if (token !== undefined) return token;
  throw codedError('TOKEN_MISSING', {
    expected: 'Authorization: Bearer and the 64 hex digits of the token',
    came: authorization === undefined ? 'no such header' : 'a header of another form',
  });
}

/** Degrees of a query, at most `most` either way. Throws REQUEST_WRONG. */
export function degreesOf(came: unknown, most: number): number {
  const value = typeof came === 'string' && /^-?\d{1,3}(\.\d{1,15})?$/.test(came) ? Number(came) : Number.NaN;
  if (Math.abs(value) <= most) return value;
  throw codedError('REQUEST_WRONG', { expected: `degrees, at most ${most} either way`, came: shortText(came) });
}

/** A count of a query; 0 where there is none. Throws REQUEST_WRONG. */
export function countOf(came: unknown): number {
  const text = came ?? '0';
  if (typeof text === 'string' && /^\d{1,7}$/.test(text)) return Number(text);
  throw codedError('REQUEST_WRONG', { expected: 'a whole number', came: shortText(came) });
}
