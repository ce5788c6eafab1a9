/** Lets messages through at a mean rate, with a burst at first. */
export interface TokenBucket {
  /** True where one more may pass now. */
  readonly take: () => boolean;
}

/** A bucket of `burst` tokens that fills by `perSecond`; `now` gives seconds. A clock that goes back fills nothing. */
export function createTokenBucket(perSecond: number, burst: number, now: () => number): TokenBucket {
  let tokens = burst;
  let filledAt = now();
  return {
    take: () => {
      const at = now();
      tokens = Math.min(burst, tokens + Math.max(0, at - filledAt) * perSecond);
      filledAt = at;
      if (tokens < 1) return false;
      tokens -= 1;
      return true;
    },
  };
}
