import type { ErrorReport } from '../errors/coded-error.ts';
import type { ErrorCode } from '../errors/table.ts';
import type { PageCatalogue } from './catalogue.ts';
import { type PhraseTable, phraseIn } from './phrase-table.ts';

/** What codes say and advise in one language. A code without words of its own keeps those of the error table, which are English. */
export type ErrorWordsOf = Readonly<Partial<Record<ErrorCode, { readonly says: string; readonly next: string }>>>;

/**
 * An error as its reader reads it: what it says, expected, got and advises in the language of the words; the code and all values,
 * keys, files and ids in it stay.
 */
export function errorIn<R extends ErrorReport>(report: R, words: PageCatalogue): R {
  const own = words.errors[report.code];
  if (own === undefined) return report;
  const told = (text: string) => phraseIn(text, words.errorPhrases);
  return {
    ...report,
    says: own.says,
    expected: told(report.expected) ?? report.expected,
    came: told(report.came) ?? report.came,
    next: phraseIn(report.next, adviceIn(words.errorPhrases)) ?? own.next,
  };
}

const advice = new WeakMap<PhraseTable, PhraseTable>();

/** Phrases that can be advice: not those that begin with a hole, such as "{}, or {}", which would fit the usual advice of a code. */
function adviceIn(phrases: PhraseTable): PhraseTable {
  const made =
    advice.get(phrases) ?? Object.fromEntries(Object.entries(phrases).filter(([one]) => !one.startsWith('{}')));
  advice.set(phrases, made);
  return made;
}
