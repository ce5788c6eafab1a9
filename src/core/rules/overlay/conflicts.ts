import type { Path, Report } from '../pack/findings.ts';
import type { AppliedOverlay } from '../pack-types.ts';
import { overlayLists } from './merge.ts';
import type { Overlay } from './parse-overlay.ts';

/** An entry that an overlay gives or removes, and where its file says so. */
interface Touched {
  readonly list: string;
  readonly id: string;
  readonly path: Path;
}

function touchedBy({ content }: Overlay): Touched[] {
  const given = overlayLists.flatMap((list) =>
    (content[list] ?? []).map(({ id }, index) => ({ list, id, path: [list, index, 'id'] })),
  );
  const removed = Object.entries(content.removes ?? {}).flatMap(([list, ids]) =>
    (ids ?? []).map((id, index) => ({ list, id, path: ['removes', list, index] })),
  );
  return [...given, ...removed];
}

/** Reports overlays of one layer that change the same entry or have the same id, each at the later one. */
export function findConflicts(overlays: readonly Overlay[], report: Report): void {
  const seen = new Map<string, Overlay>();
  for (const overlay of overlays) {
    const { file, content } = overlay;
    const { layer, id } = content.overlay;
    const entries = [{ list: 'overlay', id, path: ['overlay', 'id'] }, ...touchedBy(overlay)];
    for (const entry of entries) {
      const key = `${layer} ${entry.list} ${entry.id}`;
      const other = seen.get(key);
      if (other && other !== overlay) {
        const expected = `${entry.id} in one overlay of the layer ${layer}`;
        report(
          'OVERLAY_CONFLICT',
          { file, path: entry.path },
          { expected, came: `${other.content.overlay.id} and ${id}` },
        );
      } else seen.set(key, overlay);
    }
  }
}

/** Reports entries that an overlay before this one says nobody may change after it. */
export function findFixed(overlay: Overlay, before: readonly AppliedOverlay[], report: Report): void {
  for (const { id, path } of touchedBy(overlay)) {
    const by = before.find(({ fixed }) => fixed.includes(id));
    if (!by) continue;
    report(
      'OVERLAY_ENTRY_FIXED',
      { file: overlay.file, path },
      { expected: `${id} as ${by.id} has it`, came: `${id} changed` },
    );
  }
}
