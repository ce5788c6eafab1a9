/** What was learnt of a set of things: how often each was right in a row, and when it comes again. */
export interface Streaks {
  /** How many were asked so far. */
  readonly turn: number;
  readonly items: readonly StreakItem[];
}

/** One thing to be learnt. */
export interface StreakItem {
  readonly id: string;
  readonly right: number;
  /** Twice the turn at which it comes again, odd for what was asked before: it goes before what is new. */
  readonly due: number;
}

/** So often in a row each must be right. */
export const enoughInARow = 2;
/** After so many others a mistake comes back, and what was right once. */
const othersAfterMistake = 2;
const othersAfterRight = 4;

/** Nothing learnt yet; the things come in the order given. */
export function newStreaks(ids: readonly string[]): Streaks {
  return { turn: 0, items: ids.map((id, at) => ({ id, right: 0, due: 2 * at })) };
}

/** What to ask next: of what is not sure yet, that which is due first, not twice running while there is another; null once all is sure. */
export function nextToAsk({ items }: Streaks, last: string | null): string | null {
  const open = items.filter(({ right }) => right < enoughInARow);
  const others = open.filter(({ id }) => id !== last);
  const [first] = [...(others.length > 0 ? others : open)].sort((a, b) => a.due - b.due);
  return first?.id ?? null;
}

/** The streaks after an answer: right once more, or from the start and soon again. */
export function afterAnswer({ turn, items }: Streaks, id: string, isRight: boolean): Streaks {
  return {
    turn: turn + 1,
    items: items.map((item) =>
      item.id !== id
        ? item
        : isRight
          ? { ...item, right: item.right + 1, due: 2 * (turn + othersAfterRight) + 1 }
          : { ...item, right: 0, due: 2 * (turn + othersAfterMistake) + 1 },
    ),
  };
}

/** Kept streaks read back; null where they are of another form or of other things. */
export function parseStreaks(kept: unknown, ids: readonly string[]): Streaks | null {
  const { turn, items } = (kept ?? {}) as Partial<Record<keyof Streaks, unknown>>;
  if (!isCount(turn) || !Array.isArray(items) || items.length !== ids.length) return null;
  const read = items.flatMap((item: Partial<Record<keyof StreakItem, unknown>> | null): StreakItem[] => {
    const { id, right, due } = item ?? {};
    return ids.includes(String(id)) && isCount(right) && isWhole(due) ? [{ id: String(id), right, due }] : [];
  });
  return new Set(read.map(({ id }) => id)).size === ids.length ? { turn, items: read } : null;
}

const isWhole = (value: unknown): value is number => Number.isInteger(value);
const isCount = (value: unknown): value is number => isWhole(value) && value >= 0;
