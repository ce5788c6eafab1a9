import { join } from 'node:path';

/** Settings of a run over the places to change (`file` or `file:from-to`), whose report goes to a file. */
export function configOf(mutate: readonly string[], reportFile: string) {
  return {
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'src/tools/mutation/vitest.config.ts', related: true },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    mutate,
    concurrency: 1,
    dryRunTimeoutMinutes: 60,
    timeoutMS: 60_000,
    reporters: ['progress-append-only', 'json'],
    jsonReporter: { fileName: reportFile },
    tempDirName: join('dist', 'mutation'),
    tsconfigFile: 'none.json',
    ignorePatterns: ['dist', 'tests/browser', 'docs/pictures'],
  };
}
