import { describe, expect, test } from 'vitest';
import { projectFiles, textOf } from './files.ts';

const texts = projectFiles(/\.(ts|tsx|mjs|json|md|css|html)$|^\.ci\/run$/).filter(
  (path) => path !== 'package-lock.json' && path !== 'tests/repo/hygiene.test.ts',
);

describe('what the project carries', () => {
  test('the lock file records no address that a package was fetched from', () => {
    expect(textOf('package-lock.json')).not.toMatch(/"resolved"/);
  });

  test('every dependency has an exact version', () => {
    const manifest = JSON.parse(textOf('package.json'));
    const versions: string[] = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  test('no file names a path of a machine', () => {
    expect(texts.filter((path) => /\/work\/|\/root\/|\/home\/\w+\/|\/tmp\/(lw|bash_jobs)/.test(textOf(path)))).toEqual(
      [],
    );
  });

  test('nothing is left open in code', () => {
    const open = /\bTODO\b|\bFIXME\b|not implemented|\.(skip|only)\(/;
    expect(texts.filter((path) => /^(src|web|tests|rules)\//.test(path) && open.test(textOf(path)))).toEqual([]);
  });

  test('every link between documents leads somewhere', () => {
    const broken: string[] = [];
    for (const path of projectFiles(/\.md$/)) {
      const folder = path.includes('/') ? path.slice(0, path.lastIndexOf('/') + 1) : '';
      for (const [, target] of textOf(path).matchAll(/\]\(([^)#\s]+)[^)]*\)/g)) {
        if (/^https?:|^mailto:/.test(target!)) continue;
        const resolved = new URL(target!, `file:///${folder}`).pathname.slice(1);
        if (projectFiles(new RegExp(`^${resolved.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`)).length === 0) {
          broken.push(`${path}: ${target}`);
        }
      }
    }
    expect(broken).toEqual([]);
  });
});
