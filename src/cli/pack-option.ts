import type { LoadedPack } from '../core/rules/pack/load-pack.ts';
import { type OptionSpec, type Parsed, textOption } from './command.ts';
import type { Io } from './io.ts';
import { firstPack, loadNamedPack } from './packs.ts';

/** `--pack`: the treatment pack that a command works with. */
export const packOption: OptionSpec = {
  type: 'string',
  value: 'PACK',
  help: `folder under rules/, or a path (${firstPack})`,
};

/** The pack that `--pack` names, read and checked; the first where none is named. Throws as `loadNamedPack`. */
export function packOf(parsed: Parsed, io: Io): Promise<LoadedPack> {
  return loadNamedPack(io, textOption(parsed, 'pack') ?? firstPack);
}
