/** Phrases of one language by the English ones; `{}` in both stands for what was put in, in the same order. */
export type PhraseTable = Readonly<Record<string, string>>;

interface Pattern {
  readonly english: RegExp;
  readonly told: readonly string[];
}

const known = new WeakMap<PhraseTable, readonly Pattern[]>();

/**
 * A text in the language of a table: by the English phrase that it is, else by the most exact one with holes that it fits. What
 * was put in is looked up too, then goes through `value`. Null where the table has no such phrase.
 */
export function phraseIn(text: string, table: PhraseTable, value: (text: string) => string = same): string | null {
  if (Object.hasOwn(table, text)) return table[text] ?? null;
  for (const { english, told } of patternsOf(table)) {
    const match = english.exec(text);
    if (!match) continue;
    const holes = match.slice(1).map((hole) => phraseIn(hole, table, value) ?? value(hole));
    return told.map((part, index) => `${part}${holes[index] ?? ''}`).join('');
  }
  return null;
}

function same(text: string): string {
  return text;
}

/** The phrases with holes, those with the most letters of their own first. */
function patternsOf(table: PhraseTable): readonly Pattern[] {
  const made = known.get(table);
  if (made) return made;
  const letters = (phrase: string) => phrase.replaceAll('{}', '').length;
  const patterns = Object.entries(table)
    .filter(([english]) => english.includes('{}'))
    .sort(([one], [other]) => letters(other) - letters(one))
    .map(([english, told]) => ({ english: new RegExp(`^${holesOf(english)}$`, 's'), told: told.split('{}') }));
  known.set(table, patterns);
  return patterns;
}

/** A first hole that a blank follows takes one word: else "in" or "of" would be found in any text that a person wrote. */
function holesOf(english: string): string {
  const [first = '', ...rest] = english.split('{}').map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const opening = first === '' && rest[0]?.startsWith(' ') ? '(\\S+)' : '(.*?)';
  return [first, ...rest.map((part, index) => `${index === 0 ? opening : '(.*?)'}${part}`)].join('');
}
