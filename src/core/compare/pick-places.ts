/**
 * Pairs of places below `count`, each pair once at most, at most `most` of those that `fits`: all of them where there are so few, else
 * a sample that a seed fixes. The sample steps through all pairs by a number that shares no divisor with how many there are.
 */
export function pickPlaces(
  count: number,
  most: number,
  seed: number,
  fits: (one: number, other: number) => boolean,
): (readonly [number, number])[] {
  const all = (count * (count - 1)) / 2;
  const picked: (readonly [number, number])[] = [];
  const step = coprimeNear(Math.floor(all * goldenShare), all);
  let at = Math.abs(Math.trunc(seed)) % all;
  for (let tried = 0; tried < all && picked.length < most; tried += 1) {
    const pair = pairAt(at);
    if (fits(...pair)) picked.push(pair);
    at = (at + step) % all;
  }
  return picked;
}

/** Steps of this share of the whole spread evenly however many are taken. */
const goldenShare = (Math.sqrt(5) - 1) / 2;

/** The pair at a place of the list (0,1), (0,2), (1,2), (0,3), ... */
function pairAt(place: number): readonly [number, number] {
  const other = Math.floor((1 + Math.sqrt(1 + 8 * place)) / 2);
  return [place - (other * (other - 1)) / 2, other];
}

function coprimeNear(wanted: number, all: number): number {
  let step = wanted;
  while (divisorOf(step, all) > 1) step += 1;
  return step;
}

function divisorOf(one: number, other: number): number {
  return other === 0 ? one : divisorOf(other, one % other);
}
