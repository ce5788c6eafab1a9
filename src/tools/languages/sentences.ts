/** A sentence by its place, "core/verdict/sprayToday", with what it says; one that takes arguments says several things. */
export type Sentences = ReadonlyMap<string, string>;

/** What sentences are tried with: counts of one and two, texts, nothing, yes. */
const tries: readonly unknown[] = [1, 2, '‹text›', '', null, true];

/**
 * Every sentence of a tree of words. A function says what it gives for each of `tries` in all of its arguments, so that two functions
 * that say the same are the same, however they are written.
 */
export function sentencesOf(tree: unknown, place = ''): Sentences {
  return new Map(walk(tree, place));
}

function walk(node: unknown, place: string): (readonly [string, string])[] {
  if (typeof node === 'string') return [[place, node]];
  if (typeof node === 'function') {
    return [[place, tries.map((one) => tried(node as (...args: unknown[]) => unknown, one)).join('\n')]];
  }
  if (node === null || typeof node !== 'object') return [];
  return Object.entries(node).flatMap(([key, value]) =>
    walk(value, `${place}${place === '' ? '' : '/'}${key.replaceAll('/', '~')}`),
  );
}

function tried(say: (...args: unknown[]) => unknown, argument: unknown): string {
  try {
    return String(say(...Array(say.length).fill(argument)));
  } catch {
    return '';
  }
}
