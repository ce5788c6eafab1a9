/** A small store of texts that outlives the page where the browser permits. */
export interface Memory {
  readonly read: (key: string) => string | null;
  /** Null removes. */
  readonly write: (key: string, value: string | null) => void;
}

/** What of the browser's `Storage` is used. */
export type TextStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * Memory over the browser's storage. What that refuses (private windows, full disk, blocked by settings) is kept for the life
 * of the page.
 */
export function createMemory(storage: () => TextStorage): Memory {
  const refused = new Map<string, string | null>();
  return {
    read: (key) => {
      if (refused.has(key)) return refused.get(key) ?? null;
      try {
        return storage().getItem(key);
      } catch {
        return null;
      }
    },
    write: (key, value) => {
      try {
        if (value === null) storage().removeItem(key);
        else storage().setItem(key, value);
        refused.delete(key);
      } catch {
        refused.set(key, value);
      }
    },
  };
}
