interface Node<T> {
  readonly next: Map<string, Node<T>>;
  value?: T;
}

/** Phrases by their words, for finding the longest that begins at a place. */
export interface PhraseBook<T> {
  /** Value and length in words of the longest phrase at `at`, or null. `wordAt` gives '' where there is no word. */
  readonly longestAt: (wordAt: (index: number) => string, at: number) => { value: T; length: number } | null;
}

/**
 * The phrases that a pattern stands for: `a|b` is either word, `a?` may be left out. "drain|drains is|are? running" are six.
 */
export function expandPattern(pattern: string): readonly string[] {
  let phrases: string[][] = [[]];
  for (const part of pattern.split(' ')) {
    const isOptional = part.endsWith('?');
    const words = (isOptional ? part.slice(0, -1) : part).split('|');
    const longer = phrases.flatMap((phrase) => words.map((word) => [...phrase, word]));
    phrases = isOptional ? [...phrases, ...longer] : longer;
  }
  return phrases.map((phrase) => phrase.join(' ')).filter((phrase) => phrase !== '');
}

/** Patterns written one after another, parted by commas. */
export function words(parts: TemplateStringsArray, ...inserted: readonly string[]): readonly string[] {
  const text = parts.reduce((whole, part, at) => whole + (inserted[at - 1] ?? '') + part);
  return text.split(',').map((pattern) => pattern.trim().replace(/\s+/g, ' '));
}

const mostGaps = 2;
/** A shorter first word ("no", "not") belongs to what stands next to it. */
const shortestLead = 4;

/**
 * A book of patterns; where two give the same phrase, `join` makes one value of both. Words of `gaps` may stand between the words
 * of a phrase, at most two of them: "sticks to your boots" is found in "sticks right to your boots".
 */
export function phraseBook<T>(
  entries: Iterable<readonly [pattern: string, value: T]>,
  join: (a: T, b: T) => T = (_, b) => b,
  gaps: ReadonlySet<string> = new Set(),
): PhraseBook<T> {
  const root: Node<T> = { next: new Map() };
  for (const [pattern, value] of entries) {
    for (const phrase of expandPattern(pattern)) {
      const node = nodeOf(root, phrase.split(' '));
      node.value = node.value === undefined ? value : join(node.value, value);
    }
  }
  return {
    longestAt: (wordAt, at) => {
      let found: { value: T; length: number } | null = null;
      let node: Node<T> = root;
      for (let length = 1, skipped = 0; ; length += 1) {
        const word = wordAt(at + length - 1);
        const next = node.next.get(word);
        if (next === undefined) {
          skipped += 1;
          const isBound = length === 2 && wordAt(at).length < shortestLead;
          if (node === root || isBound || skipped > mostGaps || !gaps.has(word)) return found;
          continue;
        }
        node = next;
        if (node.value !== undefined) found = { value: node.value, length };
      }
    },
  };
}

function nodeOf<T>(root: Node<T>, words: readonly string[]): Node<T> {
  let node = root;
  for (const word of words) {
    const next: Node<T> = node.next.get(word) ?? { next: new Map() };
    node.next.set(word, next);
    node = next;
  }
  return node;
}
