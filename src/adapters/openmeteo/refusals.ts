import { codedError, type LoamwardError } from '../../core/errors/coded-error.ts';

const longestReason = 200;

/** The coded error for an HTTP status that is no success, with the reason that the body gives, if any. */
export function refusal(status: number, body: Uint8Array): LoamwardError {
  const came = [`HTTP status ${status}`, reasonIn(body)].filter(Boolean).join(': ');
  const expected = 'a forecast';
  if (status === 429) return codedError('FORECAST_BUSY', { expected, came });
  if (status >= 500) return codedError('FORECAST_DOWN', { expected, came });
  return codedError('FORECAST_REJECTED', { expected, came });
}

/** The coded error for text where numbers should be: the service's own refusal sent as a success, or null for other bytes. */
export function refusalInSuccess(body: Uint8Array): LoamwardError | null {
  const reason = reasonIn(body);
  return reason === null
    ? null
    : codedError('FORECAST_REJECTED', { expected: 'a forecast', came: `the reply: ${reason}` });
}

/** The `reason` of the service's JSON error body, in plain characters and cut short; null for any other body. */
function reasonIn(body: Uint8Array): string | null {
  if (body[0] !== 0x7b || body.length > 10_000) return null;
  try {
    const parsed: unknown = JSON.parse(new TextDecoder().decode(body));
    const reason = parsed && typeof parsed === 'object' && 'reason' in parsed ? parsed.reason : null;
    return typeof reason === 'string' ? reason.replaceAll(/[^\x20-\x7e]/g, ' ').slice(0, longestReason) : null;
  } catch {
    return null;
  }
}
