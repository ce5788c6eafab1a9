import type { Report } from './findings.ts';

/** The files of a pack by what they hold. */
export interface FileKinds {
  /** All files that are parsed, in name order. */
  readonly json: readonly string[];
  readonly rules: readonly string[];
  readonly cases: readonly string[];
}

const single = ['pack.json', 'parameters.json', 'questions.json', 'cautions.json'];

/** The pack's own facts; a pack may do without. */
export const factsFile = 'facts.json';

/** The trade terms explained; a pack may do without. */
export const glossaryFile = 'glossary.json';

/** Sorts file names into kinds; one that is missing or does not belong is reported. Overlays and the change log are left alone. */
export function readKinds(names: readonly string[], report: Report): FileKinds {
  const rules = names.filter((name) => /^[^/]+\.rules\.json$/.test(name));
  const cases = names.filter((name) => /^cases\/[^/]+\.json$/.test(name));
  const known = new Set([...single, factsFile, glossaryFile, ...rules, ...cases, 'CHANGELOG.md']);
  for (const name of names) {
    if (known.has(name) || name.startsWith('overlays/')) continue;
    report(
      'PACK_FILE_UNEXPECTED',
      { file: name, path: [] },
      {
        expected: `${single.join(', ')}, ${factsFile}, ${glossaryFile}, *.rules.json, cases/*.json, overlays/ or CHANGELOG.md`,
        came: name,
        among: [...single, 'CHANGELOG.md'],
      },
    );
  }
  for (const name of single) {
    if (names.includes(name)) continue;
    report('PACK_FILE_MISSING', { file: name, path: [] }, { expected: name, came: 'nothing' });
  }
  if (rules.length === 0) {
    const place = { file: '*.rules.json', path: [] };
    report('PACK_FILE_MISSING', place, { expected: 'at least one *.rules.json', came: 'nothing' });
  }
  return { json: names.filter((name) => known.has(name) && name.endsWith('.json')), rules, cases };
}
