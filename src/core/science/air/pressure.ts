import { inRange } from '../../units/in-range.ts';

/** Standard pressure at sea level in kPa (FAO-56 eq. 7 at 0 m). */
export const seaLevelPressureKPa = 101.3;

/** Mean air pressure in kPa at an elevation of -500 to 9,000 m (FAO-56 eq. 7). */
export function pressureAtElevation(elevationM: number): number {
  inRange('an elevation', elevationM, -500, 9000, 'm');
  return seaLevelPressureKPa * ((293 - 0.0065 * elevationM) / 293) ** 5.26;
}

/** Psychrometric constant in kPa/C at an air pressure of 30 to 110 kPa (FAO-56 eq. 8). */
export function psychrometricConstant(pressureKPa: number): number {
  return 0.000665 * inRange('an air pressure', pressureKPa, 30, 110, 'kPa');
}
