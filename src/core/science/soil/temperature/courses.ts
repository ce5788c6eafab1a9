import { type Draw, drawsFrom, rootOf } from './draws.ts';
import { type Filtered, ownLoadings } from './filter.ts';
import type { SoilModelConstants } from './model-constants.ts';
import { errorFelt, noiseFactor, place, size } from './state.ts';

/**
 * Possible courses of the soil from the day of asking on, each as departures of every day from its middle in standard errors:
 * drawn from the same model as the band, so days hang together as they do there. The same input gives the same courses.
 */
export function possibleCourses(filtered: Filtered, of: SoilModelConstants, count: number): readonly Float64Array[] {
  const draw = drawsFrom(20_261_125);
  const root = rootOf(filtered.tracked.state.covariance, size);
  const through = filtered.memories
    .slice(filtered.today)
    .map(({ quickC, slowC }) => ownLoadings(filtered, of, quickC, slowC));
  const steps = stepsOf(filtered, of);
  const courses = Array.from({ length: count }, () => oneCourse(of, root, through, steps, draw));
  for (let day = 0; day < through.length; day += 1) {
    const mean = courses.reduce((sum, course) => sum + course[day]!, 0) / count;
    const sd = Math.sqrt(courses.reduce((sum, course) => sum + (course[day]! - mean) ** 2, 0) / count) || 1;
    for (const course of courses) course[day] = (course[day]! - mean) / sd;
  }
  return courses;
}

/** What moves a course from one day to the next: noise of the season, and the error of the air with what the ground feels of it. */
interface Step {
  readonly noise: number;
  readonly kept: number;
  readonly airSd: number;
  readonly felt: number;
}

function stepsOf({ air, memories, today }: Filtered, of: SoilModelConstants): readonly Step[] {
  let total = 0;
  return air.slice(today).map(({ airC, dayOfYear, error: { kept, variance } }, ahead) => {
    total = total * kept ** 2 + variance;
    const felt = total === 0 ? 1 : errorFelt(of, airC, Math.sqrt(total));
    return {
      noise: noiseFactor(of, dayOfYear, memories[today + ahead]!.slowC),
      kept,
      airSd: Math.sqrt(variance),
      felt,
    };
  });
}

function oneCourse(
  of: SoilModelConstants,
  root: Float64Array,
  through: readonly (readonly number[])[],
  steps: readonly Step[],
  draw: Draw,
): Float64Array {
  const drawn = Float64Array.from({ length: size }, draw);
  const state = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    for (let k = 0; k <= row; k += 1) state[row]! += root[row * size + k]! * drawn[k]!;
  }
  const course = new Float64Array(through.length);
  for (let ahead = 0; ahead < through.length; ahead += 1) {
    if (ahead > 0) step(state, of, steps[ahead]!, draw);
    const loading = through[ahead]!;
    for (let row = 0; row < size; row += 1) course[ahead]! += loading[row]! * state[row]!;
  }
  return course;
}

function step(state: Float64Array, of: SoilModelConstants, { noise, kept, airSd, felt }: Step, draw: Draw): void {
  state[place.site] = of.siteKept * state[place.site]! + of.siteNoiseC * noise * draw();
  state[place.passing] = of.passingKept * state[place.passing]! + of.passingNoiseC * noise * draw();
  state[place.quickShare]! += of.quickShareNoise * noise * draw();
  state[place.slowShare]! += of.slowShareNoise * noise * draw();
  state[place.air] = kept * state[place.air]! + airSd * draw();
  state[place.quick]! += of.quickStep * (felt * state[place.air]! - state[place.quick]!);
  state[place.slow]! += of.slowStep * (felt * state[place.air]! - state[place.slow]!);
}
