import type { Parameter } from '../../src/core/units/parameter.ts';
import type { BenchWords } from '../../src/core/words/bench-words.ts';
import type { Catalogue } from '../../src/core/words/catalogue.ts';
import { showMonthDay } from '../../src/core/words/times.ts';
import { parseNumber } from '../forms/parse-number.ts';

/** A value read, or the sentence that says what was expected. */
export type ValueRead = { readonly value: Parameter['value'] } | { readonly problem: string };

/** Longest month, by month. */
const monthDays = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** The value of a parameter as it stands in its box. */
export function boxText({ value }: Pick<Parameter, 'value'>): string {
  return typeof value === 'object' ? value.join(', ') : String(value);
}

/** Reads what was typed for a parameter by the kind of value that it has: a number, a month and day (MM-DD), a list of ids. */
export function readValue(text: string, parameter: Parameter, words: BenchWords): ValueRead {
  if (typeof parameter.value === 'object') {
    const ids = text.split(/[\s,;]+/).filter((id) => id !== '');
    return ids.length === 0 ? { problem: words.listEmpty } : { value: ids };
  }
  if (typeof parameter.value === 'string') return readDay(text.trim(), words);
  return parseNumber(text, { label: parameter.id, unit: parameter.unit, low: null, high: null });
}

function readDay(text: string, words: BenchWords): ValueRead {
  const [, month = '', day = ''] = /^(\d\d)-(\d\d)$/.exec(text) ?? [];
  const most = monthDays[Number(month) - 1] ?? 0;
  return Number(day) >= 1 && Number(day) <= most ? { value: text } : { problem: words.dayWrong };
}

/** The same in words beside the box, where the box alone does not tell: "1 October". */
export function besideBox(text: string, { unit }: Parameter, words: Catalogue): string {
  return unit === 'month-day' && /^\d\d-\d\d$/.test(text) ? showMonthDay(text, words) : '';
}
