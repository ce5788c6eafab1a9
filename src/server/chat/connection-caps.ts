import type { ErrorCode } from '../../core/errors/table.ts';

/** Counts open connections, overall and by address. */
export interface ConnectionCaps {
  /** Takes a place, to be given back by calling `release` once; or the code of the limit that is reached. */
  readonly take: (address: string) => { readonly release: () => void } | { readonly code: ErrorCode };
  readonly count: () => number;
}

/** Caps of `overall` connections and `perAddress` from one address. */
export function createConnectionCaps(overall: number, perAddress: number): ConnectionCaps {
  const byAddress = new Map<string, number>();
  let open = 0;
  return {
    count: () => open,
    take: (address) => {
      const here = byAddress.get(address) ?? 0;
      if (open >= overall) return { code: 'CONNECTIONS_FULL' };
      if (here >= perAddress) return { code: 'CONNECTIONS_FULL_HERE' };
      open += 1;
      byAddress.set(address, here + 1);
      let held = true;
      return {
        release: () => {
          if (!held) return;
          held = false;
          open -= 1;
          const left = (byAddress.get(address) ?? 1) - 1;
          if (left > 0) byAddress.set(address, left);
          else byAddress.delete(address);
        },
      };
    },
  };
}
