import { locateFindings } from '../../adapters/pack-files/locate.ts';
import { readOverlays } from '../../adapters/pack-files/read-overlays.ts';
import { analysePack } from '../../core/rules/analyse/check-thoroughly.ts';
import { placesIn } from '../../core/rules/analyse/places.ts';
import { applyOverlays } from '../../core/rules/overlay/apply-overlays.ts';
import type { LoadedPack } from '../../core/rules/pack/load-pack.ts';
import type { CheckedFolder } from './check-folder.ts';

/**
 * Reads and checks overlays over a pack as of a day: each by itself, then all together over the pack, then what the pack says
 * with them as far as they bear on it. Throws RULES_FILE_UNREADABLE.
 */
export async function checkOverlays(loaded: LoadedPack, paths: readonly string[], day: string): Promise<CheckedFolder> {
  const { files, overlays, findings } = await readOverlays(paths);
  const isParsed = overlays.length === files.size;
  const applied = isParsed ? applyOverlays(loaded.pack, overlays, day) : null;
  const places = placesIn(new Map(overlays.map(({ file, content }) => [file, content])));
  const further =
    applied?.ok && applied.pack !== loaded.pack
      ? analysePack(applied.pack, [...loaded.cases, ...applied.cases], places, day)
      : [];
  const own = further.filter(({ file }) => files.has(file));
  const sum = (count: (content: (typeof overlays)[number]['content']) => number) =>
    overlays.reduce((all, { content }) => all + count(content), 0);
  return {
    folder: '',
    told: [...files.keys()].join(', '),
    day,
    loads: applied?.ok ?? false,
    rules: sum(({ rules = [] }) => rules.length),
    cases: sum(({ cases = [] }) => cases.length),
    findings: locateFindings([...findings, ...(applied?.findings ?? []), ...own], files),
  };
}
