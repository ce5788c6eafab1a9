import { type LocatedFinding, locateFindings } from '../../adapters/pack-files/locate.ts';
import { readPackFolder } from '../../adapters/pack-files/read-pack-folder.ts';
import { checkThoroughly } from '../../core/rules/analyse/check-thoroughly.ts';

/** A pack as it was found on a day. */
export interface CheckedFolder {
  readonly folder: string;
  /** What it is told as where that is not the folder: the files of overlays. */
  readonly told?: string;
  /** Day as of which it was checked, YYYY-MM-DD. */
  readonly day: string;
  /** True where it loads; an error of the analysis is an error all the same. */
  readonly loads: boolean;
  readonly rules: number;
  readonly cases: number;
  readonly findings: readonly LocatedFinding[];
}

/** Reads and checks the pack of a folder as of a day. Throws RULES_FILE_UNREADABLE. */
export async function checkFolder(folder: string, day: string): Promise<CheckedFolder> {
  const files = await readPackFolder(folder);
  const checked = checkThoroughly(files, day);
  return {
    folder,
    day,
    loads: checked.ok,
    rules: checked.ok ? checked.pack.rules.length : 0,
    cases: checked.ok ? checked.cases.length : 0,
    findings: locateFindings(checked.findings, files),
  };
}

/** True where a pack has nothing that must be mended. */
export function isSound({ findings }: CheckedFolder): boolean {
  return findings.every(({ severity }) => severity !== 'error');
}
