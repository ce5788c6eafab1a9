/** How an estimate compares with what was measured: of how many pairs, mean difference, and root mean square difference. */
export interface Score {
  readonly count: number;
  readonly bias: number;
  readonly rmse: number;
}

/** Scores pairs of estimate and measurement; NaN figures of none. */
export function score(pairs: readonly (readonly [estimate: number, measured: number])[]): Score {
  const mean = (of: (difference: number) => number) =>
    pairs.reduce((sum, [estimate, measured]) => sum + of(estimate - measured), 0) / pairs.length;
  return { count: pairs.length, bias: mean((difference) => difference), rmse: Math.sqrt(mean((one) => one * one)) };
}

/** A score in words, with so many decimals and a unit. */
export function sayScore({ count, bias, rmse }: Score, decimals: number, unit: string): string {
  const signed = `${bias >= 0 ? '+' : ''}${bias.toFixed(decimals)}`;
  return `bias ${signed}, RMSE ${rmse.toFixed(decimals)} ${unit} (${count})`;
}

/** A score as figures for machines, with 4 decimals. */
export function figuresOf({ count, bias, rmse }: Score): { count: number; bias: number | null; rmse: number | null } {
  const kept = (value: number) => (Number.isFinite(value) ? Number(value.toFixed(4)) : null);
  return { count, bias: kept(bias), rmse: kept(rmse) };
}

/** Groups by a key, in the order of first appearance. */
export function groupBy<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
