import { join, resolve } from 'node:path';
import { firstFault, readOverlays, requireOverlays } from '../adapters/pack-files/read-overlays.ts';
import { findPacks, readPackFolder } from '../adapters/pack-files/read-pack-folder.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { nearestName } from '../core/errors/nearest.ts';
import { localDate } from '../core/facts/local-day.ts';
import { applyOverlays } from '../core/rules/overlay/apply-overlays.ts';
import type { Overlay } from '../core/rules/overlay/parse-overlay.ts';
import { type LoadedPack, loadPack } from '../core/rules/pack/load-pack.ts';
import { epochSeconds } from '../core/units/brands.ts';
import type { Io } from './io.ts';

/** Pack that is used where none is named. */
export const firstPack = 'propyzamide-winter-oilseed-rape';

/** Ids of the packs under rules/, that for who names none first. */
export async function packIds(io: Io): Promise<readonly [string, ...string[]]> {
  const found = await findPacks(join(io.root, 'rules'));
  return [firstPack, ...found.map(({ id }) => id).filter((id) => id !== firstPack)];
}

/** The folder of a pack named by its id under rules/, or by a path. Throws PACK_UNKNOWN. */
export async function packFolder(io: Io, name: string): Promise<string> {
  const found = await findPacks(join(io.root, 'rules'));
  const byId = found.find((pack) => pack.id === name);
  if (byId) return byId.folder;
  if (/[\\/.]/.test(name)) return resolve(name);
  const ids = found.map((pack) => pack.id);
  const nearest = nearestName(name, ids);
  throw codedError('PACK_UNKNOWN', {
    expected: `one of ${ids.join(', ')}, or the path of a folder`,
    came: name,
    ...(nearest ? { nearest } : {}),
  });
}

/** Reads and checks a pack by id or path. Throws PACK_UNKNOWN or the first fault of its files. */
export async function loadNamedPack(io: Io, name: string): Promise<LoadedPack> {
  return loadPack(await readPackFolder(await packFolder(io, name)));
}

/**
 * The same with overlays laid over it as they hold on a day; of a folder of overlays, those that name another pack under rules/ are
 * left to it. Throws as `loadNamedPack`, and the first fault of an overlay.
 */
export async function loadLocalPack(
  io: Io,
  name: string,
  paths: readonly string[],
  dayIn: (zone: string) => string,
): Promise<LoadedPack> {
  const loaded = await loadNamedPack(io, name);
  const others = (await findPacks(join(io.root, 'rules'))).map(({ id }) => id).filter((id) => id !== loaded.pack.id);
  return layLocal(loaded, paths, dayIn(loaded.pack.zone), others);
}

/**
 * A loaded pack with overlays laid over it as they hold on a day (YYYY-MM-DD), named by files or folders; their cases come with
 * those of the pack. Those of a folder that name one of `others` are left out. What is not applied on the day stands among the
 * findings. Throws the first fault of an overlay.
 */
export async function layLocal(
  loaded: LoadedPack,
  paths: readonly string[],
  day: string,
  others: readonly string[] = [],
): Promise<LoadedPack> {
  if (paths.length === 0) return loaded;
  const read = requireOverlays(await readOverlays(paths));
  const isOfOther = ({ file, content }: Overlay) => !paths.includes(file) && others.includes(content.overlay.pack.id);
  const overlays = read.overlays.filter((overlay) => !isOfOther(overlay));
  const applied = applyOverlays(loaded.pack, overlays, day);
  if (!applied.ok) throw firstFault(applied.findings);
  const cases = [...loaded.cases, ...applied.cases];
  return { ...loaded, pack: applied.pack, cases, findings: [...loaded.findings, ...applied.findings] };
}

/** The day by the clock of the machine, in a zone. */
export function today(io: Io): (zone: string) => string {
  return (zone) => localDate(epochSeconds(io.now()), zone);
}
