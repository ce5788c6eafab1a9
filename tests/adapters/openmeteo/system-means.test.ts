import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { systemMeans, systemSleep } from '../../../src/adapters/openmeteo/system-means.ts';

describe("the machine's own means", () => {
  test('a wait whose signal fires ends at once and without an error', async () => {
    const stop = new AbortController();
    const waiting = systemSleep(3_600_000, stop.signal);
    stop.abort();
    await expect(waiting).resolves.toBeUndefined();
    await expect(systemSleep(3_600_000, AbortSignal.abort())).resolves.toBeUndefined();
  });

  test('the clock counts seconds since 1970', () => {
    vi.useFakeTimers({ now: 1_795_600_000_500 });
    onTestFinished(() => void vi.useRealTimers());
    expect(systemMeans.clock()).toBe(1_795_600_000.5);
  });

  test('chance is drawn anew each time, from 0 on and below 1', () => {
    const drawn = Array.from({ length: 50 }, systemMeans.random);
    expect(drawn.every((one) => one >= 0 && one < 1)).toBe(true);
    expect(new Set(drawn).size).toBeGreaterThan(40);
  });
});
