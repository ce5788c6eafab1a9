import { type EpochSeconds, epochSeconds } from '../core/units/brands.ts';

/** The one source of the present moment. */
export interface Clock {
  /** Now, epoch seconds UTC, with its fraction. */
  readonly now: () => EpochSeconds;
}

/** Timers as an argument, so that tests need not wait. Each returns a function that stops it. */
export interface Timers {
  /** Calls once after `ms` milliseconds. */
  readonly after: (ms: number, call: () => void) => () => void;
  /** Calls every `ms` milliseconds. */
  readonly every: (ms: number, call: () => void) => () => void;
}

/** The clock of the machine. */
export const systemClock: Clock = { now: () => epochSeconds(Date.now() / 1000) };

/** The timers of the machine; none of them keeps a process alive on its own. */
export const systemTimers: Timers = {
  after: (ms, call) => {
    const timer = setTimeout(call, ms);
    release(timer);
    return () => clearTimeout(timer);
  },
  every: (ms, call) => {
    const timer = setInterval(call, ms);
    release(timer);
    return () => clearInterval(timer);
  },
};

/** In Node a timer is an object that can be let go of; in a page it is a number. */
function release(timer: unknown): void {
  if (typeof timer === 'object' && timer !== null && 'unref' in timer && typeof timer.unref === 'function') {
    timer.unref();
  }
}
