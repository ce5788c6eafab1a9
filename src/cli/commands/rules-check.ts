import { join } from 'node:path';
import { findPacks, readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { describeError } from '../../core/errors/coded-error.ts';
import type { Finding } from '../../core/rules/pack/findings.ts';
import { checkPack } from '../../core/rules/pack/load-pack.ts';
import type { Command } from '../command.ts';
import type { Io } from '../io.ts';
import { packFolder } from '../packs.ts';

interface Checked {
  readonly folder: string;
  readonly rules: number;
  readonly cases: number;
  readonly findings: readonly Finding[];
}

/** `loamward rules check`: every fault of a pack's files, or of all packs under rules/. */
export const rulesCheck: Command = {
  name: 'rules check',
  summary: 'Checks the files of a treatment pack and says what is wrong where.',
  words: '[PACK ...]',
  options: { json: { type: 'boolean', help: 'print the findings as JSON' } },
  examples: ['npx loamward rules check', 'npx loamward rules check my-packs/spring-treatment --json'],
  run: async (parsed, io) => {
    const folders = await Promise.all(await named(parsed.words, io));
    const checked = await Promise.all(folders.map(checkFolder));
    io.write(parsed.options['json'] ? `${JSON.stringify(checked)}\n` : checked.map(asText).join('\n'));
    const wrong = checked.some(({ findings }) => findings.some(({ severity }) => severity === 'error'));
    return wrong ? 1 : 0;
  },
};

async function named(words: readonly string[], io: Io): Promise<readonly (string | Promise<string>)[]> {
  if (words.length > 0) return words.map((word) => packFolder(io, word));
  return (await findPacks(join(io.root, 'rules'))).map((pack) => pack.folder);
}

async function checkFolder(folder: string): Promise<Checked> {
  const checked = checkPack(await readPackFolder(folder));
  return checked.ok
    ? { folder, rules: checked.pack.rules.length, cases: checked.cases.length, findings: checked.findings }
    : { folder, rules: 0, cases: 0, findings: checked.findings };
}

function asText({ folder, rules, cases, findings }: Checked): string {
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const lines = findings.map((finding) => `  ${finding.severity}: ${describeError(finding.code, finding)}`);
  const sum = errors > 0 ? `${errors} to mend; this pack does not load` : `sound: ${rules} rules, ${cases} cases`;
  return [`${folder}: ${sum}`, ...lines, ''].join('\n');
}
