import { inRange } from '../../units/in-range.ts';

/**
 * Wet-bulb temperature in C by the fitted formula of Stull 2011 (J. Appl. Meteorol. Climatol. 50:2267-2269, eq. 1), for 5 to
 * 99 % humidity and -20 to 50 C at sea level; off by -1.0 to +0.65 C. Kept for comparison only: `wetBulb` is used.
 */
export function wetBulbStull(temperatureC: number, humidityPercent: number): number {
  const t = inRange('an air temperature', temperatureC, -20, 50, 'C');
  const rh = inRange('a relative humidity', humidityPercent, 5, 99, '%');
  return (
    t * Math.atan(0.151977 * Math.sqrt(rh + 8.313659)) +
    Math.atan(t + rh) -
    Math.atan(rh - 1.676331) +
    0.00391838 * rh ** 1.5 * Math.atan(0.023101 * rh) -
    4.686035
  );
}
