import { describe, expect, test } from 'vitest';
import { generatedPages } from '../../src/tools/docs/pages.ts';
import { root, textOf } from './files.ts';

describe('documents made from code and pack', () => {
  test('are fresh: npm run docs changes nothing', async () => {
    for (const [path, text] of await generatedPages(root)) expect(textOf(path), path).toBe(text);
  });
});

describe('the README', () => {
  const readme = textOf('README.md');

  test('gives the two lines that CI and newcomers run', () => {
    expect(readme).toContain('\nnpm ci && npm start\n');
    expect(readme).toContain('\nnpm ci && npm test\n');
    expect(textOf('.ci/run')).toContain('\nnpm ci && npm test\n');
  });

  test('opens with the job', () => {
    const [title, , job] = readme.split('\n');
    expect(title).toBe('# Loamward');
    expect(job).toMatch(/^You have oilseed rape with black-grass/);
  });

  test('names only npm scripts that there are', () => {
    const { scripts } = JSON.parse(textOf('package.json'));
    const documents = [readme, textOf('DEVELOPERS.md')].join('\n');
    const named = [...documents.matchAll(/npm run ([\w:-]+)/g)].map((match) => match[1]!);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
