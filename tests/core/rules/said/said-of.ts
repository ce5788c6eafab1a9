import { expect } from 'vitest';
import type { Finding } from '../../../../src/core/rules/pack/findings.ts';

/** What was found in one example, a finding a line and what it is about below it, as the pages beside this file list it. */
function saidOf(name: string, findings: readonly Finding[]): string {
  const lines = findings.map(({ severity, code, file, pointer, expected, came, nearest, rule, parameter, fact }) => {
    const about = Object.entries({ nearest, rule, parameter, fact }).flatMap(([key, value]) =>
      value === undefined ? [] : [`${key} ${value}`],
    );
    return [`  ${severity} ${code} at ${file}${pointer}`, `    expected ${expected}`, `    came ${came}`]
      .concat(about.length === 0 ? [] : [`    ${about.join(', ')}`])
      .join('\n');
  });
  return [`${name}:`, ...(lines.length === 0 ? ['  nothing'] : lines), ''].join('\n');
}

/**
 * Holds what is found in each example, every word and every finding in its order, against a page in this folder. After a change that
 * is meant, `npx vitest run FILE -u` writes the page anew: read what differs.
 */
export async function expectPage(
  page: string,
  examples: readonly (readonly [name: string, findings: readonly Finding[]])[],
): Promise<void> {
  const text = examples.map(([name, findings]) => saidOf(name, findings)).join('\n');
  await expect(text).toMatchFileSnapshot(new URL(`${page}.txt`, import.meta.url).pathname);
}
