import { join } from 'node:path';
import { findPacks, readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../core/rules/pack/load-pack.ts';
import { errorsPage } from './errors-page.ts';
import { factsPage } from './facts-page.ts';
import { packsPage, rulesPage } from './rules-page.ts';
import { schemaFiles } from './schemas/write-schema.ts';

/** Day whose parameters the pages of rules show: in the season of the first pack's first version. */
const shownDay = '2026-11-01';

/** Every generated document, and JSON Schema of a pack's files, by its path. `root` is the project's folder. */
export async function generatedPages(root: string): Promise<ReadonlyMap<string, string>> {
  const found = await findPacks(join(root, 'rules'));
  const packs = await Promise.all(found.map(async ({ folder }) => loadPack(await readPackFolder(folder)).pack));
  return new Map([
    ['docs/errors.md', errorsPage()],
    ['docs/facts.md', factsPage()],
    ['docs/rules.md', packsPage(packs)],
    ...packs.map((pack) => [`docs/rules/${pack.id}.md`, rulesPage(pack, shownDay)] as const),
    ...schemaFiles(),
  ]);
}
