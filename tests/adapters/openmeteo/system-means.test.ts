import { describe, expect, test } from 'vitest';
import { systemMeans, systemSleep } from '../../../src/adapters/openmeteo/system-means.ts';

describe("the machine's own means", () => {
  test('a wait whose signal fires ends at once and without an error', async () => {
    const stop = new AbortController();
    const waiting = systemSleep(3_600_000, stop.signal);
    stop.abort();
    await expect(waiting).resolves.toBeUndefined();
    await expect(systemSleep(3_600_000, AbortSignal.abort())).resolves.toBeUndefined();
  });

  test('the clock counts seconds and chance lies in [0, 1)', () => {
    expect(Math.abs(systemMeans.clock() - Date.now() / 1000)).toBeLessThan(5);
    expect(systemMeans.random()).toBeLessThan(1);
  });
});
