import { watch } from 'node:fs';

/** Milliseconds of quiet after which a burst of changes counts as one: an editor writes a file in several steps. */
const quietMs = 100;

/** Watches folders and all that lies in them; returns what ends it. */
export function watchFolders(folders: readonly string[], onChange: () => void): () => void {
  let timer: NodeJS.Timeout | undefined;
  const settle = (): void => {
    clearTimeout(timer);
    timer = setTimeout(onChange, quietMs);
  };
  const watchers = folders.map((folder) => watch(folder, { recursive: true }, settle));
  return () => {
    clearTimeout(timer);
    for (const watcher of watchers) watcher.close();
  };
}
