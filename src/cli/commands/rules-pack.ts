import { readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { writeText } from '../../adapters/practice/progress-file.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { toOneFile } from '../../core/rules/pack/one-file.ts';
import { type Command, textOption } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';
import { firstPack, packFolder } from '../packs.ts';

/** `loamward rules pack`: a treatment pack as one file with its content hash, to send by mail. */
export const rulesPack: Command = {
  name: 'rules pack',
  summary: 'Puts a treatment pack into one file with its content hash; every command takes such a file.',
  words: '[PACK]',
  options: {
    out: { type: 'string', value: 'FILE', help: 'file to write' },
    language: languageOption,
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [`npx loamward rules pack ${firstPack} --out pack.json`, 'npx loamward rules check ./pack.json'],
  run: async (parsed, io) => {
    wordsFor(parsed, io);
    const [name = firstPack, ...more] = parsed.words;
    if (more.length > 0) throw codedError('OPTION_UNKNOWN', { expected: 'one pack', came: more.join(' ') });
    const out = textOption(parsed, 'out');
    if (out === undefined) throw codedError('OPTION_VALUE', { expected: '--out FILE', came: 'no --out' });
    const { text, id, version, hash } = toOneFile(await readPackFolder(await packFolder(io, name)));
    await writeText(out, text);
    io.write(
      parsed.options['json']
        ? `${JSON.stringify({ file: out, id, version, hash })}\n`
        : `${out}: ${id} ${version} ${hash}\n`,
    );
    return 0;
  },
};
