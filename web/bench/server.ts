import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { type Overlay, parseOverlay } from '../../src/core/rules/overlay/parse-overlay.ts';
import type { Pack, PackCase } from '../../src/core/rules/pack-types.ts';
import type { Texts } from '../../src/core/units/texts.ts';

/** What the server hands the bench. */
export interface Bench {
  /** Every treatment that the server has rules of; the first serves who names none. */
  readonly treatments: readonly { readonly id: string; readonly title: Texts }[];
  /** The pack without overlays, and its cases. */
  readonly shipped: Pack;
  readonly cases: readonly PackCase[];
  /** Overlays of the server's folder. */
  readonly overlays: readonly Overlay[];
  /** Hashes of those that are laid over the pack today. */
  readonly inForce: readonly string[];
  /** The day at the pack's place, YYYY-MM-DD. */
  readonly today: string;
  /** Code of why the page may not write into the folder; null where it may. */
  readonly whyNoWrites: string | null;
  /** What of the server's files was not taken. */
  readonly refused: { readonly at: number; readonly error: ErrorReport } | null;
}

/** What came of writing an overlay into the server's folder. */
export interface Written {
  readonly file: string;
  readonly hash: string;
  readonly inForce: boolean;
}

interface CameBench extends Omit<Bench, 'overlays'> {
  readonly overlays: readonly { readonly file: string; readonly content: unknown }[];
}

/** The bench of a treatment, of the first where none is named, from the server; null where it is not reached. Never rejects. */
export async function fetchBench(
  treatment: string | null,
  get: typeof fetch = (...all) => fetch(...all),
): Promise<Bench | null> {
  try {
    const query = treatment === null ? '' : `?${new URLSearchParams({ pack: treatment })}`;
    const reply = await get(`/bench${query}`, { signal: AbortSignal.timeout(20_000) });
    if (!reply.ok) return null;
    const came = (await reply.json()) as CameBench;
    const overlays = came.overlays.flatMap(
      ({ file, content }) => parseOverlay(file, JSON.stringify(content)).overlay ?? [],
    );
    return { ...came, overlays };
  } catch {
    return null;
  }
}

/** Has the server write an overlay into its folder; the report why not, null where the server is not reached. Never rejects. */
export async function writeOverlay(
  overlay: object,
  replaces: string | null,
  get: typeof fetch = (...all) => fetch(...all),
): Promise<{ readonly ok: Written } | { readonly error: ErrorReport | null }> {
  try {
    const reply = await get('/overlays', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ overlay, replaces }),
      signal: AbortSignal.timeout(20_000),
    });
    const came = (await reply.json()) as Written & { readonly error?: ErrorReport };
    return reply.ok ? { ok: came } : { error: came.error ?? null };
  } catch {
    return { error: null };
  }
}
