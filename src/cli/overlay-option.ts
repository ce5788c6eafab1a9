import type { OptionSpec } from './command.ts';

/** `--overlay`: local rules laid over the pack, named by file or folder. */
export const overlayOption: OptionSpec = {
  type: 'string',
  value: 'FILE',
  repeats: true,
  help: 'local rules laid over the pack: a file, or a folder of such files; may be repeated',
};
