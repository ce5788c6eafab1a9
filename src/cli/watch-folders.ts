import { systemTimers } from '../adapters/clock.ts';
import { onceQuiet, systemWatcher } from '../adapters/folder-watcher.ts';

/** Watches folders and all that lies in them; a burst of changes counts as one. Returns what ends it. */
export const watchFolders = onceQuiet(systemWatcher, systemTimers);
