import { existsSync, statSync } from 'node:fs';
import { validateRecordedReplies } from './recorded-replies.ts';
import type { Validator } from './validator.ts';

/** Every validator: a new one is a line here. */
const validators: readonly Validator[] = [{ name: 'recorded forecast replies', run: validateRecordedReplies }];

/** Checks against a folder of recorded data: `--data FOLDER`. Gives 1 where a check failed, 2 for a bad option, else 0. */
export async function main(options: readonly string[]): Promise<number> {
  const write = (line: string) => process.stdout.write(`${line}\n`);
  const [option, folder, ...rest] = options;
  if ((option !== undefined && (option !== '--data' || folder === undefined)) || rest.length > 0) {
    process.stderr.write('Usage: npm run validate -- [--data FOLDER]\n');
    return 2;
  }
  const total = { passed: 0, failed: 0 };
  if (folder === undefined) write('No folder of recorded data was given (--data FOLDER), so nothing is validated.');
  else if (!existsSync(folder) || !statSync(folder).isDirectory()) {
    write(`The folder of recorded data ${folder} is absent, so nothing is validated.`);
  } else {
    for (const { name, run } of validators) {
      write(`${name}:`);
      const { passed, failed, lines } = await run(folder);
      for (const line of lines) write(`  ${line}`);
      total.passed += passed;
      total.failed += failed;
    }
  }
  write(`${total.passed} passed, ${total.failed} failed`);
  return total.failed > 0 ? 1 : 0;
}
