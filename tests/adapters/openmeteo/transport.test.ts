import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { retryAfterSeconds } from '../../../src/adapters/openmeteo/retry-after.ts';
import { fetchForecast } from '../../../src/adapters/openmeteo/transport.ts';
import { buildReply } from '../../../src/tools/stand-in/build-forecast.ts';
import { inventWeather } from '../../../src/tools/stand-in/invented-weather.ts';
import { fakeTime, hollinBank, settingsFor } from './means.ts';

const question = { ...hollinBank, pastDays: 7, forecastDays: 7 };
const noon = Date.parse('2026-11-06T12:00:00Z') / 1000;
const settings = settingsFor('https://weather.example');

const good = () => {
  const start = (Math.floor(noon / 86_400) - 7) * 86_400;
  const invented = inventWeather('fit', { ...hollinBank, start, hours: 14 * 24 }, noon);
  return new Response(buildReply(invented) as BodyInit);
};
const status = (code: number, headers: Record<string, string> = {}) => new Response('no', { status: code, headers });

/** A fetch that answers from a list, the last answer for ever. */
function answering(...answers: (() => Response | Error)[]) {
  const asked: RequestInit[] = [];
  const fetchLike = async (_: unknown, init?: RequestInit) => {
    asked.push(init ?? {});
    const answer = (answers[asked.length - 1] ?? answers.at(-1)!)();
    if (answer instanceof Error) throw answer;
    return answer;
  };
  return { asked, fetch: fetchLike as typeof fetch };
}

function start() {
  return fakeTime('2026-11-06T12:00:00Z');
}

describe('tries', () => {
  test('a service that comes back is answered by the next try', async () => {
    const { time, means } = start();
    const { asked, fetch } = answering(
      () => status(503),
      () => new TypeError('reset'),
      good,
    );
    const result = await fetchForecast(question, settings, { fetch, ...means });
    expect(result).toHaveProperty('forecast');
    expect(asked).toHaveLength(3);
    expect(time.pauses).toEqual([250, 500]);
  });

  test('never more than three, whatever comes', async () => {
    const { time, means } = start();
    const { asked, fetch } = answering(() => status(500));
    const result = await fetchForecast(question, settings, { fetch, ...means });
    expect(result).toMatchObject({ error: { code: 'FORECAST_DOWN' }, waitS: null });
    expect(asked).toHaveLength(3);
    expect(time.pauses).toHaveLength(2);
  });

  test('the wait is full jitter: uniform from nothing up to a bound that doubles', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(999), async (thousandths) => {
        const random = thousandths / 1000;
        const { time, means } = start();
        time.random = random;
        await fetchForecast(question, settings, { fetch: answering(() => status(500)).fetch, ...means });
        expect(time.pauses).toEqual([expect.closeTo(random * 500, 6), expect.closeTo(random * 1000, 6)]);
      }),
      { numRuns: 20 },
    );
  });

  test('each says who asks, and takes bytes', async () => {
    const { means } = start();
    const { asked, fetch } = answering(good);
    await fetchForecast(question, { ...settings, userAgent: 'hollin-bank/1' }, { fetch, ...means });
    expect(asked[0]?.headers).toMatchObject({ 'user-agent': 'hollin-bank/1' });
  });
});

describe('Retry-After', () => {
  test('seconds are waited where they fit into the budget', async () => {
    const { time, means } = start();
    const { fetch } = answering(() => status(429, { 'retry-after': '3' }), good);
    expect(await fetchForecast(question, settings, { fetch, ...means })).toHaveProperty('forecast');
    expect(time.pauses).toEqual([3000]);
  });

  test('an HTTP date is waited for', async () => {
    const { time, means } = start();
    const { fetch } = answering(() => status(503, { 'retry-after': 'Fri, 06 Nov 2026 12:00:07 GMT' }), good);
    expect(await fetchForecast(question, settings, { fetch, ...means })).toHaveProperty('forecast');
    expect(time.pauses).toEqual([7000]);
  });

  test('one past the budget ends the question at once and is handed on', async () => {
    const { time, means } = start();
    const { asked, fetch } = answering(() => status(429, { 'retry-after': '3600' }));
    const result = await fetchForecast(question, settings, { fetch, ...means });
    expect(result).toMatchObject({ error: { code: 'FORECAST_BUSY' }, waitS: 3600 });
    expect(asked).toHaveLength(1);
    expect(time.pauses).toEqual([]);
  });

  test.each([
    ['120', 120],
    ['0', 0],
    ['Fri, 06 Nov 2026 12:02:00 GMT', 120],
    ['Fri, 06 Nov 2026 11:00:00 GMT', 0],
    ['-5', null],
    ['1.5', null],
    ['soon', null],
    ['2026-11-06', null],
    ['', null],
    [null, null],
  ])('%j from noon is %j seconds (RFC 9110, 10.2.3)', (header, seconds) => {
    expect(retryAfterSeconds(header, noon)).toBe(seconds);
  });
});

describe('time limits', () => {
  const hanging = (signals: AbortSignal[]) =>
    (async (_: unknown, init?: RequestInit) => {
      signals.push(init!.signal!);
      return new Promise<Response>((_resolve, reject) => {
        init!.signal!.addEventListener('abort', () => reject(new DOMException('stopped', 'AbortError')));
      });
    }) as typeof fetch;

  test('silence ends each try after 8 s and all of them within 20 s, and every connection is let go', async () => {
    const { time, means } = start();
    time.limitReached = async () => {};
    const signals: AbortSignal[] = [];
    const result = await fetchForecast(question, settings, { fetch: hanging(signals), ...means });
    expect(result).toMatchObject({ error: { code: 'FORECAST_SLOW' } });
    expect(signals.map((signal) => signal.aborted)).toEqual([true, true, true]);
    expect(time.now - noon).toBeCloseTo(20, 6);
  });

  test('a body that never ends is cut off by the same limit', async () => {
    const { time, means } = start();
    time.limitReached = async () => {};
    const fetchLike = (async () => new Response(new ReadableStream())) as typeof fetch;
    const result = await fetchForecast(question, settings, { fetch: fetchLike, ...means });
    expect(result).toMatchObject({ error: { code: 'FORECAST_SLOW' } });
  });

  test('a body past 4 MB is not read on', async () => {
    const { means } = start();
    let sent = 0;
    const endless = () =>
      new Response(
        new ReadableStream({
          pull(controller) {
            sent += 1;
            controller.enqueue(new Uint8Array(1_000_000));
          },
        }),
      );
    const result = await fetchForecast(question, settings, { fetch: answering(endless).fetch, ...means });
    expect(result).toMatchObject({ error: { code: 'FORECAST_GARBLED' } });
    expect(sent).toBeLessThan(8);
  });

  test('the budget holds whatever the limits and answers', async () => {
    const delay = fc.integer({ min: 1, max: 60 });
    await fc.assert(
      fc.asyncProperty(delay, delay, fc.nat(40), async (timeoutS, budgetS, retryAfter) => {
        const { time, means } = start();
        time.limitReached = async () => {};
        let tries = 0;
        const fetchLike = (async (_: unknown, init?: RequestInit) => {
          tries += 1;
          if (tries === 2) return status(503, { 'retry-after': String(retryAfter) });
          return hanging([])('', init);
        }) as typeof fetch;
        await fetchForecast(question, { ...settings, timeoutS, budgetS }, { fetch: fetchLike, ...means });
        expect(time.now - noon).toBeLessThanOrEqual(budgetS + 1e-6);
      }),
      { numRuns: 50 },
    );
  });
});
