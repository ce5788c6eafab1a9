import { join } from 'node:path';
import { findPacks, readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { type ResolvedCase, resolveCase } from '../../src/core/rules/resolve-case.ts';
import { root } from '../repo/files.ts';

const found = await findPacks(join(root, 'rules'));

/** Every pack under rules/ with its cases and the findings of loading it. */
export const shippedPacks = await Promise.all(found.map(async ({ folder }) => loadPack(await readPackFolder(folder))));

/** The same with the id of each, for tables of tests. */
export const packTable = shippedPacks.map((one) => [one.pack.id, one] as const);

/** The first treatment: what the tests of its own agreements are about. */
export const shipped = shippedPacks.find(({ pack }) => pack.id === 'propyzamide-winter-oilseed-rape')!;

/** Every case of a pack, resolved. */
export function resolvedCasesOf({ pack, cases }: (typeof shippedPacks)[number]): readonly ResolvedCase[] {
  return cases.map((one) => resolveCase(one, pack));
}

/** Every case of the first treatment, resolved. */
export const resolvedCases: readonly ResolvedCase[] = resolvedCasesOf(shipped);
