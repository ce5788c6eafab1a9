import { watch } from 'node:fs';
import type { Timers } from './clock.ts';

/** Calls back at every change of what lies in the folders, however deep; returns what ends it. */
export type FolderWatcher = (folders: readonly string[], onChange: () => void) => () => void;

/** Milliseconds of quiet after which a burst of changes counts as one: an editor writes a file in several steps. */
export const quietMs = 100;

/** The watcher of the machine. A folder that goes away while it is watched is a change; nothing is heard of it after that. */
export const systemWatcher: FolderWatcher = (folders, onChange) => {
  const watchers = folders.map((folder) => watch(folder, { recursive: true }, onChange).on('error', onChange));
  return () => {
    for (const watcher of watchers) watcher.close();
  };
};

/** The same calling back once after each burst of changes. */
export function onceQuiet(watcher: FolderWatcher, timers: Pick<Timers, 'after'>): FolderWatcher {
  return (folders, onChange) => {
    let stopTimer = (): void => {};
    const stop = watcher(folders, () => {
      stopTimer();
      stopTimer = timers.after(quietMs, onChange);
    });
    return () => {
      stopTimer();
      stop();
    };
  };
}
