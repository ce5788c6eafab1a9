import type { Side, Sides } from '../../core/compare/index.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import type { Parsed } from '../command.ts';
import type { Io } from '../io.ts';
import { layLocal, loadNamedPack } from '../packs.ts';

/**
 * The two rule sets that a command line names: two packs, each with its overlays, or one pack as shipped and with overlays. Throws
 * OPTION_VALUE, PACK_UNKNOWN, or the first fault of a file.
 */
export async function loadSides({ words, lists }: Parsed, io: Io, day: string): Promise<Sides> {
  const [first, second = first, ...more] = words;
  const [over, overA, overB] = ['overlay', 'overlay-a', 'overlay-b'].map((name) => lists[name] ?? []) as [
    readonly string[],
    readonly string[],
    readonly string[],
  ];
  const one = words.length === 1;
  if (first === undefined || second === undefined || more.length > 0 || (over.length > 0 && !one)) {
    throw codedError('OPTION_VALUE', {
      expected: 'two packs, or one with --overlay FILE',
      came: words.join(' ') || 'none',
    });
  }
  if (one && [...over, ...overA, ...overB].length === 0) {
    throw codedError('OPTION_VALUE', { expected: 'a second pack, or --overlay FILE', came: first });
  }
  const side = async (name: string, overlays: readonly string[]): Promise<Side> => {
    const { pack, cases } = await layLocal(await loadNamedPack(io, name), overlays, day);
    return { pack, cases };
  };
  return { a: await side(first, overA), b: await side(second, [...over, ...overB]) };
}
