import type { NumberWords } from './language-words.ts';
import { halfStepOf, type Numeral } from './numerals.ts';
import type { Token } from './tokens.ts';

interface Run {
  readonly numeral: Numeral;
  /** One past the last token that belongs to it. */
  readonly next: number;
}

const wordAt = (tokens: readonly Token[], at: number): string => {
  const token = tokens[at];
  return token?.kind === 'word' ? token.text : '';
};

/** Puts number words, signs, decimals and fractions together: "minus one", "eight and a half", "nine point two", "8 1/2". */
export function joinNumbers(tokens: readonly Token[], words: NumberWords): readonly Token[] {
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const run = readRun(tokens, at, words);
    const first = tokens[at]!;
    if (run === null) {
      joined.push(first);
      at += 1;
      continue;
    }
    const last = tokens[run.next - 1]!;
    const span = { start: first.start, end: last.end };
    const isOdd = words.oddAfter.has(wordAt(tokens, run.next)) && !isGramsPer(tokens, run.next);
    joined.push(isOdd ? { kind: 'odd', ...span } : { kind: 'number', numeral: run.numeral, ...span });
    at = run.next;
  }
  return joined;
}

function isGramsPer(tokens: readonly Token[], at: number): boolean {
  const unit = wordAt(tokens, at);
  return unit === 'g' && (wordAt(tokens, at + 1) === '/' || ['per', 'a'].includes(wordAt(tokens, at + 1)));
}

function readRun(tokens: readonly Token[], at: number, words: NumberWords): Run | null {
  const isMinus = words.minus.has(wordAt(tokens, at));
  const whole = readWhole(tokens, isMinus ? at + 1 : at, words);
  if (whole === null) return null;
  const run = withPart(tokens, whole, words);
  if (!isMinus) return run;
  const { value, low, high, halfStep } = run.numeral;
  if (low !== undefined || high !== undefined) return null;
  return { numeral: { value: 0 - value, halfStep }, next: run.next };
}

function readWhole(tokens: readonly Token[], at: number, words: NumberWords): Run | null {
  const token = tokens[at];
  if (token?.kind === 'number') {
    const by = words.multipliers[wordAt(tokens, at + 1)];
    return by === undefined ? { numeral: token.numeral, next: at + 1 } : multiplied(token.numeral, by, at + 2);
  }
  const pair = words.couple === undefined ? null : readCouple(tokens, at, words.couple, words);
  if (pair !== null) return pair;
  const hundred = wordAt(tokens, at) === words.a ? words.multipliers[wordAt(tokens, at + 1)] : undefined;
  if (hundred !== undefined) {
    const more = readWords(tokens, at + 1, words);
    return more !== null && more.next > at + 2
      ? more
      : { numeral: { value: hundred, halfStep: hundred / 2 }, next: at + 2 };
  }
  if (wordAt(tokens, at) === words.one && isNoCount(tokens, at, words)) return null;
  return readWords(tokens, at, words);
}

/** "A couple of hundred": two of a round number, and near that. */
function readCouple(
  tokens: readonly Token[],
  at: number,
  { word, of }: { word: string; of: string },
  words: NumberWords,
) {
  if (wordAt(tokens, at) !== word) return null;
  const next = wordAt(tokens, at + 1) === of ? at + 2 : at + 1;
  const by = words.multipliers[wordAt(tokens, next)];
  if (by === undefined) return null;
  return { numeral: { value: 2 * by, low: 1.5 * by, high: 2.5 * by, halfStep: by / 2 }, next: next + 1 };
}

function isNoCount(tokens: readonly Token[], at: number, words: NumberWords): boolean {
  const isSlope =
    wordAt(tokens, at + 1) === 'in' && (tokens[at + 2]?.kind === 'number' || isSmall(tokens, at + 2, words));
  const isRange = wordAt(tokens, at + 1) === 'or' && isSmall(tokens, at + 2, words);
  return (
    (words.articles?.has(wordAt(tokens, at - 2)) === true && wordAt(tokens, at + 1) === '') ||
    words.noCountBeforeOne.has(wordAt(tokens, at - 1)) ||
    (words.noCountAfterOne.has(wordAt(tokens, at + 1)) && !isSlope && !isRange)
  );
}

const isSmall = (tokens: readonly Token[], at: number, { small }: NumberWords) =>
  Object.hasOwn(small, wordAt(tokens, at));

function multiplied({ value }: Numeral, by: number, next: number): Run {
  return { numeral: { value: value * by, halfStep: halfStepOf(String(value * by)) }, next };
}

function readWords(tokens: readonly Token[], from: number, words: NumberWords): Run | null {
  let at = from;
  let total = 0;
  let current: number | null = null;
  for (;;) {
    const word = wordAt(tokens, at);
    const small = Object.hasOwn(words.small, word) ? words.small[word] : undefined;
    if (
      small !== undefined &&
      (current === null || (current >= 20 && current % 10 === 0 && small > 0 && (small < 10 || current % 100 === 0)))
    ) {
      current = (current ?? 0) + small;
    } else if (current === null && words.bare?.[word] !== undefined) {
      current = words.bare[word];
    } else if (current !== null && current < 1000 && words.multipliers[word] !== undefined) {
      const by: number = words.multipliers[word];
      if (by >= 1000) total += current * by;
      current = by >= 1000 ? 0 : current * by;
    } else if (!(word === words.and && current !== null && current >= 100 && isSmall(tokens, at + 1, words))) break;
    at += 1;
  }
  if (current === null) return null;
  return { numeral: { value: total + current, halfStep: halfStepOf(String(total + current)) }, next: at };
}

function withPart(tokens: readonly Token[], run: Run, words: NumberWords): Run {
  const { value, low } = run.numeral;
  if (low !== undefined || !Number.isInteger(value)) return run;
  if (words.point.has(wordAt(tokens, run.next))) return withDecimals(tokens, run, words);
  const after = tokens[run.next];
  if (
    after?.kind === 'number' &&
    after.numeral.value > 0 &&
    after.numeral.value < 1 &&
    after.numeral.low === undefined &&
    after.numeral.halfStep === 0.05
  ) {
    return { numeral: { value: value + after.numeral.value, halfStep: 0.05 }, next: run.next + 1 };
  }
  for (const [said, part] of words.fractions) {
    const parts = said.split(' ');
    if (parts.every((word, index) => wordAt(tokens, run.next + index) === word)) {
      return { numeral: { value: value + part, halfStep: 0.05 }, next: run.next + parts.length };
    }
  }
  return run;
}

function withDecimals(tokens: readonly Token[], run: Run, { small }: NumberWords): Run {
  let digits = '';
  let at = run.next + 1;
  for (; digits.length < 4; at += 1) {
    const token = tokens[at];
    const given = token?.kind === 'number' ? token.numeral.value : small[wordAt(tokens, at)];
    if (given === undefined || !Number.isInteger(given) || given > 99) break;
    digits += String(given);
  }
  if (digits === '') return run;
  return {
    numeral: { value: Number(`${run.numeral.value}.${digits}`), halfStep: 0.5 * 10 ** -digits.length },
    next: at,
  };
}
