/**
 * Wraps a listener, synchronous or not, so that nothing thrown in it can end the process: it goes to `onFault`. A fault of
 * `onFault` itself is swallowed, for there is nobody left to tell.
 */
export function guard<Args extends readonly unknown[]>(
  onFault: (error: unknown) => void,
  listener: (...args: Args) => unknown,
): (...args: Args) => void {
  const tell = (error: unknown): void => {
    try {
      onFault(error);
    } catch {
      // Nobody is left to tell.
    }
  };
  return (...args) => {
    try {
      const result = listener(...args);
      if (result instanceof Promise) result.catch(tell);
    } catch (error) {
      tell(error);
    }
  };
}
