import { join } from 'node:path';
import { type FoundPack, findPacks } from '../adapters/pack-files/read-pack-folder.ts';
import { foldersOf, rulesReader } from '../adapters/pack-files/read-rules.ts';
import type { PackSource } from '../server/rules/follow-pack.ts';
import type { RuleBookMeans } from '../server/rules/rule-book.ts';
import type { Io } from './io.ts';
import { firstPack, today } from './packs.ts';

/**
 * The packs under rules/ as a server follows them, that for who names none first, and others that come to lie there. Each overlay is
 * laid over the pack that it names.
 */
export function ruleSources(io: Io, overlays: readonly string[]): PackSource & Pick<RuleBookMeans, 'others'> {
  const root = join(io.root, 'rules');
  const known = new Set([firstPack]);
  const sourceOf = ({ id, folder }: FoundPack) => {
    const sources = { pack: folder, overlays, otherPacks: () => [...known].filter((other) => other !== id) };
    return {
      id,
      read: rulesReader(sources, today(io)),
      watch: (onChange: () => void) => io.watch(foldersOf(sources), onChange),
    };
  };
  return {
    ...sourceOf({ id: firstPack, folder: join(root, firstPack) }),
    others: {
      find: async () => {
        const found = (await findPacks(root)).filter(({ id }) => id !== firstPack);
        for (const { id } of found) known.add(id);
        return found.map(sourceOf);
      },
      watch: (onChange) => io.watch([root], onChange),
    },
  };
}
