import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { root } from '../repo/files.ts';
import { decorateFile } from './decorate.ts';

const files = await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape'));

/** The files of the shipped pack, with the made-up language in each text. */
export const decoratedFiles: ReadonlyMap<string, string> = new Map(
  [...files].map(([path, text]) => [
    path,
    path.endsWith('.json') ? JSON.stringify(decorateFile(JSON.parse(text))) : text,
  ]),
);

/** The shipped pack in the made-up language too. */
export const decoratedPack = loadPack(decoratedFiles).pack;
