import { buildPack } from '../pack/build-pack.ts';
import { readKinds } from '../pack/file-kinds.ts';
import type { Path, Report } from '../pack/findings.ts';
import type { Pack, PackCase } from '../pack-types.ts';
import { isProtected, type Rule } from '../types.ts';
import { type Merged, mergeOverlay } from './merge.ts';
import type { Overlay } from './parse-overlay.ts';

/** A pack with one overlay laid over it, its hash and its list of overlays not yet mended, and the overlay's cases. */
export interface LaidOver {
  readonly pack: Pack;
  readonly cases: readonly PackCase[];
  readonly changed: Merged['changed'];
}

const casesFile = 'cases/overlay.json';

/**
 * Lays an overlay over a pack and checks the whole as the loader does; faults are reported where the overlay's file has what made
 * them. Null where a part is too broken to go on. Whether anything protected was loosened is not judged here.
 */
export function layOverlay(pack: Pack, overlay: Overlay, report: Report): LaidOver | null {
  const merged = mergeOverlay(pack, overlay);
  const { cases = [] } = overlay.content;
  const files = new Map<string, unknown>([...merged.files, [casesFile, { cases }]]);
  const kinds = readKinds([...files.keys()], report);
  const built = buildPack(kinds, files, reportInOverlay(pack, overlay, merged, report), pack.facts);
  if (!built) return null;
  const shipped = new Map(pack.rules.map((rule) => [rule.id, rule]));
  const rules = built.pack.rules.map((rule) => withEarlier(rule, shipped.get(rule.id)));
  return {
    pack: { ...built.pack, rules, ...(pack.plainDay ? { plainDay: pack.plainDay } : {}) },
    cases: built.cases.map((one) => ({ ...one, file: overlay.file })),
    changed: merged.changed,
  };
}

/** A rule of practice keeps the conditions that it had before, for the protected rules that name it. */
function withEarlier(rule: Rule, shipped: Rule | undefined): Rule {
  if (!shipped) return rule;
  const isChanged = JSON.stringify(shipped.when) !== JSON.stringify(rule.when);
  const earlier = [...(shipped.earlier ?? []), ...(isChanged && !isProtected(shipped) ? [shipped.when] : [])];
  return earlier.length === 0 ? rule : { ...rule, earlier };
}

/** Reports what is found in the merged files in the overlay's own; what only concerns the pack is not the overlay's fault. */
function reportInOverlay(pack: Pack, overlay: Overlay, { origins, changed }: Merged, report: Report): Report {
  const { file, content } = overlay;
  return (code, place, details, severity) => {
    const [list, index, ...rest] = place.path;
    if (place.file === casesFile) return report(code, { file, path: place.path }, details, severity);
    const origin = origins.get(`${place.file} ${list} ${index}`);
    if (origin) return report(code, { file, path: [...origin, ...rest] }, details, severity);
    if (severity === 'warning') return;
    if (code === 'RULE_PLACEHOLDER_UNKNOWN' && isKept(pack, details.rule)) return;
    report(code, { file, path: blamed() }, details);

    function blamed(): Path {
      const { parameter, rule, came } = details;
      const removed = (content.removes?.rules ?? []).indexOf(came.replaceAll('"', ''));
      if (code === 'RULE_REFERENCE_MISSING' && removed >= 0) return ['removes', 'rules', removed];
      const of = (name: 'parameters' | 'rules', id: string | undefined): Path | null => {
        const at =
          id !== undefined && changed[name].includes(id) ? (content[name] ?? []).findIndex((one) => one.id === id) : -1;
        return at < 0 ? null : [name, at];
      };
      return of('parameters', parameter) ?? of('rules', rule) ?? ['overlay'];
    }
  };
}

/** A protected rule goes on reading what it read through rules that it names, so that its sentences go on naming that. */
function isKept(pack: Pack, rule: string | undefined): boolean {
  const found = pack.rules.find(({ id }) => id === rule);
  return found !== undefined && isProtected(found);
}
