import { halfStepOf } from '../numerals.ts';
import type { Token } from '../tokens.ts';
import { smallNumbers } from './numbers.ts';

/**
 * Puts what German says in its own way into the words of the lists: the "noch" of "weder ... noch" says "not" as "weder" does,
 * "unter null" is one word, "minus ein" and "ein Komma fünf" count one, and "neunkommafünf" is a number. Each token keeps its place in the text.
 */
export function retell(tokens: readonly Token[]): readonly Token[] {
  const told: Token[] = [];
  let isNeither = false;
  for (const token of tokens) {
    const before = told.at(-1);
    const word = token.kind === 'word' ? token.text : '';
    if (token.kind === 'break' && token.text !== ',') isNeither = false;
    if (word === 'weder') isNeither = true;
    const isZero = word === 'null' || (token.kind === 'number' && token.numeral.value === 0);
    if (isZero && before?.kind === 'word' && before.text === 'unter') {
      told[told.length - 1] = { kind: 'word', text: 'unternull', start: before.start, end: token.end };
    } else if (word === 'ein' && before?.kind === 'word' && (before.text === 'minus' || before.text === 'plus')) {
      told.push({ ...token, kind: 'word', text: 'eins' });
    } else if (word === 'komma' && before?.kind === 'word' && before.text === 'ein') {
      told[told.length - 1] = { ...before, text: 'eins' };
      told.push(token);
    } else told.push(isNeither && word === 'noch' ? { ...token, kind: 'word', text: 'weder' } : decimal(token, word));
  }
  return told;
}

function decimal(token: Token, word: string): Token {
  const [whole, part, ...more] = word.split('komma').map((one) => smallNumbers[one]);
  if (whole === undefined || part === undefined || more.length > 0) return token;
  if (!Number.isInteger(whole) || !Number.isInteger(part)) return token;
  const written = `${whole}.${part}`;
  return {
    kind: 'number',
    numeral: { value: Number(written), halfStep: halfStepOf(written) },
    start: token.start,
    end: token.end,
  };
}

/** A number as it is written with a point between thousands, without that point: "1.000" is a thousand. */
export function retellNumber(written: string): string {
  return /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d{1,2})?$/.test(written) ? written.replaceAll('.', '') : written;
}
