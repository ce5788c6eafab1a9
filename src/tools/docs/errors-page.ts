import type { ErrorEntry } from '../../core/errors/entry.ts';
import { errorTable } from '../../core/errors/table.ts';

/** docs/errors.md: one section a code. */
export function errorsPage(): string {
  const sections = Object.entries(errorTable as Record<string, ErrorEntry>)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([code, entry]) => {
      const transport = [
        entry.httpStatus ? `HTTP status ${entry.httpStatus}` : '',
        entry.closeCode ? `socket close code ${entry.closeCode}` : '',
      ].filter(Boolean);
      return [
        `## ${code}`,
        '',
        entry.says,
        '',
        `What to do: ${entry.next}`,
        ...transport.map((line) => `\n${line}.`),
      ].join('\n');
    });
  return [
    '# Error codes',
    '',
    'Made from `src/core/errors/` by `npm run docs`; a test keeps it fresh.',
    '',
    'Every failure has one of these codes. With the code comes what was expected, what came instead, where (file and',
    'JSON Pointer, fact, rule or parameter), the nearest right name where there is one, and what to do next. After any of',
    'them no *spray today* is given on what failed.',
    '',
    ...sections.flatMap((section) => [section, '']),
  ].join('\n');
}
