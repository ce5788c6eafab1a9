import { readFile } from 'node:fs/promises';

/** Prints `N passed, N failed` for the last whole run of the tests, from the report that it left under dist/. */
export async function main(): Promise<number> {
  const report: { numPassedTests: number; numFailedTests: number } = JSON.parse(
    await readFile('dist/test-report.json', 'utf8'),
  );
  process.stdout.write(`${report.numPassedTests} passed, ${report.numFailedTests} failed\n`);
  return report.numFailedTests === 0 && report.numPassedTests > 0 ? 0 : 1;
}
