import type { SoilModelConstants } from './model-constants.ts';

/** The two memories of the air on one day, C, and the model's middle of the soil temperature that follows. */
export interface Memories {
  readonly quickC: number;
  readonly slowC: number;
  readonly middleC: number;
}

/** Air as the ground feels it, C: of frost only a share goes down. */
export function feltByGround(airC: number, of: SoilModelConstants): number {
  return airC < 0 ? airC * of.frostShare : airC;
}

/** The two memories day by day from the air of each day, starting from given values, all C; `dayOfYear` is 1 to 366. */
export function remembered(
  of: SoilModelConstants,
  start: { readonly quickC: number; readonly slowC: number },
  days: readonly { readonly airC: number; readonly dayOfYear: number }[],
): readonly Memories[] {
  let { quickC, slowC } = start;
  return days.map(({ airC, dayOfYear }) => {
    const felt = feltByGround(airC, of);
    quickC += of.quickStep * (felt - quickC);
    slowC += of.slowStep * (felt - slowC);
    const angle = (2 * Math.PI * dayOfYear) / 365.25;
    const offset = of.offsetC + of.offsetCosC * Math.cos(angle) + of.offsetSinC * Math.sin(angle);
    return { quickC, slowC, middleC: offset + of.quickShare * quickC + of.slowShare * slowC };
  });
}
