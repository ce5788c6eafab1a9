/** What a command may touch of the world: given by the launcher, replaced in tests. */
export interface Io {
  /** Text for standard output, as it is. */
  readonly write: (text: string) => void;
  /** Text for standard error, as it is. */
  readonly writeError: (text: string) => void;
  /** UTF-8 text of a file; `-` is standard input. Rejects where it cannot be read. */
  readonly readText: (path: string) => Promise<string>;
  /** Lines of standard input, as they come. */
  readonly lines: () => AsyncIterable<string>;
  /** True where a person sits at the keyboard. */
  readonly interactive: boolean;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Root folder of the project, where `rules/` and `dist/` lie. */
  readonly root: string;
  /** Epoch seconds UTC. */
  readonly now: () => number;
  /** A random UUID. */
  readonly newId: () => string;
  /** Calls back after changes below the folders, until the function that it returns is called. */
  readonly watch: (folders: readonly string[], onChange: () => void) => () => void;
  /** Resolves when the process is asked to end. */
  readonly untilStopped: () => Promise<void>;
}
