import { defineConfig } from 'vitest/config';

/** One suite for core, adapters, server, terminal and the page in a real browser. */
export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'forks',
    setupFiles: ['tests/setup.ts'],
  },
});
