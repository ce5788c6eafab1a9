/** Numbers that look like chance and are the same for the same seed. */
export interface Seeded {
  /** A whole number from 0 to `count` - 1. */
  readonly below: (count: number) => number;
  /** The list in another order. */
  readonly shuffled: <T>(list: readonly T[]) => T[];
}

/** A generator from a text: FNV-1a (32 bit, over UTF-16 units) makes it a number, a multiply-and-shift counter (Weyl sequence) goes on from there. */
export function seeded(seed: string): Seeded {
  let state = hashOf(seed);
  const below = (count: number): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) % Math.max(1, count);
  };
  const shuffled = <T>(list: readonly T[]): T[] => {
    const rest = [...list];
    const taken: T[] = [];
    while (rest.length > 0) taken.push(...rest.splice(below(rest.length), 1));
    return taken;
  };
  return { below, shuffled };
}

function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return hash;
}
