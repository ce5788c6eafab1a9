/** A number as written, with a band where it was written as a range, and how far it may be rounded. */
export interface Numeral {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** How far the number as given may be rounded. */
  readonly halfStep: number;
}

const vulgar: Readonly<Record<string, number>> = { '\u00bd': 0.5, '\u00bc': 0.25, '\u00be': 0.75 };
const plain = /^(?:0|[1-9]\d{0,5})(?:\.\d{1,4})?$/;
const decimalComma = /^(?:0|[1-9]\d{0,2}),\d{1,2}$/;
const thousands = /^[1-9]\d{0,2}(?:,\d{3})+$/;
const fraction = /^([1-9])\/([2-8])$/;

/** Half a unit of the last digit that is not zero, a tenth of the number at most: 9 gives 0.5, 9.2 gives 0.05, 120 gives 5, 100 gives 10. */
export function halfStepOf(written: string): number {
  const [whole = '', decimals = ''] = written.split('.');
  if (decimals !== '') return 0.5 * 10 ** -decimals.length;
  const zeros = whole.length - whole.replace(/0+$/, '').length;
  return zeros === whole.length ? 0.5 : Math.max(0.5, Math.min(0.5 * 10 ** zeros, Number(whole) / 10));
}

/** The number that a run of digits and signs stands for, or null where it is none: dates, clock times, telephone numbers. */
export function readNumeral(written: string): Numeral | null {
  const single = readSingle(written);
  if (single !== null) return single;
  const [from, to, ...rest] = written.split('-');
  if (from === undefined || to === undefined || rest.length > 0) return null;
  const [low, high] = [readSingle(from), readSingle(to)];
  if (low === null || high === null || low.value >= high.value) return null;
  return rangeOf(low, high);
}

/** Two numbers as one range: the middle with the band. */
export function rangeOf(low: Numeral, high: Numeral): Numeral {
  return {
    value: Number(((low.value + high.value) / 2).toPrecision(12)),
    low: low.low ?? low.value,
    high: high.high ?? high.value,
    halfStep: high.halfStep,
  };
}

function readSingle(written: string): Numeral | null {
  const part = vulgar[written];
  if (part !== undefined) return { value: part, halfStep: 0.05 };
  if (plain.test(written)) return { value: Number(written), halfStep: halfStepOf(written) };
  if (decimalComma.test(written)) return readSingle(written.replace(',', '.'));
  if (thousands.test(written)) return readSingle(written.replaceAll(',', ''));
  const [, over, under] = fraction.exec(written) ?? [];
  if (over === undefined || under === undefined || Number(over) >= Number(under)) return null;
  return { value: Number(over) / Number(under), halfStep: 0.05 };
}
