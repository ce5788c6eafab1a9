import { basename, dirname, resolve } from 'node:path';
import { firstFault } from '../../adapters/pack-files/read-overlays.ts';
import type { RulesOfFiles } from '../../adapters/pack-files/read-rules.ts';
import { readIfThere, writeWhole } from '../../adapters/pack-files/write-overlay.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import { shortText } from '../../core/protocol/zod-report.ts';
import { applyOverlays } from '../../core/rules/overlay/apply-overlays.ts';
import { type Overlay, parseOverlay } from '../../core/rules/overlay/parse-overlay.ts';
import type { AppliedOverlay } from '../../core/rules/pack-types.ts';
import type { RuleBook } from './rule-book.ts';

/** What a page sends to have an overlay written. */
export interface OverlayToWrite {
  readonly overlay: unknown;
  /** Hash of the overlay of this id that the page began from; null where it began a new one. */
  readonly replaces: string | null;
}

/** An overlay as it was written. */
export interface WrittenOverlay {
  readonly file: string;
  readonly hash: string;
  /** True where it is laid over the pack now; one that begins on a later day waits. */
  readonly inForce: boolean;
}

/**
 * Writes an overlay into the folder where it is sound beside the others of its treatment there, as they would hold on its first day
 * or today, whichever is later, and takes it. Throws its first fault, OVERLAY_CHANGED_MEANWHILE, OVERLAY_CONFLICT,
 * OVERLAY_FILE_TAKEN, OVERLAY_NOT_WRITTEN.
 */
export async function takeOverlay(
  { overlay: content, replaces }: OverlayToWrite,
  {
    folder,
    rules,
    dayOf,
  }: { readonly folder: string; readonly rules: RuleBook; readonly dayOf: (files: RulesOfFiles) => string },
): Promise<WrittenOverlay> {
  const text = `${JSON.stringify(content, null, 2)}\n`;
  const parsed = parseOverlay('overlay.json', text);
  if (parsed.overlay === null) throw firstFault(parsed.findings);
  const { id, validFrom, pack } = parsed.overlay.content.overlay;
  await rules.look();
  const files = rules.filesOf(pack.id) ?? rules.files();
  const { shipped, overlays } = files;
  const day: string = dayOf(files);
  const before = overlays.find((one) => one.content.overlay.id === id);
  if ((before?.hash ?? null) !== replaces) {
    throw codedError('OVERLAY_CHANGED_MEANWHILE', {
      expected: replaces ?? 'no overlay of this id',
      came: before?.hash ?? 'nothing',
    });
  }
  if (before !== undefined && dirname(resolve(before.file)) !== resolve(folder)) {
    throw codedError('OVERLAY_CONFLICT', { expected: 'an overlay of the folder', came: basename(before.file) });
  }
  const file = before === undefined ? `${id}.json` : basename(before.file);
  if (before === undefined) await refuseTaken(folder, file);
  const others = overlays.filter((one) => one !== before);
  const applied = applyOverlays(shipped, [...others, { ...parsed.overlay, file }], validFrom > day ? validFrom : day);
  if (!applied.ok) throw firstFault(applied.findings);
  await writeWhole(folder, file, text);
  await rules.look();
  return { file, hash: parsed.overlay.hash, inForce: isInForce(rules, parsed.overlay) };
}

/** The overlays that are laid over the rules of a treatment now. */
export function inForce(rules: RuleBook, pack: string): readonly AppliedOverlay[] {
  return rules.packs().find(({ id }) => id === pack)?.overlays ?? [];
}

function isInForce(rules: RuleBook, { hash, content }: Overlay): boolean {
  return inForce(rules, content.overlay.pack.id).some((one) => one.hash === hash);
}

async function refuseTaken(folder: string, file: string): Promise<void> {
  const there = await readIfThere(folder, file);
  if (there === null) return;
  throw codedError('OVERLAY_FILE_TAKEN', { file, expected: 'no file of this name', came: shortText(there) });
}
