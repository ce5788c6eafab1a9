import type { ErrorReport } from '../../src/core/errors/coded-error.ts';

/** An answer that is shown under an address. */
export interface ShownLink {
  readonly id: string;
  /** Path on the server. */
  readonly address: string;
  /** Epoch seconds UTC. */
  readonly until: number;
  readonly headline: string;
}

/** What the server said, or why not; null where it was not reached. */
export type Asked<T> = { readonly ok: T } | { readonly error: ErrorReport | null };

/** How long the server may take, ms. */
const withinMs = 15_000;

/** Shows the answer that stands under an address of its own, in the language of the page. */
export function makeLink(token: string): Promise<Asked<ShownLink>> {
  const language = document.documentElement.lang;
  return ask<ShownLink>('POST', `/hand-over?language=${encodeURIComponent(language)}`, token);
}

/** Those of this conversation that are still shown. */
export async function listLinks(token: string): Promise<readonly ShownLink[]> {
  const asked = await ask<{ readonly links: readonly ShownLink[] }>('GET', '/hand-over', token);
  return 'ok' in asked ? asked.ok.links : [];
}

/** Takes one back. */
export function removeLink(token: string, id: string): Promise<Asked<unknown>> {
  return ask('DELETE', `/hand-over/${id}`, token);
}

async function ask<T>(method: string, path: string, token: string): Promise<Asked<T>> {
  try {
    const response = await fetch(path, {
      method,
      headers: { authorization: `Bearer ${token}` },
      signal: AbortSignal.timeout(withinMs),
    });
    const body = (await response.json()) as T & { readonly error?: ErrorReport };
    return response.ok ? { ok: body } : { error: body.error ?? null };
  } catch {
    return { error: null };
  }
}
