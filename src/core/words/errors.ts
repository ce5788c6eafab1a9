import type { ErrorReport } from '../errors/coded-error.ts';
import type { ErrorCode } from '../errors/table.ts';
import type { Catalogue } from './catalogue.ts';

/** What codes say and advise in one language. A code without words of its own keeps those of the error table, which are English. */
export type ErrorWordsOf = Readonly<Partial<Record<ErrorCode, { readonly says: string; readonly next: string }>>>;

/** An error as its reader reads it: the code and what came stay, what it says and advises is in the language of the words. */
export function errorIn<R extends ErrorReport>(report: R, words: Catalogue): R {
  return { ...report, ...words.errors[report.code] };
}
