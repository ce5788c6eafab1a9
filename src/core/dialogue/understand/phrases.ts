/** One part of a pattern: any of its words, or none of them where it may be left out. */
interface Part {
  readonly words: readonly string[];
  readonly isOptional: boolean;
}

/** What stands behind the last part of a pattern. */
interface End<T> {
  readonly value: T;
}

/** Where one stands after some words: the value of the phrase that ends here, and the places that each next word leads to. */
interface Node<T> {
  readonly value: T | undefined;
  readonly next: ReadonlyMap<string, Places>;
}

/** Parts that may come next, by their numbers, parted by blanks. */
type Places = string;

/** Phrases by their words, for finding the longest that begins at a place. */
export interface PhraseBook<T> {
  /** Value and length in words of the longest phrase at `at`, or null. `wordAt` gives '' where there is no word. */
  readonly longestAt: (wordAt: (index: number) => string, at: number) => { value: T; length: number } | null;
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
 * A book of patterns: words one after another, where `a|b` is either word and `a?` may be left out. "drain|drains is|are? running" are
 * six phrases. Where several patterns give the same phrase, `join` makes one value of theirs, in their order. Words of `gaps` may stand
 * between the words of a phrase, at most two of them: "sticks to your boots" is found in "sticks right to your boots".
 *
 * A pattern may stand for hundreds of thousands of phrases. They are never written out: where words lead is worked out when they are
 * first said, and kept. Ways to the same parts meet in one node, so that there are about as many nodes as parts.
 */
export function phraseBook<T>(
  entries: Iterable<readonly [pattern: string, value: T]>,
  join: (a: T, b: T) => T = (_, b) => b,
  gaps: ReadonlySet<string> = new Set(),
): PhraseBook<T> {
  const parts: (Part | End<T>)[] = [];
  const starts: number[] = [];
  for (const [pattern, value] of entries) {
    starts.push(parts.length);
    parts.push(...pattern.split(' ').map(partOf), { value });
  }
  const nodes = new Map<Places, Node<T>>();
  const nodeAt = (places: Places): Node<T> => {
    const node = nodes.get(places) ?? nodeOf(places.split(' ').map(Number), parts, join);
    nodes.set(places, node);
    return node;
  };
  const root = nodeOf(starts, parts, join);
  return {
    longestAt: (wordAt, at) => {
      let found: { value: T; length: number } | null = null;
      let node = root;
      for (let length = 1, skipped = 0; ; length += 1) {
        const word = wordAt(at + length - 1);
        const next = node.next.get(word);
        if (next === undefined) {
          skipped += 1;
          const isBound = length === 2 && wordAt(at).length < shortestLead;
          if (node === root || isBound || skipped > mostGaps || !gaps.has(word)) return found;
          continue;
        }
        node = nodeAt(next);
        if (node.value !== undefined) found = { value: node.value, length };
      }
    },
  };
}

function partOf(written: string): Part {
  const isOptional = written.endsWith('?');
  const words = (isOptional ? written.slice(0, -1) : written).split('|').filter((word) => word !== '');
  return { words, isOptional };
}

function nodeOf<T>(places: readonly number[], parts: readonly (Part | End<T>)[], join: (a: T, b: T) => T): Node<T> {
  const next = new Map<string, Set<number>>();
  const ends = new Set<End<T>>();
  for (const place of places) {
    for (let at = place; ; at += 1) {
      const part = parts[at]!;
      if ('value' in part) ends.add(part);
      else for (const word of part.words) next.set(word, (next.get(word) ?? new Set()).add(at + 1));
      if ('value' in part || !part.isOptional) break;
    }
  }
  const [first, ...more] = [...ends].map(({ value }) => value);
  return {
    value: first === undefined ? undefined : more.reduce(join, first),
    next: new Map([...next].map(([word, after]) => [word, [...after].join(' ')])),
  };
}
