import { statSync } from 'node:fs';
import { dirname } from 'node:path';
import { checkThoroughly } from '../../core/rules/analyse/check-thoroughly.ts';
import { applyOverlays } from '../../core/rules/overlay/apply-overlays.ts';
import type { Overlay } from '../../core/rules/overlay/parse-overlay.ts';
import type { Finding } from '../../core/rules/pack/findings.ts';
import type { LoadedPack, PackFiles } from '../../core/rules/pack/load-pack.ts';
import type { Pack, PackCase } from '../../core/rules/pack-types.ts';
import { readOverlays } from './read-overlays.ts';
import { readPackFolder } from './read-pack-folder.ts';

/** Where the rules lie: the folder of a pack, and files or folders of overlays. */
export interface RuleSources {
  readonly pack: string;
  readonly overlays: readonly string[];
  /** Ids of the other packs there are when it is asked: overlays that name one of them are left to it. */
  readonly otherPacks?: () => readonly string[];
}

/** The folders to watch: those named, and those in which files that are named lie. */
export function foldersOf({ pack, overlays }: RuleSources): readonly string[] {
  const isFolder = (path: string) => statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
  return [...new Set([pack, ...overlays].map((path) => (isFolder(path) ? path : dirname(path))))];
}

/** Rules as they stand in their files on a day. */
export interface RulesOfFiles {
  /** The pack with the overlays that hold laid over it. */
  readonly pack: Pack;
  /** The pack as it is shipped, and its cases. */
  readonly shipped: Pack;
  readonly cases: readonly PackCase[];
  /** All overlays found for it, those too that do not hold on the day. */
  readonly overlays: readonly Overlay[];
}

/** Rules that are sound, or what is wrong with them: at least one finding is an error. */
export type RulesRead =
  | { readonly ok: true; readonly rules: RulesOfFiles; readonly findings: readonly Finding[] }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/**
 * Makes what reads a pack with its overlays and checks both thoroughly, as they hold on the day (YYYY-MM-DD) that `dayIn` gives for
 * the pack's zone. Any error among the findings refuses the whole. What was found last is given again where no file and not the day
 * has changed. Reading rejects with RULES_FILE_UNREADABLE.
 */
export function rulesReader(
  { pack: folder, overlays: paths, otherPacks = () => [] }: RuleSources,
  dayIn: (zone: string) => string,
): () => Promise<RulesRead> {
  const check = remembered(checkThoroughly);
  const lay = remembered(layOver);
  return async () => {
    const texts = await readPackFolder(folder);
    const day = dayIn(zoneIn(texts));
    const checked = check(texts, day);
    if (!checked.ok || hasError(checked.findings)) return { ok: false, findings: checked.findings };
    const read = await readOverlays(paths);
    if (hasError(read.findings)) return { ok: false, findings: read.findings };
    const others = otherPacks();
    const own = read.overlays.filter(({ content }) => !others.includes(content.overlay.pack.id));
    const files = new Map([...read.files].filter(([name]) => own.some(({ file }) => file === name)));
    return lay(files, day, checked, own);
  };
}

function layOver(
  _texts: PackFiles,
  day: string,
  { pack: shipped, cases, findings: before }: LoadedPack,
  overlays: readonly Overlay[],
): RulesRead {
  const applied = applyOverlays(shipped, overlays, day);
  const findings = [...before, ...applied.findings];
  if (!applied.ok) return { ok: false, findings };
  return { ok: true, findings, rules: { pack: applied.pack, shipped, cases, overlays } };
}

/** Work over the texts of files on a day, done anew only where those or what else goes into it have changed. */
function remembered<Rest extends readonly unknown[], R>(
  work: (files: PackFiles, day: string, ...rest: Rest) => R,
): (files: PackFiles, day: string, ...rest: Rest) => R {
  let last: { readonly key: string; readonly first: unknown; readonly result: R } | null = null;
  return (files, day, ...rest) => {
    const key = JSON.stringify([day, ...files]);
    if (last?.key !== key || last.first !== rest[0]) last = { key, first: rest[0], result: work(files, day, ...rest) };
    return last.result;
  };
}

function hasError(findings: readonly Finding[]): boolean {
  return findings.some(({ severity }) => severity === 'error');
}

/** The zone that pack.json names; UTC where it names none, which the check then finds. */
function zoneIn(files: PackFiles): string {
  return /"zone"\s*:\s*"([A-Za-z]+(?:\/[A-Za-z_+-]+)*)"/.exec(files.get('pack.json') ?? '')?.[1] ?? 'UTC';
}
