import { definitionsOf } from '../../facts/registry/index.ts';
import type { DefinitionOf } from '../mutate/change-conditions.ts';
import { checkLanguages } from '../pack/check-texts.ts';
import { collectFindings, type Finding, type Report } from '../pack/findings.ts';
import { hashPackFiles } from '../pack/hash-pack.ts';
import type { AppliedOverlay, Pack, PackCase } from '../pack-types.ts';
import { findConflicts, findFixed } from './conflicts.ts';
import { layOverlay } from './lay-overlay.ts';
import type { Overlay } from './parse-overlay.ts';
import { protect } from './protect/index.ts';
import { checkDeclared } from './protect/protect-parameters.ts';
import { daysOfChange } from './protect/world.ts';

/** A pack with overlays applied, their cases, and findings that do not keep it from use. */
export interface OverlaidPack {
  readonly ok: true;
  readonly pack: Pack;
  readonly cases: readonly PackCase[];
  readonly findings: readonly Finding[];
}

/** Overlays that were refused, and why: at least one finding is an error. */
export interface RefusedOverlays {
  readonly ok: false;
  readonly findings: readonly Finding[];
}

const layers = ['area', 'farm'];

/**
 * Applies overlays to a pack, those of water company areas first, then those of farms, each in the order of their ids. Each is
 * checked as a pack's files are, and refused where anything protected could be loosened, the area's settings by a farm included.
 * One that does not hold on `day` (YYYY-MM-DD) is not applied, which a warning says; without a day all are. Either all that hold
 * are applied or none. The hash is over the pack's and those of the overlays (canonical JSON, SHA-256).
 */
export function applyOverlays(
  pack: Pack,
  overlays: readonly Overlay[],
  day?: string,
  definitionOf: DefinitionOf = definitionsOf(pack.facts),
): OverlaidPack | RefusedOverlays {
  const { findings, report } = collectFindings();
  const ordered = overlays.toSorted((a, b) => rank(a) - rank(b) || (idOf(a) < idOf(b) ? -1 : 1));
  const fitting = ordered.filter((overlay) => headFits(pack, overlay, report));
  const holding = fitting.filter((overlay) => day === undefined || holdsOn(overlay, day, report));
  findConflicts(holding, report);
  const failed = () => findings.some(({ severity }) => severity === 'error');
  if (failed()) return { ok: false, findings };
  let standing = pack;
  const cases: PackCase[] = [];
  for (const overlay of holding) {
    findFixed(overlay, standing.overlays ?? [], report);
    checkDeclared(overlay, standing, report);
    if (failed()) return { ok: false, findings };
    const laid = layOverlay(standing, overlay, report);
    if (!laid) return { ok: false, findings };
    const days = daysOfChange([standing, laid.pack], overlay.content.overlay.validFrom);
    protect({ before: standing, after: laid.pack, overlay, definitionOf, days, report });
    if (failed()) return { ok: false, findings };
    const applied = [...(standing.overlays ?? []), appliedOverlay(overlay, laid.changed)];
    standing = { ...laid.pack, overlays: applied, hash: '' };
    cases.push(...laid.cases);
  }
  return {
    ok: true,
    pack: holding.length === 0 ? pack : { ...standing, hash: hashOver(pack, standing) },
    cases,
    findings,
  };
}

function rank({ content }: Overlay): number {
  return layers.indexOf(content.overlay.layer);
}

function idOf({ content }: Overlay): string {
  return content.overlay.id;
}

function headFits(pack: Pack, { file, content }: Overlay, report: Report): boolean {
  const { title, reason, pack: asked } = content.overlay;
  const place = { file, path: ['overlay'] };
  checkLanguages(title, pack.languages, { file, path: ['overlay', 'title'] }, report);
  if (typeof reason !== 'string') checkLanguages(reason, pack.languages, { file, path: ['overlay', 'reason'] }, report);
  const fits = asked.id === pack.id && isWithin(pack.version, asked.from, asked.before);
  if (!fits) {
    const came = `${pack.id} ${pack.version}`;
    const range = [asked.from && `from ${asked.from}`, asked.before && `before ${asked.before}`]
      .filter(Boolean)
      .join(' ');
    report(
      'OVERLAY_PACK_MISFIT',
      { ...place, path: [...place.path, 'pack'] },
      { expected: `${asked.id} ${range}`.trim(), came },
    );
  }
  return fits;
}

/** True for a version from one on and before another; semantic versions, of which pre-releases come before the release. */
function isWithin(version: string, from: string | undefined, before: string | undefined): boolean {
  return (
    (from === undefined || compareVersions(version, from) >= 0) &&
    (before === undefined || compareVersions(version, before) < 0)
  );
}

function compareVersions(one: string, other: string): number {
  const parts = (version: string) => {
    const [numbers = '', pre] = version.split(/-(.*)/s);
    return { numbers: numbers.split('.').map(Number), pre };
  };
  const [a, b] = [parts(one), parts(other)];
  const at = a.numbers.findIndex((number, index) => number !== b.numbers[index]);
  if (at >= 0) return (a.numbers[at] ?? 0) - (b.numbers[at] ?? 0);
  if (a.pre === b.pre) return 0;
  if (a.pre === undefined) return 1;
  return b.pre === undefined || a.pre < b.pre ? -1 : 1;
}

function holdsOn({ file, content }: Overlay, day: string, report: Report): boolean {
  const { validFrom, validTo } = content.overlay;
  if (validFrom <= day && (validTo === undefined || day <= validTo)) return true;
  const expected = validTo === undefined ? `a day from ${validFrom}` : `a day from ${validFrom} to ${validTo}`;
  const key = day < validFrom ? 'validFrom' : 'validTo';
  report('OVERLAY_NOT_IN_FORCE', { file, path: ['overlay', key] }, { expected, came: day }, 'warning');
  return false;
}

function appliedOverlay({ content, hash }: Overlay, changed: AppliedOverlay['changed']): AppliedOverlay {
  const { id, title, author, place, reason, layer, validFrom, validTo, fixed = [] } = content.overlay;
  const end = validTo === undefined ? {} : { validTo };
  return { id, title, author, place, reason, layer, validFrom, ...end, hash, changed, fixed };
}

/** Over the hash of the pack and those of its overlays, in order. */
function hashOver({ hash, overlays: earlier = [] }: Pack, { overlays = [] }: Pack): string {
  const own = overlays.slice(earlier.length).map((one) => one.hash);
  return hashPackFiles(
    new Map<string, unknown>([
      ['pack', hash],
      ['overlays', own],
    ]),
  );
}
