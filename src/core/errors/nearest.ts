/** Number of single-letter insertions, deletions and replacements between two words (Levenshtein 1966). */
export function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}

/** The known name nearest to what came, or undefined where none is near (more than about a third of its letters away). */
export function nearestName(came: string, known: readonly string[]): string | undefined {
  const wanted = came.toLowerCase();
  let best: { name: string; distance: number } | undefined;
  for (const name of known) {
    const distance = editDistance(wanted, name.toLowerCase());
    if (!best || distance < best.distance) best = { name, distance };
  }
  return best && best.distance <= Math.max(2, Math.floor(best.name.length / 3)) ? best.name : undefined;
}
