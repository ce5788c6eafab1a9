import type { TransportMeans } from '../../../src/adapters/openmeteo/one-try.ts';
import { defaultSettings, type ForecastSettings } from '../../../src/adapters/openmeteo/settings.ts';

/** Time that moves only when told to or when slept through; a time limit is reached only where `limitReached` says so. */
export function fakeTime(iso = '2026-11-06T09:10:00Z') {
  const pauses: number[] = [];
  const time = {
    now: Date.parse(iso) / 1000,
    pauses,
    random: 0.5,
    /** Awaited before a time limit counts as reached; never reached while null. */
    limitReached: null as null | (() => Promise<void>),
  };
  const means: Omit<TransportMeans, 'fetch'> = {
    clock: () => time.now,
    random: () => time.random,
    sleep: async (milliseconds, signal) => {
      if (!signal) {
        pauses.push(milliseconds);
        time.now += milliseconds / 1000;
        return;
      }
      if (time.limitReached === null) {
        await new Promise<void>((resolve) => signal.addEventListener('abort', () => resolve()));
        return;
      }
      await time.limitReached();
      time.now += milliseconds / 1000;
    },
  };
  return { time, means };
}

/** Settings for the stand-in at an address: as many days ahead as before, which its replies cut short count on; no archive. */
export function settingsFor(url: string, changes: Partial<ForecastSettings> = {}): ForecastSettings {
  return { ...defaultSettings, pastDays: 7, forecastDays: 7, archive: false, baseUrl: url, ...changes };
}

/** The invented farm's place. */
export const hollinBank = { latitude: 53.41, longitude: -1.93 };
