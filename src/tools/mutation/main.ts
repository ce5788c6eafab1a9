import { spawn } from 'node:child_process';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { configOf } from './config.ts';
import { type MutationReport, reportText, summaryOf } from './report.ts';
import { codeLines, sampleOf } from './sample.ts';

/** Word lists and tables: a change there is a change of data, found by the tests of what is understood and said. */
const data = /src\/core\/(?:words\/[a-z]{2}|dialogue\/understand\/[a-z]{2}|errors\/groups|facts\/registry)\//;

/**
 * Changes a seeded sample of lines of src/core, one change at a time, and tells how many the tests notice, with the interval
 * that the sample leaves. `--lines N` (default 150), `--seed N`, `--under FOLDER`; `--file FILE` (as often as wanted) changes
 * every line of those files instead. `--tests GLOB` (as often as wanted) tries the changes against those tests alone: quicker,
 * and what they miss may still be noticed by others.
 */
export async function main(args: readonly string[]): Promise<number> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      lines: { type: 'string', default: '150' },
      seed: { type: 'string', default: '1' },
      under: { type: 'string', default: join('src', 'core') },
      file: { type: 'string', multiple: true, default: [] },
      tests: { type: 'string', multiple: true, default: [] },
    },
  });
  const files = values.file.length > 0 ? values.file : await filesUnder(values.under);
  const lines = (await Promise.all(files.map(async (file) => codeLines(file, await readFile(file, 'utf8'))))).flat();
  const chosen = values.file.length > 0 ? lines : sampleOf(lines, Number(values.lines), Number(values.seed));
  const folder = join('dist', 'mutation', String(process.pid));
  const [configFile, reportFile] = [join(folder, 'config.json'), join(folder, 'report.json')];
  await mkdir(folder, { recursive: true });
  const mutate = values.file.length > 0 ? files : chosen.map(({ file, line }) => `${file}:${line}-${line}`);
  await writeFile(
    configFile,
    JSON.stringify(configOf(mutate, join(folder, 'copy'), reportFile, values.tests.length > 0 ? 10_000 : 60_000)),
  );
  const code = await run('npx', ['stryker', 'run', configFile], { MUTATION_TESTS: values.tests.join('\n') });
  if (code !== 0) return code;
  const summary = summaryOf(JSON.parse(await readFile(reportFile, 'utf8')) as MutationReport);
  process.stdout.write(reportText(summary, { files: files.length, lines: lines.length, changed: chosen.length }));
  return 0;
}

async function filesUnder(folder: string): Promise<string[]> {
  const names = await readdir(folder, { recursive: true });
  return names
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .filter((file) => !data.test(file))
    .sort();
}

function run(command: string, args: readonly string[], settings: Readonly<Record<string, string>>): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, [...args], { stdio: 'inherit', env: { ...process.env, ...settings } });
    child.on('error', reject);
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
