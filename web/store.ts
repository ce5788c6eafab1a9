/** A value that parts of the page read and are told of when it changes. */
export interface Store<S> {
  readonly get: () => S;
  readonly set: (change: Partial<S>) => void;
  /** Calls back after each change; returns how to stop. */
  readonly listen: (call: () => void) => () => void;
}

/** A store that begins with `state`. */
export function createStore<S extends object>(state: S): Store<S> {
  let now = state;
  const listeners = new Set<() => void>();
  return {
    get: () => now,
    set: (change) => {
      now = { ...now, ...change };
      for (const call of [...listeners]) call();
    },
    listen: (call) => {
      listeners.add(call);
      return () => void listeners.delete(call);
    },
  };
}
