import { type CasesCompared, compareOnCases, type Side } from '../../src/core/compare/index.ts';
import { applyOverlays } from '../../src/core/rules/overlay/apply-overlays.ts';
import { type Overlay, parseOverlay } from '../../src/core/rules/overlay/parse-overlay.ts';
import type { SharedOut } from '../../src/core/rules/overlay/share-out.ts';
import type { Finding } from '../../src/core/rules/pack/findings.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { contentOf, type Draft, filledIn } from './draft.ts';
import type { Bench } from './server.ts';
import { sharedAnswers } from './shared-answers.ts';

/** What comes of a draft: nothing changed, refused with what shows why, or both rule sets and what the cases say. */
export type Tried =
  | { readonly kind: 'unchanged'; readonly before: Side }
  | { readonly kind: 'refused'; readonly before: Side; readonly findings: readonly Finding[] }
  | {
      readonly kind: 'sound';
      readonly before: Side;
      /** The rules as they will be, each changed limit taken as if it held on every day. */
      readonly after: Side;
      readonly cases: CasesCompared;
    };

/** The pack with the server's other overlays laid over it, and its cases: what the draft is laid over. */
export function besideDraft({ shipped, cases, overlays, today }: Bench, { head, opened }: Draft): Side {
  const applied = applyOverlays(
    shipped,
    othersThan(overlays, opened?.overlay.id ?? head.id),
    dayOf(head.validFrom, today),
  );
  return applied.ok ? { pack: applied.pack, cases: [...cases, ...applied.cases] } : { pack: shipped, cases };
}

/** The questions that the draft shares out at its limits, if it does, of those that are asked beside it. */
export function sharedIn({ pack }: Side, draft: Draft): readonly SharedOut[] {
  return draft.sharesOut ? sharedAnswers(pack, draft) : [];
}

/** The file of the overlay as the draft stands, with the questions that it shares out of those asked beside it. */
export function fileOf({ shipped }: Pick<Bench, 'shipped'>, beside: Side, draft: Draft, language: string): object {
  const shared = sharedIn(beside, draft).map(({ question }) => question);
  return contentOf(draft, shipped, language, shared);
}

/** Lays the draft over the rules, checks it as the server would, and runs every case under both. */
export function tryDraft(bench: Bench, draft: Draft, language: string): Tried {
  const before = besideDraft(bench, draft);
  if (draft.opened === null && Object.keys(draft.limits).length === 0) return { kind: 'unchanged', before };
  const filled = filledIn(draft);
  const text = JSON.stringify(fileOf(bench, before, filled, language));
  const { overlay, findings } = parseOverlay('overlay.json', text);
  if (!overlay) return { kind: 'refused', before, findings };
  const others = othersThan(bench.overlays, draft.opened?.overlay.id ?? draft.head.id);
  const applied = applyOverlays(bench.shipped, [...others, overlay], dayOf(filled.head.validFrom, bench.today));
  if (!applied.ok) return { kind: 'refused', before, findings: applied.findings };
  const after = { pack: asIfAlways(applied.pack, draft.limits), cases: before.cases };
  const cases = compareOnCases({ a: before, b: after });
  return { kind: 'sound', before, after, cases };
}

/** What keeps a draft from being handed out though its changes are sound: the faults of its file. */
export function faultsOf(bench: Bench, beside: Side, draft: Draft, language: string): readonly Finding[] {
  const { findings } = parseOverlay('overlay.json', JSON.stringify(fileOf(bench, beside, draft, language)));
  return findings.filter(({ severity }) => severity === 'error');
}

/** Cases and seasons are of other days than the overlay: a limit that changes is tried on all of them. */
function asIfAlways(pack: Pack, limits: Draft['limits']): Pack {
  const parameters = pack.parameters.map((one) => {
    const value = limits[one.id];
    return value === undefined ? one : { ...one, value };
  });
  return { ...pack, parameters };
}

function othersThan(overlays: readonly Overlay[], id: string): readonly Overlay[] {
  return overlays.filter(({ content }) => content.overlay.id !== id);
}

function dayOf(validFrom: string, today: string): string {
  return validFrom > today ? validFrom : today;
}
