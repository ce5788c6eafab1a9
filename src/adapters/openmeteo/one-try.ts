import { codedError, isLoamwardError, type LoamwardError } from '../../core/errors/coded-error.ts';
import { refusal, refusalInSuccess } from './refusals.ts';
import { retryAfterSeconds } from './retry-after.ts';

/** No reply to one question comes near this many bytes. */
const mostBytes = 4_000_000;

/** Waits, and gives up waiting at once when the signal fires. */
export type Sleep = (milliseconds: number, signal?: AbortSignal) => Promise<void>;

/** What a transport needs from outside: all of it is given, so that tests need neither network nor time. */
export interface TransportMeans {
  readonly fetch: typeof fetch;
  readonly sleep: Sleep;
  /** Uniform in [0, 1). */
  readonly random: () => number;
  /** Epoch seconds, fractions allowed. */
  readonly clock: () => number;
}

/** How one try ended: whole bytes of a success, or an error, whether another try may help and how long the service asks to wait. */
export type TryResult =
  | { readonly bytes: Uint8Array; readonly invented: boolean }
  | { readonly error: LoamwardError; readonly again: boolean; readonly waitS: number | null };

/** One GET under a time limit in seconds, its whole body included. Never throws. */
export async function oneTry(
  means: TransportMeans,
  request: { readonly address: string; readonly headers: Record<string, string>; readonly inventedHeader: string },
  limitS: number,
): Promise<TryResult> {
  const stop = new AbortController();
  const timer = new AbortController();
  const tooSlow = means.sleep(limitS * 1000, timer.signal).then((): TryResult => {
    const slow = codedError('FORECAST_SLOW', { expected: `an answer within ${limitS} s`, came: 'none' });
    return { error: slow, again: true, waitS: null };
  });
  try {
    return await Promise.race([ask(means, request, stop.signal), tooSlow]);
  } finally {
    stop.abort();
    timer.abort();
  }
}

async function ask(
  means: TransportMeans,
  request: { readonly address: string; readonly headers: Record<string, string>; readonly inventedHeader: string },
  signal: AbortSignal,
): Promise<TryResult> {
  try {
    const response = await means.fetch(request.address, { headers: request.headers, signal });
    const body = await wholeBody(response);
    if (response.status === 200) {
      const refused = refusalInSuccess(body);
      if (refused) return { error: refused, again: false, waitS: null };
      return { bytes: body, invented: response.headers.has(request.inventedHeader) };
    }
    const waitS = retryAfterSeconds(response.headers.get('retry-after'), means.clock());
    return { error: refusal(response.status, body), again: response.status === 429 || response.status >= 500, waitS };
  } catch (error) {
    if (isLoamwardError(error)) return { error, again: false, waitS: null };
    const unreachable = codedError('FORECAST_UNREACHABLE', { expected: 'a connection', came: failureName(error) });
    return { error: unreachable, again: true, waitS: null };
  }
}

/** Reads a body to its end. Throws FORECAST_GARBLED past 4 MB. */
async function wholeBody(response: Response): Promise<Uint8Array> {
  if (!response.body) return new Uint8Array();
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of response.body as unknown as AsyncIterable<Uint8Array>) {
    length += part.length;
    if (length > mostBytes) {
      throw codedError('FORECAST_GARBLED', { expected: `at most ${mostBytes} bytes`, came: 'more' });
    }
    parts.push(part);
  }
  const whole = new Uint8Array(length);
  let position = 0;
  for (const part of parts) {
    whole.set(part, position);
    position += part.length;
  }
  return whole;
}

/** The system's short name for a failed connection (ECONNREFUSED), never an address: that could hold the key. */
function failureName(error: unknown): string {
  const cause = error instanceof Error && error.cause instanceof Object ? error.cause : error;
  const code = cause instanceof Object && 'code' in cause ? cause.code : undefined;
  return typeof code === 'string' ? code : 'a broken connection';
}
