/** A line of code that may be changed, 1-based. */
export interface CodeLine {
  readonly file: string;
  readonly line: number;
}

/** Lines of a text that hold code: no blank lines, comments, imports, or type declarations of one line. */
export function codeLines(file: string, text: string): CodeLine[] {
  let inComment = false;
  let inImport = false;
  return text.split('\n').flatMap((raw, index) => {
    const line = raw.trim();
    if (line.startsWith('/*')) inComment = true;
    if (/^import\b|^export (?:\*|\{|type \{)/.test(line)) inImport = true;
    const isCode =
      !inComment && !inImport && line !== '' && !line.startsWith('//') && !/^(?:export )?type\b|^readonly\b/.test(line);
    if (line.endsWith('*/')) inComment = false;
    if (inImport && /;$/.test(line)) inImport = false;
    return isCode ? [{ file, line: index + 1 }] : [];
  });
}

/** A sample without repetition of `count` items, the same for the same seed. */
export function sampleOf<Item>(items: readonly Item[], count: number, seed: number): Item[] {
  const left = [...items];
  const next = drawing(seed);
  return Array.from(
    { length: Math.min(count, left.length) },
    () => left.splice(Math.floor(next() * left.length), 1)[0]!,
  );
}

/** Numbers from 0 to below 1 that follow from a seed: a Weyl sequence whose bits are mixed. */
function drawing(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e37_79b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85eb_ca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2_ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** The 95 % interval of a share by Wilson's score method (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927), from 0 to 1. */
export function wilson(hits: number, of: number): readonly [number, number] {
  if (of === 0) return [0, 1];
  const z = 1.959964;
  const share = hits / of;
  const middle = share + z ** 2 / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  const scale = 1 + z ** 2 / of;
  return [(middle - half) / scale, (middle + half) / scale];
}
