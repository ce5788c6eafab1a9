import { defineConfig } from 'vitest/config';

const shared = {
  testTimeout: 180_000,
  hookTimeout: 180_000,
  pool: 'forks' as const,
  setupFiles: 'tests/setup.ts',
};

/** A test that comes to its end without a single check fails: a loop over nothing proves nothing. */
const expectsSomething = { expect: { requireAssertions: true } };

const ofBrowser = ['tests/browser/**/*.test.ts'];
const ofPseudo = ['tests/pseudo/**/*.test.{ts,tsx}'];

/**
 * One suite for core, adapters, server, terminal and the page in a real browser. Most files share a process: each loads the core,
 * and loading it anew for each took longer than the tests. Those that put other words in place of the catalogue have a process of
 * their own; the page in the browser comes last and alone, since the browser needs the other core of the machine.
 */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...shared,
          ...expectsSomething,
          name: 'quick',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...ofBrowser, ...ofPseudo],
          isolate: false,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          ...shared,
          ...expectsSomething,
          name: 'other words',
          include: ofPseudo,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: { ...shared, name: 'browser', include: ofBrowser, maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
