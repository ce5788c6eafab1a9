/** A standard normal number at each call: the same row for the same seed, everywhere. */
export type Draw = () => number;

/** Row of standard normal numbers from a whole seed: 32-bit shift register (Marsaglia 2003, J. Stat. Softw. 8:14), Box & Muller 1958. */
export function drawsFrom(seed: number): Draw {
  let bits = seed >>> 0 || 1;
  const share = () => {
    bits ^= bits << 13;
    bits ^= bits >>> 17;
    bits ^= bits << 5;
    return ((bits >>> 0) + 0.5) / 4_294_967_296;
  };
  return () => Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share());
}

/** Lower triangle (by rows) whose product with its own transpose is a covariance of `size` rows; directions without spread stay 0. */
export function rootOf(covariance: Float64Array, size: number): Float64Array {
  const root = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let left = covariance[row * size + column]!;
      for (let k = 0; k < column; k += 1) left -= root[row * size + k]! * root[column * size + k]!;
      const pivot = root[column * size + column]!;
      if (row === column) root[row * size + row] = Math.sqrt(Math.max(0, left));
      else root[row * size + column] = pivot > 1e-9 ? left / pivot : 0;
    }
  }
  return root;
}
