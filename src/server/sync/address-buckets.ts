import { createTokenBucket, type TokenBucket } from '../chat/token-bucket.ts';

/** Most addresses that are told apart; the one that asked first is forgotten first. */
const mostAddresses = 10_000;

/** A bucket for each address that asks. */
export interface AddressBuckets {
  /** True where one more request of this address may pass now. */
  readonly take: (address: string) => boolean;
}

/** Requests of one address at `perSecond`, with a burst at first; `now` gives seconds. */
export function createAddressBuckets(perSecond: number, burst: number, now: () => number): AddressBuckets {
  const buckets = new Map<string, TokenBucket>();
  return {
    take: (address) => {
      const bucket = buckets.get(address) ?? createTokenBucket(perSecond, burst, now);
      if (!buckets.has(address)) {
        buckets.set(address, bucket);
        const oldest = buckets.keys().next().value;
        if (buckets.size > mostAddresses && oldest !== undefined) buckets.delete(oldest);
      }
      return bucket.take();
    },
  };
}
