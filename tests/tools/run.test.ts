import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { root } from '../repo/files.ts';

test('a tool whose output nobody reads to its end, as before head, ends quietly', async () => {
  const folder = await mkdtemp(join(root, 'node_modules', '.talkative-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const tool = join(folder, 'tool.ts');
  await writeFile(
    tool,
    "export function main() { for (let i = 0; i < 20000; i++) process.stdout.write('a line\\n'.repeat(100)); }",
  );
  const child = spawn(process.execPath, ['src/tools/run.mjs', tool], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  child.stderr.on('data', (chunk) => {
    said += chunk;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const status = await new Promise((resolve) => child.once('close', resolve));
  expect([status, said]).toEqual([0, '']);
});
