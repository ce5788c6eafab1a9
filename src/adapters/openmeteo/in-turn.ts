/** Most jobs that wait for their turn. */
const mostWaiting = 20;

/**
 * Lets one job run at a time, the others in order behind it, because the service serves one question at a time for an address.
 * With 20 waiting already, a further one is not run: `refuse` answers for it.
 */
export function inTurn() {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return async <T>(job: () => Promise<T>, refuse: () => T): Promise<T> => {
    if (waiting > mostWaiting) return refuse();
    waiting += 1;
    const mine = last.then(job).finally(() => {
      waiting -= 1;
    });
    last = mine.catch(() => undefined);
    return mine;
  };
}
