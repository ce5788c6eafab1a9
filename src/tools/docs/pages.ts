import { join } from 'node:path';
import { readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../core/rules/pack/load-pack.ts';
import { errorsPage } from './errors-page.ts';
import { factsPage } from './facts-page.ts';
import { rulesPage } from './rules-page.ts';
import { schemaFiles } from './schemas/write-schema.ts';

/** Day whose parameters docs/rules.md shows: in the season of the pack's first version. */
const shownDay = '2026-11-01';

/** Every generated document, and JSON Schema of a pack's files, by its path. `root` is the project's folder. */
export async function generatedPages(root: string): Promise<ReadonlyMap<string, string>> {
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  return new Map([
    ['docs/errors.md', errorsPage()],
    ['docs/facts.md', factsPage()],
    ['docs/rules.md', rulesPage(pack, shownDay)],
    ...schemaFiles(),
  ]);
}
