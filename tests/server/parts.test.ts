import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guard } from '../../src/server/chat/guard.ts';
import { isLoopback, isOriginAllowed } from '../../src/server/chat/origin.ts';
import { createSender, mostWaitingBytes } from '../../src/server/chat/sender.ts';
import { createTokenBucket } from '../../src/server/chat/token-bucket.ts';
import { jsonLog } from '../../src/server/log.ts';
import { securityHeaders } from '../../src/server/security-headers.ts';
import { fakeTime } from './support/fake-time.ts';

describe('the guard', () => {
  test.each([
    [
      'throws',
      () => {
        throw new RangeError('planted');
      },
    ],
    ['rejects', () => Promise.reject(new RangeError('planted'))],
    [
      'rejects later',
      async () => {
        await null;
        throw new RangeError('planted');
      },
    ],
  ])('tells of a listener that %s, and lets nothing out', async (_how, listener) => {
    const faults: unknown[] = [];
    guard((error) => faults.push(error), listener)();
    guard(() => {
      throw new Error('nobody listens');
    }, listener)();
    await new Promise((resolve) => setImmediate(resolve));
    expect(faults).toEqual([new RangeError('planted')]);
  });
});

describe('the rate', () => {
  test('over any course of time no more pass than the burst and the mean rate allow', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -2, max: 3, noNaN: true }), { maxLength: 200 }), (steps) => {
        let now = 1000;
        let run = 0;
        const bucket = createTokenBucket(2, 5, () => now);
        let passed = 0;
        for (const step of steps) {
          now += step;
          run += Math.max(0, step);
          if (bucket.take()) passed += 1;
        }
        expect(passed).toBeLessThanOrEqual(5 + 2 * run + 1e-6);
      }),
    );
  });

  test('a quiet peer has its whole burst again', () => {
    let now = 0;
    const bucket = createTokenBucket(1, 3, () => now);
    const burst = () => [1, 2, 3, 4].map(() => bucket.take());
    expect(burst()).toEqual([true, true, true, false]);
    now = 100;
    expect(burst()).toEqual([true, true, true, false]);
  });
});

describe('origins', () => {
  test.each([
    ['http://127.0.0.1:8080', '127.0.0.1:8080', '127.0.0.1', true],
    ['http://localhost:8080', 'localhost:8080', '127.0.0.1', true],
    ['http://[::1]:8080', '[::1]:8080', '::1', true],
    ['http://localhost:8080', '127.0.0.1:8080', '127.0.0.1', false],
    ['http://farm.example', 'farm.example', '127.0.0.1', false],
    ['http://farm.example', 'farm.example', '0.0.0.0', true],
    ['http://127.0.0.1.farm.example', '127.0.0.1.farm.example', '127.0.0.1', false],
    ['https://farm.example', 'farm.example:443', '0.0.0.0', true],
    ['http://farm.example:81', 'farm.example', '0.0.0.0', false],
    ['http://farm.example/', 'farm.example', '0.0.0.0', false],
    ['file://', 'farm.example', '0.0.0.0', false],
    ['not an origin', 'farm.example', '0.0.0.0', false],
  ])('%s at host %s of a server on %s: %s', (origin, host, listens, allowed) => {
    expect(isOriginAllowed(origin, host, { origins: [], host: listens })).toBe(allowed);
  });

  test.each([
    ['127.8.9.1', true],
    ['LOCALHOST', true],
    ['localhost.example', false],
    ['1127.0.0.1', false],
  ])('%s is loopback: %s', (host, is) => expect(isLoopback(host)).toBe(is));
});

describe('sending', () => {
  test('up to 256 kB may wait, one byte more closes, and nothing is sent after', () => {
    const sent: string[] = [];
    const closed: unknown[] = [];
    const size = JSON.stringify({ type: 'alive' }).length;
    const socket = {
      bufferedAmount: mostWaitingBytes - size,
      send: (text: string) => void sent.push(text),
      close: (code: number, reason: string) => void closed.push([code, reason]),
      terminate: () => void closed.push('terminated'),
    };
    const time = fakeTime();
    const sender = createSender(socket, time.timers, () => {});
    sender.send({ type: 'alive' });
    expect([sent.length, closed]).toEqual([1, []]);
    socket.bufferedAmount += 1;
    sender.send({ type: 'alive' });
    sender.send({ type: 'alive' });
    expect([sent.length, closed]).toEqual([1, [[1013, 'READER_TOO_SLOW']]]);
    time.advance(2000);
    expect(closed).toEqual([[1013, 'READER_TOO_SLOW'], 'terminated']);
  });
});

test('a log line is one JSON object with the moment', () => {
  let text = '';
  jsonLog(
    (line) => {
      text += line;
    },
    () => 1_795_600_000,
  )({ event: 'message', kind: 'say' });
  expect(text).toBe('{"at":"2026-11-25T09:46:40.000Z","event":"message","kind":"say"}\n');
});

test('a host header that is no plain host never reaches the policy', () => {
  const policy = securityHeaders("x; script-src 'unsafe-inline'")['content-security-policy'];
  expect(policy).toContain("connect-src 'self';");
});
