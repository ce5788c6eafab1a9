import type { ServerSettings } from './settings.ts';

/** Address that connections and requests are counted by: of the peer, or of whom the reverse proxy names last. */
export function peerAddress(
  forwarded: unknown,
  peer: string | undefined,
  { behindProxy }: Pick<ServerSettings, 'behindProxy'>,
): string {
  const named = behindProxy
    ? String(forwarded ?? '')
        .split(',')
        .at(-1)
        ?.trim()
    : undefined;
  return named || (peer ?? '');
}
