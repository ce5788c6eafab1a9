import type { MetresPerSecond } from '../../units/brands.ts';
import { inRange } from '../../units/in-range.ts';

/** The terms of the FAO Penman-Monteith equation. */
export interface PenmanMonteithTerms {
  /** Net radiation, and heat flowing into the soil: MJ/m2/day, or MJ/m2/h for an hour. */
  readonly netRadiation: number;
  readonly soilHeat: number;
  /** Mean air temperature at 2 m, C. */
  readonly temperatureC: number;
  /** Wind at 2 m. */
  readonly windAt2m: MetresPerSecond;
  /** Saturation and actual vapour pressure, kPa. */
  readonly saturationKPa: number;
  readonly actualKPa: number;
  /** Slope of the saturation vapour pressure curve, and psychrometric constant, kPa/C. */
  readonly slope: number;
  readonly psychrometric: number;
}

/** Reference evapotranspiration of a day in mm/day (FAO-56 eq. 6); may be slightly below 0 where dew forms. */
export function referenceEvapotranspirationDaily(terms: PenmanMonteithTerms): number {
  return penmanMonteith(terms, 900);
}

/** Reference evapotranspiration of an hour in mm/h (FAO-56 eq. 53, coefficient 37); slightly below 0 where dew forms. */
export function referenceEvapotranspirationHourly(terms: PenmanMonteithTerms): number {
  return penmanMonteith(terms, 37);
}

function penmanMonteith(terms: PenmanMonteithTerms, coefficient: number): number {
  const { netRadiation, soilHeat, slope, psychrometric: gamma } = terms;
  const temperature = inRange('an air temperature', terms.temperatureC, -60, 60, 'C');
  const wind = inRange('a wind at 2 m', terms.windAt2m, 0, 60, 'm/s');
  const deficit =
    inRange('a saturation vapour pressure', terms.saturationKPa, 0, 20, 'kPa') -
    inRange('a vapour pressure', terms.actualKPa, 0, 20, 'kPa');
  inRange('a net radiation', netRadiation, -20, 40, 'MJ/m2');
  inRange('a soil heat flux', soilHeat, -20, 40, 'MJ/m2');
  inRange('a slope of the vapour pressure curve', slope, 0.001, 2, 'kPa/C');
  inRange('a psychrometric constant', gamma, 0.01, 0.1, 'kPa/C');
  const energy = 0.408 * slope * (netRadiation - soilHeat);
  const drying = gamma * (coefficient / (temperature + 273)) * wind * deficit;
  return (energy + drying) / (slope + gamma * (1 + 0.34 * wind));
}
