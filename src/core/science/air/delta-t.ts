import { type MoistAir, wetBulb } from './wet-bulb.ts';

/**
 * Delta T in C (0 or more): dry less wet bulb, a sign of how fast drops dry out. Taken from the psychrometric wet bulb, not
 * from Stull's fitted formula, whose error falls on the wrong side of the 2 C line just where a cool autumn lies: at 10 C and
 * 80 % it gives 2.07, the psychrometer 1.69.
 */
export function deltaT(air: MoistAir): number {
  return air.temperatureC - wetBulb(air);
}
