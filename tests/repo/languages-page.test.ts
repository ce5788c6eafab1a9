import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { languageCodes } from '../../src/core/words/catalogue.ts';
import { languagesIn, listsFolder, pageFolder } from '../../src/tools/languages/lists.ts';
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

  test('is right that page and core have the same languages, and that each pack and each list of typed words has some of them', () => {
    expect(languagesIn(root, pageFolder)).toEqual(languageCodes);
    expect([...languages].sort()).toEqual([...languageCodes].sort());
    expect(languageCodes).toEqual(expect.arrayContaining(languagesIn(root, listsFolder)));
    for (const pack of readdirSync(join(root, 'rules'))) {
      const file = join(root, 'rules', pack, 'pack.json');
      if (!existsSync(file)) continue;
      const own: string[] = JSON.parse(readFileSync(file, 'utf8')).languages;
      expect(own).toContain('en');
      expect(languageCodes).toEqual(expect.arrayContaining(own));
    }
  });
});
