import { resolve } from 'node:path';
import { readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import type { Side, Sides } from '../../../src/core/compare/index.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';

const folder = resolve(import.meta.dirname, '../../../rules/propyzamide-winter-oilseed-rape');

/** The first pack with its cases. */
export async function firstSide(): Promise<Side> {
  const { pack, cases } = loadPack(await readPackFolder(folder));
  return { pack, cases };
}

/** A side with the value of a parameter moved. */
export function withValue({ pack, cases }: Side, id: string, value: Pack['parameters'][number]['value']): Side {
  return {
    cases,
    pack: { ...pack, parameters: pack.parameters.map((one) => (one.id === id ? { ...one, value } : one)) },
  };
}

/** Two sides. */
export function sidesOf(a: Side, b: Side): Sides {
  return { a, b };
}
