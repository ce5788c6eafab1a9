import type { Language } from './language.ts';
import type { LanguageWords } from './language-words.ts';
import type { Token } from './tokens.ts';

/** Words of a language by their spellings with one letter left out, for finding what a mistyped word may be. */
export interface Speller {
  readonly known: ReadonlySet<string>;
  /** Words that a mistyped one may stand for, by each spelling of theirs. */
  readonly near: ReadonlyMap<string, readonly string[]>;
  /** Words that may be said in the plural. */
  readonly mendable: ReadonlySet<string>;
  /** Words by their stem, for other forms of them. */
  readonly stems: ReadonlyMap<string, string>;
}

const shortest = 5;
const longest = 18;

/**
 * Every word of the lists is known; those of meanings, subjects and units may be what was meant: never a number, a "not" or a
 * short word.
 */
export function spellerOf(words: LanguageWords, properWords: readonly string[]): Speller {
  const { rows, subjects, flags, filler, ago, answers, intents, numbers, units } = words;
  const wordsIn = (patterns: Iterable<string>) =>
    [...patterns].flatMap((pattern) => pattern.split(/[ |?]+/)).filter((word) => word !== '');
  const meant = new Set(
    wordsIn([
      ...rows.flatMap(({ say }) => say),
      ...Object.values(subjects).flatMap((patterns) => patterns ?? []),
      ...units.after.flatMap(([say, unit]) => (unit === 'foreign' ? [] : [say])),
    ]),
  );
  const little = [
    ...wordsIn(Object.values(flags).flat()),
    ...wordsIn(ago.map(([say]) => say)),
    ...Object.keys(numbers.small),
    ...Object.keys(numbers.multipliers),
  ];
  const said = Object.values(answers).flatMap((part: Iterable<string>) => [...part]);
  const wishes = Object.values(intents).flatMap((patterns) => patterns ?? []);
  const known = new Set([
    ...meant,
    ...little,
    ...wordsIn([...said, ...wishes, ...properWords]),
    ...filler.split(' '),
    ...numbers.oddAfter,
    ...wordsIn(units.boundsBefore.map(([say]) => say)),
    ...wordsIn(units.boundsAfter.map(([say]) => say)),
  ]);
  const barred = new Set([
    ...flags.block.filter((say) => !say.includes(' ')),
    ...wordsIn([...flags.not, ...flags.scant, ...flags.unsure]),
    ...Object.keys(numbers.small),
    ...Object.keys(numbers.multipliers),
  ]);
  const near = new Map<string, string[]>();
  const stems = new Map<string, string>();
  for (const word of meant) {
    if (word.length < shortest || word.length > longest || barred.has(word)) continue;
    for (const spelling of new Set([word, ...shortened(word)]))
      near.set(spelling, [...(near.get(spelling) ?? []), word]);
    if (!stems.has(stemOf(word))) stems.set(stemOf(word), word);
  }
  return { known, near, mendable: new Set([...meant].filter((word) => !barred.has(word))), stems };
}

/** Puts mistyped words right where one word alone is a letter away; what is said with them is doubtful. */
export function mendWords(tokens: readonly Token[], { speller }: Language): readonly Token[] {
  if (speller === null) return tokens;
  return tokens.map((token) => {
    if (token.kind !== 'word' || !isMendable(token.text) || speller.known.has(token.text)) return token;
    const whole = `${token.text}g`;
    if (token.text.endsWith('in') && speller.known.has(whole)) return { ...token, text: whole };
    const single = token.text.replace(/s$/, '');
    if (single !== token.text && speller.mendable.has(single)) return { ...token, text: single };
    const meant = meantBy(token.text, speller) ?? speller.stems.get(stemOf(token.text)) ?? null;
    return meant === null ? token : { ...token, text: meant, isMended: true };
  });
}

function isMendable(word: string): boolean {
  return word.length >= shortest && word.length <= longest;
}

const shortestStem = 4;

/** A word without its ending: "clarting" and "clarty" have one stem. A stem of fewer than four letters is none. */
function stemOf(word: string): string {
  const bare = word.replace(/(?:ings?|ed|es|s|y|e)$/, '').replace(/([^aeiouls])\1$/, '$1');
  return bare.length < shortestStem ? word : bare;
}

function meantBy(word: string, { near }: Speller): string | null {
  const found = new Set<string>();
  for (const spelling of [word, ...shortened(word)]) {
    for (const one of near.get(spelling) ?? []) if (isOneAway(word, one)) found.add(one);
  }
  const all = [...found];
  const likeliest = [all.filter((one) => isSwap(word, one)), all.filter((one) => one.length > word.length), all];
  const [only, ...others] = likeliest.find((some) => some.length > 0) ?? [];
  return only === undefined || others.length > 0 ? null : only;
}

function shortened(word: string): readonly string[] {
  return [...word].map((_, at) => word.slice(0, at) + word.slice(at + 1));
}

/** One letter too many, too few or another, the first one never; or two neighbours changed over. */
function isOneAway(a: string, b: string): boolean {
  if (a.charAt(0) !== b.charAt(0) || Math.abs(a.length - b.length) > 1) return false;
  if (isSwap(a, b)) return true;
  let from = 0;
  while (from < a.length && a.charAt(from) === b.charAt(from)) from += 1;
  let end = 0;
  if (a.length === b.length && !isLikely(a.charAt(from), b.charAt(from))) return false;
  const most = Math.min(a.length, b.length) - from;
  while (end < most && a.charAt(a.length - 1 - end) === b.charAt(b.length - 1 - end)) end += 1;
  return Math.max(a.length, b.length) - from - end <= 1;
}

const likelyGroups = ['aeiouy', 'ckqsz', 'qwertyuiop', 'asdfghjkl', 'zxcvbnm'];

/** Letters that stand for one another by sound, or lie side by side on the keys. */
function isLikely(a: string, b: string): boolean {
  return likelyGroups.some((letters, group) => {
    const [at, other] = [letters.indexOf(a), letters.indexOf(b)];
    return at >= 0 && other >= 0 && (group < 2 || Math.abs(at - other) === 1);
  });
}

function isSwap(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  const at = [...a].findIndex((letter, place) => letter !== b.charAt(place));
  if (at < 0) return false;
  return a.slice(0, at) + a.charAt(at + 1) + a.charAt(at) + a.slice(at + 2) === b;
}
