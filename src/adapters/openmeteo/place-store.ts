/** Places kept before the longest unused one is let go. */
const mostPlaces = 500;

/** Keeps one thing a place in memory; the place that was longest not read or written goes first. */
export function placeStore<T>() {
  const kept = new Map<string, T>();
  const set = (key: string, thing: T) => {
    kept.delete(key);
    kept.set(key, thing);
    const [oldest] = kept.keys();
    if (kept.size > mostPlaces && oldest !== undefined) kept.delete(oldest);
  };
  const get = (key: string): T | undefined => {
    const thing = kept.get(key);
    if (thing !== undefined) set(key, thing);
    return thing;
  };
  return { get, set };
}
