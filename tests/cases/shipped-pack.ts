import { join } from 'node:path';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { type ResolvedCase, resolveCase } from '../../src/core/rules/resolve-case.ts';
import { root } from '../repo/files.ts';

const folder = join(root, 'rules', 'propyzamide-winter-oilseed-rape');

/** The shipped pack with its cases and the findings of loading it. */
export const shipped = loadPack(await readPackFolder(folder));

/** Every case of the shipped pack, resolved. */
export const resolvedCases: readonly ResolvedCase[] = shipped.cases.map((one) => resolveCase(one, shipped.pack));
