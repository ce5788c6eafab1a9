import type { Reading } from '../../facts/types.ts';
import type { UnderstoodReading } from './types.ts';

/** True where two readings say the same. */
export function isSameReading(a: Reading, b: Reading): boolean {
  return narrower(a, b) === 'same';
}

/** Which of two readings of one fact says more while both can be so; `conflict` where they cannot. */
export function narrower(a: Reading, b: Reading): 'first' | 'second' | 'same' | 'conflict' | 'apart' {
  if (a.type === 'number' && b.type === 'number') {
    return ofSpans([a.low ?? a.value, a.high ?? a.value], [b.low ?? b.value, b.high ?? b.value]);
  }
  if (a.type === 'choice' && b.type === 'choice') return ofSets(a.possible, b.possible);
  if (a.type === 'signs' && b.type === 'signs') return ofSigns(a, b);
  return 'conflict';
}

function ofSpans([aLow, aHigh]: readonly [number, number], [bLow, bHigh]: readonly [number, number]) {
  if (aLow === bLow && aHigh === bHigh) return 'same';
  if (aLow >= bLow && aHigh <= bHigh) return 'first';
  if (bLow >= aLow && bHigh <= aHigh) return 'second';
  return 'conflict';
}

function ofSets(a: readonly string[], b: readonly string[]) {
  const isIn = (one: readonly string[], other: readonly string[]) => one.every((choice) => other.includes(choice));
  if (isIn(a, b)) return isIn(b, a) ? 'same' : 'first';
  return isIn(b, a) ? 'second' : 'conflict';
}

type Signs = Extract<Reading, { type: 'signs' }>;

function ofSigns(a: Signs, b: Signs) {
  const clash = (one: Signs, other: Signs) =>
    one.present.some((sign) => (other.complete ? !other.present.includes(sign) : other.absent.includes(sign)));
  if (clash(a, b) || clash(b, a)) return 'conflict';
  const isSame =
    a.complete === b.complete && ofSets(a.present, b.present) === 'same' && ofSets(a.absent, b.absent) === 'same';
  return isSame ? 'same' : 'apart';
}

/** A reading with whether it replaces what the same text said before of its fact. */
export interface Offered extends UnderstoodReading {
  readonly replaces: boolean;
}

/** One reading a fact and time: what says more of two that agree; two that contradict each other are both left out. */
export function mergeReadings(offered: readonly Offered[]): {
  readings: readonly UnderstoodReading[];
  dropped: readonly string[];
} {
  let kept: Offered[] = [];
  const dropped: string[] = [];
  const conflicted = new Set<string>();
  for (const one of offered) {
    if (one.replaces)
      kept = kept.filter((other) => !isOfSame(one, other) || narrower(other.reading, one.reading) === 'apart');
    if (conflicted.has(keyOf(one)) && !one.replaces) {
      dropped.push(one.quote);
      continue;
    }
    const rivals = kept.filter((other) => isOfSame(one, other));
    const relations = rivals.map((other) => narrower(other.reading, one.reading));
    const joined = rivals.length === 1 && relations[0] === 'conflict' ? eitherOfTwo(rivals[0]!, one) : null;
    if (joined !== null) {
      kept = kept.map((other) => (other === rivals[0] ? joined : other));
      continue;
    }
    if (relations.includes('conflict')) {
      const against = rivals.filter((_, at) => relations[at] === 'conflict');
      dropped.push(...against.map(({ quote }) => quote), one.quote);
      kept = kept.filter((other) => !against.includes(other));
      if (one.reading.type !== 'signs') conflicted.add(keyOf(one));
      continue;
    }
    const weaker = rivals.filter(
      (other, at) => relations[at] === 'second' || (relations[at] === 'same' && other.doubtful),
    );
    kept = kept.filter((other) => !weaker.includes(other));
    if (relations.every((relation, at) => relation === 'apart' || weaker.includes(rivals[at]!))) kept.push(one);
  }
  const lost = new Set(dropped);
  kept = kept.filter((one) => !isToldWithLost(one, lost));
  return { readings: kept.map(({ replaces: _, ...reading }) => reading), dropped };
}

/** Facts that are so where one of several things is there: either of the weeds. */
const anyCounts: ReadonlySet<string> = new Set(['weed.present']);

/** Two that contradict each other and yet are one: a thing that is there beside one that is not; "four, maybe five"; "none of those, just cracks". */
function eitherOfTwo(a: Offered, b: Offered): Offered | null {
  if (b.replaces || a.replaces) return null;
  if (anyCounts.has(a.fact) && a.reading.type === 'choice' && b.reading.type === 'choice') {
    return [a, b].find(({ reading }) => reading.type === 'choice' && reading.possible.includes('yes')) ?? null;
  }
  if (a.reading.type === 'signs' && b.reading.type === 'signs') {
    const isNoneThenSome = a.reading.complete && a.reading.present.length === 0 && !b.reading.complete;
    return isNoneThenSome ? { ...b, reading: { ...b.reading, absent: [], complete: true } } : null;
  }
  if (a.reading.type !== 'number' || b.reading.type !== 'number' || !b.doubtful) return null;
  const { value: first, low = first, high = first } = a.reading;
  const second = b.reading.value;
  if (!(second > first && second <= first + 3)) return null;
  const most = Math.max(high, second);
  const span = { low, high: most, value: Number(((low + most) / 2).toPrecision(12)) };
  return { ...a, reading: { type: 'number', ...span }, quote: `${a.quote}, ${b.quote}` };
}

/** Facts that one answer tells together, as the amount and the heaviest hour of the rain to come. */
const together: readonly (readonly string[])[] = [['rain.next48hMm', 'rain.next48hMaxMmPerH']];

/** True for what words told of which another half contradicted what was said. */
function isToldWithLost({ fact, quote }: Offered, lost: ReadonlySet<string>): boolean {
  return lost.has(quote) && together.some((facts) => facts.includes(fact));
}

const keyOf = ({ fact, agoHours = 0, depthCm = 30 }: Offered) => `${fact} ${agoHours} ${depthCm}`;

function isOfSame(a: Offered, b: Offered): boolean {
  return keyOf(a) === keyOf(b);
}
