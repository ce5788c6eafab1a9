import { ruleText } from '../dialogue/worded-reason.ts';
import type { DefinitionOf } from '../rules/mutate/change-conditions.ts';
import type { Pack } from '../rules/pack-types.ts';
import { comparisonsOf } from '../rules/reads.ts';
import type { Rule } from '../rules/types.ts';
import type { Catalogue } from '../words/catalogue.ts';
import { labelOf } from '../words/facts.ts';
import type { PracticeWords } from '../words/practice-words.ts';

/** What typed words of a reason mean: a rule or that nothing stands in the way; several that they may mean; or none. */
export type MatchedReason =
  | { readonly rule: string }
  | { readonly nothing: true }
  | { readonly perhaps: readonly string[] }
  | { readonly none: true };

/** Least share of the best rule's points over the second's from which on it is not asked about. */
const sureOver = 1.35;
/** Least points that count as a match at all. */
const leastPoints = 1.5;
/** Most rules that are asked about. */
const mostAsked = 4;
/** Shortest beginning by which two forms of a word are taken for one. */
const stemLength = 4;
/** What a form of a word counts beside the word itself. */
const formShare = 0.75;

/**
 * The rule that typed words mean, by the words of its title, of its sentences, of the names of its facts and of the trade terms in
 * them: a word counts the more, the fewer rules have it. Not sure between two: both come back, for the person to be asked. Of
 * "nothing, except gusts" only what follows counts; an exception that fits no rule is no "nothing" either.
 */
export function matchReason(
  text: string,
  pack: Pack,
  definitionOf: DefinitionOf,
  words: Catalogue,
  { nothingWords, exceptWords }: Pick<PracticeWords, 'nothingWords' | 'exceptWords'>,
): MatchedReason {
  const whole = nothingWords.map(plainOf).filter((one) => !one.includes(' '));
  const documents = pack.rules.map((rule) => ({ id: rule.id, fields: fieldsOf(rule, pack, definitionOf, words) }));
  const found = (said: readonly string[]) =>
    documents
      .map(({ id, fields }) => ({ id, points: pointsOf(said, fields, documents, whole) }))
      .filter(({ points }) => points >= leastPoints)
      .sort((a, b) => b.points - a.points);
  const typed = plainOf(text);
  const beside = withoutFirst(typed, nothingWords);
  const excepted = beside === null ? null : withoutFirst(beside, exceptWords);
  const said = excepted ?? beside ?? typed;
  const [best, ...others] = found(wordsIn(said));
  if (!best) return beside === null || (excepted !== null && excepted !== '') ? { none: true } : { nothing: true };
  const close = others.filter(({ points }) => best.points < points * sureOver);
  return close.length === 0 ? { rule: best.id } : { perhaps: [best, ...close].slice(0, mostAsked).map(({ id }) => id) };
}

/** Plain words without the first of these phrases that is among them, as whole words; null where none is. */
function withoutFirst(plain: string, phrases: readonly string[]): string | null {
  const phrase = phrases.map(plainOf).find((one) => ` ${plain} `.includes(` ${one} `));
  return phrase === undefined ? null : ` ${plain} `.replace(` ${phrase} `, ' ').trim();
}

interface Field {
  readonly weight: number;
  readonly words: readonly string[];
}

function fieldsOf({ id, when }: Rule, pack: Pack, definitionOf: DefinitionOf, words: Catalogue): Field[] {
  const text = ruleText(pack, id, words.language);
  const labels = comparisonsOf(when, new Map()).map(({ fact }) => labelOf(fact, definitionOf, words));
  const said = [text?.title ?? '', text?.met ?? '', ...labels].join(' ').toLowerCase();
  const terms = pack.glossary.flatMap(({ words: heads, forms = {} }) => {
    const all = [...(heads[words.language] ?? []), ...(forms[words.language] ?? [])];
    return all.some((one) => said.includes(one.toLowerCase())) ? all : [];
  });
  return [
    { weight: 3, words: wordsIn(text?.title ?? '') },
    { weight: 1.5, words: wordsIn(labels.join(' ')) },
    { weight: 1, words: wordsIn(text?.met ?? '') },
    { weight: 1, words: wordsIn(terms.join(' ')) },
    { weight: 1, words: wordsIn(id) },
  ];
}

/** Points of a rule for typed words; the more, the more of its title is said. */
function pointsOf(
  typed: readonly string[],
  fields: readonly Field[],
  all: readonly { readonly fields: readonly Field[] }[],
  whole: readonly string[],
) {
  const said = [...new Set(typed)];
  const likeness = (word: string, others: readonly string[]) => likenessOf(word, others, whole);
  const points = said.reduce((sum, word) => {
    const own = Math.max(...fields.map(({ weight, words }) => weight * likeness(word, words)));
    if (own === 0) return sum;
    const having = all.filter((one) => one.fields.some(({ words }) => likeness(word, words) > 0)).length;
    return sum + own * -Math.log2(having / all.length);
  }, 0);
  const title = fields[0]?.words ?? [];
  const covered = title.filter((word) => likeness(word, said) > 0).length / Math.max(1, title.length);
  return points * (1 + covered);
}

/**
 * 1 where a word is among others, less where a form of it is ("windy" and "wind", "Boden" and "Bodentemperatur"), 0 where none is. What
 * means "nothing" by itself has no forms: "nothingness" is another word.
 */
function likenessOf(word: string, others: readonly string[], whole: readonly string[]): number {
  if (others.includes(word)) return 1;
  const ofNothing = (other: string) => whole.some((one) => one.startsWith(other));
  return others.some((other) => isForm(word, other) && !ofNothing(other)) ? formShare : 0;
}

function isForm(one: string, other: string): boolean {
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (short.length < stemLength) return false;
  return long.startsWith(short) || (short.length > stemLength && long.startsWith(short.slice(0, -1)));
}

function wordsIn(text: string): string[] {
  const plain = text.toLowerCase().replaceAll('ß', 'ss').normalize('NFD').replaceAll(/\p{M}/gu, '');
  return plain.match(/[\p{L}]{2,}/gu) ?? [];
}

/** The words of a text in a row, as they are compared. */
function plainOf(text: string): string {
  return wordsIn(text).join(' ');
}
