import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogues } from '../../src/core/words/catalogue.ts';
import { languages } from '../../web/words/language.ts';
import { root } from './files.ts';

const text = readFileSync(join(root, 'docs', 'languages.md'), 'utf8');

describe('docs/languages.md', () => {
  test('names only files and folders that are there', () => {
    const named = [...text.matchAll(/`((?:src|web|tests)\/[^`]+)`/g)].map((match) => match[1] ?? '');
    const real = named.filter((path) => !path.includes('/xx/'));
    expect(real.length).toBeGreaterThan(10);
    expect(real.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  test.each(['src/core/words', 'web/words', 'src/core/dialogue/understand'])(
    'is right that %s has a folder for each language',
    (folder) => {
      const folders = readdirSync(join(root, folder), { withFileTypes: true })
        .filter((entry) => entry.isDirectory() && /^[a-z]{2}$/.test(entry.name))
        .map(({ name }) => name)
        .sort();
      expect(folders).toEqual(Object.keys(catalogues).sort());
    },
  );

  test('is right that page, core and every pack have the same languages', () => {
    const wanted = Object.keys(catalogues).sort();
    expect([...languages].sort()).toEqual(wanted);
    for (const pack of readdirSync(join(root, 'rules'))) {
      const file = join(root, 'rules', pack, 'pack.json');
      if (existsSync(file)) expect([...JSON.parse(readFileSync(file, 'utf8')).languages].sort()).toEqual(wanted);
    }
  });
});
