import { ceilTo, floorTo, roundTo } from '../units/round.ts';

/** Most decimals that a person is shown. */
const mostDecimals = 4;

/**
 * A number for a person, to `decimals` places; to more where rounding would put it on or across one of `limits` that it is
 * not at (10.04 beside a limit of 10 stays 10.04).
 */
export function showNumber(value: number, decimals: number, limits: readonly number[] = []): string {
  for (let places = decimals; places < mostDecimals; places++) {
    const shown = roundTo(value, 10 ** -places);
    if (limits.every((limit) => Math.sign(shown - limit) === Math.sign(value - limit))) return shown.toFixed(places);
  }
  return roundTo(value, 10 ** -mostDecimals).toFixed(mostDecimals);
}

/** The lower end of a band, rounded down for a person. */
export function showLow(value: number, decimals: number): string {
  return floorTo(value, 10 ** -decimals).toFixed(decimals);
}

/** The upper end of a band, rounded up for a person. */
export function showHigh(value: number, decimals: number): string {
  return ceilTo(value, 10 ** -decimals).toFixed(decimals);
}

/** A number with as many decimals as it has, at least `least`, at most four. */
export function showWhole(value: number, least = 0): string {
  const decimals = String(roundTo(value, 10 ** -mostDecimals)).split('.')[1]?.length ?? 0;
  return roundTo(value, 10 ** -mostDecimals).toFixed(Math.max(least, decimals));
}
