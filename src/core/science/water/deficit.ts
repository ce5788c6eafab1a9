import { inRange } from '../../units/in-range.ts';

/** A day's end of the soil moisture balance, mm. */
export interface DeficitDay {
  /** Rain still needed to reach field capacity, 0 or more. */
  readonly deficitMm: number;
  /** Water beyond field capacity that the day brought: what runs to the drains. */
  readonly surplusMm: number;
}

/**
 * One day of the soil moisture deficit: less by rain, more by evapotranspiration of the crop (mm; below 0 where dew forms), never
 * below 0. What is beyond field capacity is surplus (the balance of FAO-56 eq. 85 with run-off, rise and irrigation left out).
 */
export function stepDeficit(deficitMm: number, rainMm: number, evapotranspirationMm: number): DeficitDay {
  inRange('a soil moisture deficit', deficitMm, 0, 1000, 'mm');
  inRange('a rain', rainMm, 0, 2000, 'mm');
  inRange('an evapotranspiration', evapotranspirationMm, -5, 30, 'mm');
  const balance = deficitMm - rainMm + evapotranspirationMm;
  return { deficitMm: Math.max(0, balance), surplusMm: Math.max(0, -balance) };
}
