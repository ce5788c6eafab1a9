import type { Memory } from '../chat/memory.ts';

/** What is wrong with this device's clock. */
export type ClockFault = { readonly kind: 'off'; readonly aheadSeconds: number } | { readonly kind: 'set-back' };

/** The server's time on this device, with a connection and without. */
export interface ServerClock {
  /** Epoch seconds UTC. */
  readonly now: () => number;
  /** The server said its time. */
  readonly learn: (serverTime: number) => void;
  /** Null where the device's clock is right to two minutes, or nothing tells. */
  readonly fault: () => ClockFault | null;
}

/** Differences below this are left unsaid, seconds. */
const slackSeconds = 120;

const key = 'loamward.clock';

/**
 * Counts on from the last time that the server said, by whichever of the device's two clocks went further (the steady one cannot be
 * set but may rest while the device sleeps), so that nothing is taken for fresher than it is. After a restart it counts by the
 * device's clock and the difference noted then, and never goes back behind a time that was seen before.
 */
export function createServerClock(means: {
  readonly now: () => number;
  /** Seconds that only ever rise while the page lives. */
  readonly steady: () => number;
  readonly memory: Memory;
}): ServerClock {
  const { now: deviceNow, steady, memory } = means;
  const kept = /^(-?[\d.]+) ([\d.]+)$/.exec(memory.read(key) ?? '');
  let ahead = kept ? Number(kept[1]) : 0;
  let isTold = kept !== null;
  const seen = kept ? Number(kept[2]) : 0;
  const wasSetBack = deviceNow() + ahead < seen - slackSeconds;
  let anchor = { device: deviceNow(), steady: steady(), time: Math.max(deviceNow() + ahead, seen) };
  let noted = Number.NEGATIVE_INFINITY;
  let isFresh = false;

  const now = (): number => {
    const time = anchor.time + Math.max(deviceNow() - anchor.device, steady() - anchor.steady);
    if (isTold && time - noted > 30) {
      noted = time;
      memory.write(key, `${ahead} ${Math.round(time)}`);
    }
    return time;
  };
  return {
    now,
    learn: (serverTime) => {
      ahead = serverTime - deviceNow();
      anchor = { device: deviceNow(), steady: steady(), time: serverTime };
      isTold = true;
      isFresh = true;
      noted = Number.NEGATIVE_INFINITY;
      now();
    },
    fault: () => {
      if (!isTold) return null;
      const isBack = deviceNow() - anchor.device < steady() - anchor.steady - slackSeconds;
      if (isBack || (wasSetBack && !isFresh)) return { kind: 'set-back' };
      return Math.abs(ahead) > slackSeconds ? { kind: 'off', aheadSeconds: -ahead } : null;
    },
  };
}
