import { defineConfig } from 'vitest/config';

/**
 * The tests that the changes are tried against: those of the core, and the quick ones of conversations, messages and the
 * terminal; or those that the run names. Tests that read the source as text are left out: they would find it changed all over.
 */
const all = [
  'tests/{core,cases}/**/*.test.ts',
  'tests/adapters/conversation/*.test.ts',
  'tests/server/{carry-over,chat,hub,limits,parts,shown-parts,sync,words-ahead}.test.ts',
  'tests/cli/{decide,outlook-text,understand,what-if}.test.ts',
];
const chosen = process.env['MUTATION_TESTS']?.split('\n').filter((one) => one !== '') ?? [];

export default defineConfig({
  test: {
    include: chosen.length > 0 ? chosen : all,
    exclude: ['tests/cases/adviser-page.test.ts', 'tests/core/words/error-phrases/*'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    pool: 'forks',
    setupFiles: ['tests/setup.ts'],
  },
});
