import { describeError, type ErrorReport } from '../core/errors/coded-error.ts';
import type { Catalogue } from '../core/words/catalogue.ts';
import { errorIn } from '../core/words/errors.ts';

/** An error in one line in the language of the words: code, what it says, where, what was expected, what came, what to do. */
export function errorLine(report: ErrorReport, words: Catalogue): string {
  if (words.language === 'en') return describeError(report.code, report);
  const { code, says, expected, came, next, file, pointer, nearest } = errorIn(report, words);
  const place = [file, pointer].filter(Boolean).join(', ');
  const near = nearest === undefined ? '' : `${words.check.nearest(nearest)} `;
  return words.terminal.failed(code, place === '' ? says : `${says} (${place})`, expected, came, `${near}${next}`);
}
