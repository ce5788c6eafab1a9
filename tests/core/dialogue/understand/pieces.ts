import { languageOf } from '../../../../src/core/dialogue/understand/languages.ts';
import { joinNumbers } from '../../../../src/core/dialogue/understand/number-words.ts';
import type { Numeral } from '../../../../src/core/dialogue/understand/numerals.ts';
import { findQuantities, type Item } from '../../../../src/core/dialogue/understand/quantities.ts';
import { tokenise } from '../../../../src/core/dialogue/understand/tokens.ts';

const plain = (value: number) => String(Number(value.toPrecision(6)));

function numeralText({ value, low, high, halfStep }: Numeral): string {
  const band = low === undefined && high === undefined ? '' : `[${low}..${high}]`;
  return `${plain(value)}${band}±${plain(halfStep)}`;
}

function pieceText(item: Item): string {
  if (item.kind === 'word') return item.text;
  if (item.kind === 'break') return item.text === '\n' ? '|\\n' : `|${item.text}`;
  if (item.kind === 'odd') return '{?}';
  const { numeral, unit, bound } = item.quantity;
  return `{${[numeralText(numeral), unit, bound].filter((part) => part !== null).join(' ')}}`;
}

/**
 * The words, signs and quantities that a text is cut into, before any meaning: `{9.2±0.05 C near}` a quantity with how far it may be
 * rounded, its unit and its bound, `{?}` what looks like a number and is none, `|` a sign that parts.
 */
export function pieces(text: string, code = 'en'): string {
  const language = languageOf(code);
  return findQuantities(joinNumbers(tokenise(text, language), language.numbers), language)
    .map(pieceText)
    .join(' ');
}

/** The same with the piece of the text that each stands for. */
export function places(text: string, code = 'en'): readonly string[] {
  const language = languageOf(code);
  const items = findQuantities(joinNumbers(tokenise(text, language), language.numbers), language);
  return items.map((item) => `${pieceText(item)} < ${text.slice(item.start, item.end)}`);
}
