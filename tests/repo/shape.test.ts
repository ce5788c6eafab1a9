import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { importsOf, projectFiles, textOf } from './files.ts';

const code = projectFiles(/^(src|web|tests)\/.*\.(ts|tsx|mjs|css)$/);
const core = projectFiles(/^src\/core\/.*\.ts$/);

/** Each folder may import itself and those before it; words and protocol read only types of the others. */
const order = [
  ['errors', 'units'],
  ['science'],
  ['weather'],
  ['facts'],
  ['rules'],
  ['verdict'],
  ['outlook'],
  ['sprayer'],
  ['compare'],
  ['dialogue'],
  ['practice'],
  ['tour'],
];
const rank = (folder: string) => order.findIndex((names) => names.includes(folder));
const folderOf = (path: string) => path.split('/')[2]!;

describe('the shape of the project', () => {
  test('no file is longer than 250 lines', () => {
    const long = code.map((path) => [path, textOf(path).split('\n').length - 1] as const).filter(([, n]) => n > 250);
    expect(long).toEqual([]);
  });

  test('inside the core, imports go down the list of folders only', () => {
    const wrong: string[] = [];
    for (const path of core) {
      const from = folderOf(path);
      for (const name of importsOf(path).filter((each) => each.startsWith('.'))) {
        const to = folderOf(normalize(join(dirname(path), name)));
        const allowed = rank(from) < 0 || rank(to) < 0 || rank(to) <= rank(from);
        if (!allowed) wrong.push(`${path} imports ${name}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('words and protocol read only types of the rest of the core, but for errors and units', () => {
    const wrong = projectFiles(/^src\/core\/(words|protocol)\/.*\.ts$/).flatMap((path) =>
      [...textOf(path).matchAll(/^import (?!type )[^;]*?from '(\.\.[^']*)'/gms)]
        .map((match) => normalize(join(dirname(path), match[1]!)))
        .filter((to) => !['words', 'protocol', 'errors', 'units'].includes(folderOf(to)))
        .map((to) => `${path} imports ${to}`),
    );
    expect(wrong).toEqual([]);
  });

  test('the core imports only its few packages, json-rules-engine and ts-fsrs in one file each', () => {
    const allowed = /^(zod|luxon|@noble\/hashes\/.*|canonicalize|big\.js|json-rules-engine|ts-fsrs)$/;
    const packages = core.flatMap((path) =>
      importsOf(path)
        .filter((name) => !name.startsWith('.'))
        .map((name) => [path, name] as const),
    );
    expect(packages.filter(([, name]) => !allowed.test(name))).toEqual([]);
    const users = (wanted: string) => [
      ...new Set(packages.filter(([, name]) => name === wanted).map(([path]) => path)),
    ];
    expect(users('json-rules-engine')).toEqual(['src/core/rules/engine.ts']);
    expect(users('ts-fsrs')).toEqual(['src/core/practice/schedule.ts']);
  });

  test('the core has no clock, no randomness, no input or output', () => {
    const impure =
      /\bDate\.now\b|\bnew Date\(|\bMath\.random\b|\bDateTime\.(now|local)\(|\bprocess\.|\bconsole\.|\bfetch\(|\bsetTimeout\b|\bwindow\b\.|\bdocument\b\./;
    expect(core.filter((path) => impure.test(textOf(path)))).toEqual([]);
  });

  test('core, adapters, server, terminal and page import in one direction', () => {
    const allowed: Record<string, readonly string[]> = {
      'src/core': ['src/core'],
      'src/adapters': ['src/core', 'src/adapters'],
      'src/demo': ['src/core', 'src/demo'],
      'src/server': ['src/core', 'src/adapters', 'src/demo', 'src/server'],
      'src/cli': ['src/core', 'src/adapters', 'src/demo', 'src/server', 'src/cli'],
      web: ['src/core', 'src/adapters/conversation', 'src/demo', 'web'],
    };
    const areaOf = (path: string) => (path.startsWith('web/') ? 'web' : path.split('/').slice(0, 2).join('/'));
    const lies = (path: string, area: string) => path.startsWith(`${area}/`);
    const wrong = projectFiles(/^(src|web)\/.*\.tsx?$/).flatMap((path) => {
      const areas = allowed[areaOf(path)];
      if (!areas) return [];
      return importsOf(path)
        .filter((name) => name.startsWith('.'))
        .filter((name) => !areas.some((area) => lies(normalize(join(dirname(path), name)), area)))
        .map((name) => `${path} imports ${name}`);
    });
    expect(wrong).toEqual([]);
  });

  test('what a page runs without a connection carries no Node module', () => {
    const carried = projectFiles(/^(src\/adapters\/conversation|src\/demo|web)\/.*\.tsx?$/);
    expect(carried.filter((path) => importsOf(path).some((name) => name.startsWith('node:')))).toEqual([]);
  });

  test('zod comes as a namespace, so that the page does not carry every locale', () => {
    expect(code.filter((path) => /import\s*\{[^}]*\bz\b[^}]*\}\s*from 'zod'/.test(textOf(path)))).toEqual([]);
  });

  test('every error thrown is a coded one', () => {
    const bare = projectFiles(/^(src|web)\/.*\.tsx?$/).filter((path) => /throw new Error\(/.test(textOf(path)));
    expect(bare).toEqual([]);
  });
});
