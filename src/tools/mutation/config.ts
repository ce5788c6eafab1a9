/**
 * Settings of a run over the places to change (`file` or `file:from-to`): where its copy of the project and its report go, and
 * for how long beyond its usual time (ms) a test may run before it counts as one that never ends.
 */
export function configOf(mutate: readonly string[], tempDirName: string, reportFile: string, timeoutMS: number) {
  return {
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'src/tools/mutation/vitest.config.ts', related: true },
    coverageAnalysis: 'perTest',
    ignoreStatic: true,
    mutate,
    concurrency: 2,
    dryRunTimeoutMinutes: 60,
    timeoutMS,
    reporters: ['progress-append-only', 'json'],
    jsonReporter: { fileName: reportFile },
    tempDirName,
    tsconfigFile: 'none.json',
    ignorePatterns: ['dist', 'tests/browser', 'docs/pictures'],
  };
}
