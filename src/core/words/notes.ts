import type { ErrorCode } from '../errors/table.ts';
import type { PageCatalogue } from './catalogue.ts';
import { marked } from './numbers.ts';
import { phraseIn } from './phrase-table.ts';
import { joinWords, unitSuffix } from './units.ts';

/**
 * A note that came with a field or a forecast, or by which a value was worked out, in the language of the words: whole, else sentence
 * by sentence, and as it came where the words do not know it.
 */
export function noteIn(text: string, words: PageCatalogue): string {
  return (
    known(text, words) ??
    text
      .split(/(?<=[.)]) (?=[A-Z])/)
      .map((one) => known(one, words) ?? one)
      .join(' ')
  );
}

function known(text: string, words: PageCatalogue): string | null {
  return ofError(text, words) ?? ofReading(text, words) ?? phraseIn(text, words.notes, (hole) => valueIn(hole, words));
}

/** What an error says, with its code in brackets. */
function ofError(text: string, words: PageCatalogue): string | null {
  const found = /^.* \((([A-Z_]+)(?:: .*)?)\)$/s.exec(text);
  const own = found && words.errors[found[2] as ErrorCode];
  return own ? `${own.says} (${found[1]})` : null;
}

/** A reading that is too old, with its time: "9.6 C at 2026-11-05 09:00". */
function ofReading(text: string, words: PageCatalogue): string | null {
  const [, value, time = ''] = /^(.+) at (\d{4}-\d\d-\d\d \d\d:\d\d)$/.exec(text) ?? [];
  if (value === undefined || value.startsWith('worked out') || value.startsWith('carried')) return null;
  return words.values.readAt(valueIn(value, words), time);
}

/** A number, with or without a unit, or the names of choices. */
function valueIn(text: string, words: PageCatalogue): string {
  const [, number, unit = ''] = /^(-?\d+(?:\.\d+)?)(?: (.+))?$/.exec(text) ?? [];
  if (number !== undefined) return `${marked(words, number)}${unitSuffix(unit, words, number)}`;
  if (text === 'none') return words.values.noSigns;
  if (text === 'not known') return words.values.doesNotKnow;
  const name = (choice: string) => words.values.choices[choice] ?? choice;
  return text
    .split(', ')
    .map((part) => joinWords(part.split(' or ').map(name), words.values.or))
    .join(', ');
}
