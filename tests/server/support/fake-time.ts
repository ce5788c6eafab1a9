import type { Clock, Timers } from '../../../src/adapters/clock.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';

/** A clock and timers that move only when told. */
export interface FakeTime {
  readonly clock: Clock;
  readonly timers: Timers;
  /** Moves on by milliseconds and calls what falls due, in order. */
  readonly advance: (ms: number) => void;
}

/** Fake time from a moment on, epoch seconds UTC. */
export function fakeTime(startsAt = 1_795_600_000): FakeTime {
  let ms = startsAt * 1000;
  const due = new Set<{ at: number; every: number | null; call: () => void }>();
  const add = (at: number, every: number | null, call: () => void) => {
    const each = { at, every, call };
    due.add(each);
    return () => void due.delete(each);
  };
  return {
    clock: { now: () => epochSeconds(ms / 1000) },
    timers: {
      after: (wait, call) => add(ms + wait, null, call),
      every: (wait, call) => add(ms + wait, wait, call),
    },
    advance: (by) => {
      const until = ms + by;
      for (;;) {
        const next = [...due].filter(({ at }) => at <= until).sort((a, b) => a.at - b.at)[0];
        if (!next) break;
        ms = next.at;
        if (next.every === null) due.delete(next);
        else next.at += next.every;
        next.call();
      }
      ms = until;
    },
  };
}
