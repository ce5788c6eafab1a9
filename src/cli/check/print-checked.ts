import { isAbsolute, join, relative } from 'node:path';
import type { LocatedFinding } from '../../adapters/pack-files/locate.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { errorIn } from '../../core/words/errors.ts';
import { annotationOf } from './annotations.ts';
import { type CheckedFolder, isSound } from './check-folder.ts';

/** A way to print what was found in packs. `root` is the folder that paths are given from. */
export type PrintChecked = (checked: readonly CheckedFolder[], words: Catalogue, root: string) => string;

/** As a person reads it: each pack in a line, then each finding with what, why and how to mend it. */
export const asText: PrintChecked = (checked, words, root) =>
  checked
    .map((one) =>
      [
        summaryOf(one, words, root),
        ...one.findings.flatMap((found) => ['', ...findingText(found, one, words, root)]),
        '',
      ].join('\n'),
    )
    .join('\n');

/** As a program reads it: one JSON value in a line. */
export const asJson: PrintChecked = (checked, words) =>
  `${JSON.stringify(
    checked.map((one) => ({
      ...one,
      sound: isSound(one),
      findings: one.findings.map((found) => asPlainFinding(found, words)),
    })),
  )}\n`;

/** As notes on the lines of a change; after them each pack in a line. */
export const asAnnotations: PrintChecked = (checked, words, root) => {
  const notes = checked.flatMap((one) =>
    one.findings.map((found) => {
      const { what, why, fix } = saidOf(found, words);
      const file = shownPath(one.folder, found.file, root);
      return annotationOf({ ...found, file, title: found.code, message: `${what}\n${why}\n${fix}` });
    }),
  );
  return [...notes, ...checked.map((one) => summaryOf(one, words, root)), ''].join('\n');
};

function asPlainFinding(found: LocatedFinding, words: Catalogue) {
  const { says: _says, next: _next, ...plain } = found;
  return { ...plain, ...saidOf(found, words) };
}

/** What a finding says in the reader's language: what is wrong, why it is, and what to do. */
function saidOf(found: LocatedFinding, words: Catalogue) {
  const { says, expected, came, next, nearest } = errorIn(found, words);
  const near = nearest === undefined ? '' : ` ${words.check.nearest(nearest)}`;
  return { what: says, why: words.check.reason(expected, came), fix: `${next}${near}` };
}

function findingText(found: LocatedFinding, { folder }: CheckedFolder, words: Catalogue, root: string): string[] {
  const { check } = words;
  const { what, why, fix } = saidOf(found, words);
  const width = Math.max(check.what.length, check.why.length, check.fix.length) + 1;
  const row = (label: string, text: string) => `  ${`${label}:`.padEnd(width)} ${text}`;
  const { file, line, column, pointer, severity, code } = found;
  return [
    `${shownPath(folder, file, root)}:${line}:${column} ${check.severities[severity]} ${code}${pointer === '' ? '' : ` ${pointer}`}`,
    row(check.what, what),
    row(check.why, why),
    row(check.fix, fix),
  ];
}

function summaryOf(
  { folder, told, day, loads, rules, cases, findings }: CheckedFolder,
  { check }: Catalogue,
  root: string,
): string {
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const warnings = findings.length - errors;
  const parts = [
    errors > 0 ? check.toMend(errors) : check.sound(rules, cases),
    ...(loads ? [] : [check.doesNotLoad]),
    ...(warnings > 0 ? [check.toLookAt(warnings)] : []),
  ];
  return `${told ?? shownPath(folder, '.', root)} (${day}): ${parts.join('; ')}`;
}

/** A file of a folder as it is told: from the root folder where it lies in there, with `/`. */
export function shownPath(folder: string, file: string, root: string): string {
  const path = join(folder, file);
  const within = relative(root, path);
  return (within.startsWith('..') || isAbsolute(within) ? path : within).replaceAll('\\', '/');
}
