import { aboveZero, inRange } from '../../units/in-range.ts';

/**
 * Leaching index GUS = log10(half-life) (4 - log10(Koc)) (Gustafson 1989, Environ. Toxicol. Chem. 8:339-357): above 2.8 likely to
 * leach, below 1.8 unlikely. Half-life in soil above 0 days, Koc above 0 L/kg. An illustration that never clears a field: it
 * knows nothing of drains and cracks, and for propyzamide the published half-lives carry it from below 1.8 to above 2.
 */
export function leachingIndex(halfLifeDays: number, kocLPerKg: number): number {
  return (
    Math.log10(aboveZero('a half-life', halfLifeDays, 'days')) * (4 - Math.log10(aboveZero('a Koc', kocLPerKg, 'L/kg')))
  );
}

/** Share of an amount left after so many days (0 or more) of first-order decay with a half-life: `exp(-ln 2 t / DT50)`. */
export function shareLeft(days: number, halfLifeDays: number): number {
  inRange('a number of days', days, 0, Number.MAX_VALUE, 'days');
  return Math.exp((-Math.LN2 * days) / aboveZero('a half-life', halfLifeDays, 'days'));
}
