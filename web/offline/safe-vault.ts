import type { Vault } from './vault.ts';

/** Whether what is said outlives the page: kept, not any more since the disk is full, or never on this device. */
export type StorageState = 'kept' | 'full' | 'none';

/** A vault whose refusals are told and break nothing: the conversation goes on in memory. */
export interface SafeVault {
  /** What the work on the vault gave, or `otherwise` where the device refused. */
  readonly attempt: <T>(work: (vault: Vault) => Promise<T>, otherwise: T) => Promise<T>;
  /** True where the write took hold. */
  readonly write: (work: (vault: Vault) => Promise<void>) => Promise<boolean>;
}

/** How long a device may take before it counts as refusing, ms: some private windows never answer. */
export const vaultWithinMs = 4000;

/** Tells `onState` after each refusal and each write how the storage stands. `after` calls once after some ms and returns how to stop it. */
export function safeVault(
  vault: Vault,
  onState: (state: StorageState) => void,
  after: (ms: number, call: () => void) => () => void,
): SafeVault {
  const tried = async <T>(work: (vault: Vault) => Promise<T>): Promise<{ readonly value: T } | null> => {
    let stop = (): void => {};
    const late = new Promise<'late'>((resolve) => {
      stop = after(vaultWithinMs, () => resolve('late'));
    });
    try {
      const value = await Promise.race([work(vault).then((given) => ({ given })), late]);
      if (value === 'late') {
        onState('none');
        return null;
      }
      return { value: value.given };
    } catch (error) {
      onState(isFull(error) ? 'full' : 'none');
      return null;
    } finally {
      stop();
    }
  };
  return {
    attempt: async (work, otherwise) => (await tried(work))?.value ?? otherwise,
    write: async (work) => {
      const isKept = (await tried(work)) !== null;
      if (isKept) onState('kept');
      return isKept;
    },
  };
}

function isFull(error: unknown): boolean {
  return typeof error === 'object' && error !== null && 'name' in error && error.name === 'QuotaExceededError';
}
