/**
 * The same function, answering again from memory where it was asked the same. For pure functions of numbers and texts whose
 * answer costs much more than a look-up, such as calendar days in a zone. At most so many results are kept; when full, all are let go.
 */
export function remember<Args extends readonly (string | number)[], Result>(
  compute: (...args: Args) => Result,
  most = 512,
): (...args: Args) => Result {
  const kept = new Map<string, Result>();
  return (...args) => {
    const key = args.join('|');
    const known = kept.get(key);
    if (known !== undefined) return known;
    if (kept.size >= most) kept.clear();
    const result = compute(...args);
    kept.set(key, result);
    return result;
  };
}
