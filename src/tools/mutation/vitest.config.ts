import { defineConfig } from 'vitest/config';

/** The tests that the changes are tried against: those of the core, of what is said and sent, and of the terminal, less the slow ones. */
export default defineConfig({
  test: {
    include: ['tests/{core,cases,server,cli}/**/*.test.ts', 'tests/adapters/conversation/*.test.ts'],
    exclude: [
      'tests/cases/adviser-page.test.ts',
      'tests/server/{fuzz,talk-fuzz,signals,hand-over,real-conversation}.test.ts',
      'tests/cli/{serve,ask,bad-weather,german,help,odd-days,rules-try}.test.ts',
    ],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'forks',
    setupFiles: ['tests/setup.ts'],
  },
});
