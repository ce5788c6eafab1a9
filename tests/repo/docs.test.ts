import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { generatedPages } from '../../src/tools/docs/pages.ts';
import { root, textOf } from './files.ts';

describe('documents made from code and pack', () => {
  test('are fresh: npm run docs changes nothing', async () => {
    for (const [path, text] of await generatedPages(root)) expect(textOf(path), path).toBe(text);
  });
});

describe('what documents name', () => {
  const documents = ['DEVELOPERS.md', 'README.md', ...readdirSync(join(root, 'docs')).map((name) => `docs/${name}`)];
  const pages = documents.filter((path) => path.endsWith('.md')).map((path) => [path, textOf(path)] as const);

  test.each(pages)('%s names only files that there are', (page, text) => {
    const named = [...text.matchAll(/`((?:src|web|tests|rules|docs)\/[\w./-]+)`/g)].map((match) => match[1]!);
    const linked = [...text.matchAll(/\]\((?!https?:)([\w./-]+)(?:#[^)]*)?\)/g)].map((match) =>
      join(page, '..', match[1]!),
    );
    const isThere = (path: string) => ['', 'src/core'].some((under) => existsSync(join(root, under, path)));
    const given = [...named, ...linked].filter((path) => !path.includes('/xx/'));
    expect(given.filter((path) => !isThere(path))).toEqual([]);
  });

  test('of the log is each thing that happens', () => {
    const events = [...textOf('src/server/log.ts').matchAll(/^ {4}\| '([a-z-]+)'/gm)].map((match) => match[1]!);
    expect(events).toContain('fault');
    const [, logged = ''] = textOf('docs/operator.md').split('## What is logged');
    expect(events.filter((event) => !logged.includes(`\`${event}\``))).toEqual([]);
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
