import { ceilTo, floorTo, roundTo } from '../units/round.ts';
import type { PageCatalogue } from './catalogue.ts';

/** Most decimals that a person is shown. */
const mostDecimals = 4;

/**
 * A number for a person, to `decimals` places; to more where rounding would put it on or across one of `limits` that it is
 * not at (10.04 beside a limit of 10 stays 10.04).
 */
export function showNumber(
  words: PageCatalogue,
  value: number,
  decimals: number,
  limits: readonly number[] = [],
): string {
  for (let places = decimals; places < mostDecimals; places++) {
    const shown = roundTo(value, placeOf(places));
    if (limits.every((limit) => Math.sign(shown - limit) === Math.sign(value - limit)))
      return marked(words, shown.toFixed(places));
  }
  return marked(words, roundTo(value, placeOf(mostDecimals)).toFixed(mostDecimals));
}

/** The lower end of a band, rounded down for a person. */
export function showLow(words: PageCatalogue, value: number, decimals: number): string {
  return marked(words, floorTo(value, placeOf(decimals)).toFixed(decimals));
}

/** The upper end of a band, rounded up for a person. */
export function showHigh(words: PageCatalogue, value: number, decimals: number): string {
  return marked(words, ceilTo(value, placeOf(decimals)).toFixed(decimals));
}

/** A number with as many decimals as it has, at least `least`, at most four. */
export function showWhole(words: PageCatalogue, value: number, least = 0): string {
  const decimals = String(roundTo(value, placeOf(mostDecimals))).split('.')[1]?.length ?? 0;
  return marked(words, roundTo(value, placeOf(mostDecimals)).toFixed(Math.max(least, decimals)));
}

/** The value of the last of so many decimal places. Read from text, since 10 ** -4 is not 0.0001 in every engine. */
function placeOf(decimals: number): number {
  return Number(`1e-${decimals}`);
}

/** A number as written in a program, with the decimal mark of the language. */
export function marked({ values }: PageCatalogue, written: string): string {
  return written.replace('.', values.decimalMark);
}
