import fc from 'fast-check';
import { afterEach, beforeEach, expect, vi } from 'vitest';

/** Properties draw the same values in every run, so that a change is judged and not luck; PROPERTY_SEED draws others. */
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 20261125) });

/** Any console call fails the test that made it: what a person should read goes through words, never the console. */
const methods = ['log', 'info', 'warn', 'error', 'debug'] as const;

beforeEach(() => {
  for (const method of methods) vi.spyOn(console, method).mockImplementation(() => {});
});

afterEach(() => {
  for (const method of methods) {
    const { calls } = vi.mocked(console[method]).mock;
    vi.mocked(console[method]).mockRestore();
    expect(calls, `console.${method} was called`).toEqual([]);
  }
});
