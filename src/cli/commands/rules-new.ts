import { join, resolve } from 'node:path';
import { readStarter, schemasFrom, writeNewPack } from '../../adapters/pack-files/starter.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { languagesOf, newPackFiles } from '../../core/rules/pack/new-pack.ts';
import { kebab } from '../../core/rules/pack/schema.ts';
import { shownPath } from '../check/print-checked.ts';
import { type Command, type Parsed, textOption } from '../command.ts';
import { languageOption, wordsFor } from '../language.ts';

/** `loamward rules new`: begins a treatment pack with one working example of everything. */
export const rulesNew: Command = {
  name: 'rules new',
  summary:
    'Begins a treatment pack: a folder with a working example of each file, every limit invented and to be replaced.',
  words: 'ID',
  options: {
    in: { type: 'string', value: 'FOLDER', help: 'folder to write into; rules/ID without it' },
    title: { type: 'string', value: 'TEXT', help: 'name of the treatment as people read it' },
    treatment: { type: 'string', value: 'NAME', help: 'common name of the active, in lower case with hyphens' },
    crop: { type: 'string', value: 'TEXT', help: 'crop that is treated' },
    texts: {
      type: 'string',
      value: 'LANGUAGES',
      help: 'languages of its texts, such as en,de; all that there are without it',
    },
    language: languageOption,
    json: { type: 'boolean', help: 'print one JSON object' },
  },
  examples: [
    'npx loamward rules new my-treatment --in drafts/my-treatment',
    'npx loamward rules new my-treatment --treatment example-active --crop "spring barley" --texts en',
  ],
  run: async (parsed, io) => {
    const { begun } = wordsFor(parsed, io).check;
    const id = idOf(parsed);
    const starter = await readStarter(io.root);
    const rules = join(io.root, 'rules');
    const folder = resolve(textOption(parsed, 'in') ?? join(rules, id));
    const schemas = schemasFrom(folder, rules);
    const crop = textOption(parsed, 'crop') ?? 'example-crop';
    const active = activeOf(parsed) ?? 'example-active';
    const title = textOption(parsed, 'title') ?? id;
    const languages = textsOf(parsed, languagesOf(starter));
    const files = newPackFiles(starter, { id, title, active, crop, languages, schemas });
    await writeNewPack(folder, files);
    const pack = nameFor(textOption(parsed, 'in'), id);
    const next = ['check', 'try', 'say'].map((one) => `npx loamward rules ${one} ${pack}`);
    const names = [...files.keys()];
    if (parsed.options['json']) io.write(`${JSON.stringify({ folder, files: names, next })}\n`);
    else {
      const lines = [
        begun.wrote(shownPath(folder, '.', io.root)),
        ...names.map((name) => `  ${name}`),
        schemas === null ? begun.noSchemas : begun.offered,
        begun.invented,
        begun.next,
        ...next.map((one) => `  ${one}`),
      ];
      io.write(`${lines.join('\n')}\n`);
    }
    return 0;
  },
};

/** How the next commands name the pack: by its id under rules/, else by its path as it was given. */
function nameFor(given: string | undefined, id: string): string {
  if (given === undefined) return id;
  const path = /[\\/.]/.test(given) ? given : `./${given}`;
  return /\s/.test(path) ? `"${path}"` : path;
}

function idOf({ words }: Parsed): string {
  const [id, ...more] = words;
  if (id !== undefined && more.length === 0 && kebab.safeParse(id).success) return id;
  throw codedError('OPTION_VALUE', {
    expected: 'a kebab-case id',
    came: words.length === 0 ? 'nothing' : words.join(' '),
  });
}

function activeOf(parsed: Parsed): string | undefined {
  const given = textOption(parsed, 'treatment');
  if (given === undefined || kebab.safeParse(given).success) return given;
  throw codedError('OPTION_VALUE', { expected: 'a kebab-case id', came: given });
}

function textsOf(parsed: Parsed, known: readonly string[]): readonly string[] {
  const given = textOption(parsed, 'texts');
  if (given === undefined) return known;
  const wanted = given.split(',').map((one) => one.trim());
  if (wanted.every((one) => known.includes(one))) return [...new Set(wanted)];
  throw codedError('OPTION_VALUE', { expected: `--texts with some of ${known.join(', ')}`, came: given });
}
