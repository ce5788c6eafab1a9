import { setTimeout as wait } from 'node:timers/promises';
import type { Sleep, TransportMeans } from './one-try.ts';

/** Waits in real time; a signal ends the wait at once. */
export const systemSleep: Sleep = async (milliseconds, signal) => {
  await wait(milliseconds, undefined, signal ? { signal } : {}).catch(() => undefined);
};

/** The machine's own network, time and randomness. */
export const systemMeans: TransportMeans = {
  fetch: (input, init) => fetch(input, init),
  sleep: systemSleep,
  random: Math.random,
  clock: () => Date.now() / 1000,
};
