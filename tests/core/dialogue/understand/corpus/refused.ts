import type { Utterance } from '../utterance.ts';

/** What cannot be taken, with its reason. */
export const refused: readonly Utterance[] = [
  ['soil-temperature', '7 at 10 cm', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', '7 at 10', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', '4 inches down 7 degrees', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', 'at 10 cm, 7 degrees', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', '8 at 20-30 cm', '#DEPTH_NOT_30CM'],
  [null, 'soil 9 at 15cm', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', '7 at 2 cm at 3 pm', '#DEPTH_NOT_30CM'],
  ['soil-temperature', '7 at 120 cm', '#DEPTH_NOT_30CM'],
  ['soil-temperature', '95', '#FACT_OUT_OF_RANGE'],
  ['soil-temperature', '-40', '#FACT_OUT_OF_RANGE'],
  ['true-leaves', '-3', '#FACT_OUT_OF_RANGE'],
  ['true-leaves', '45', '#FACT_OUT_OF_RANGE'],
  ['humidity', '120', '#FACT_OUT_OF_RANGE'],
  ['slope', '-3', '#FACT_OUT_OF_RANGE'],
  ['wind', '300', '#FACT_OUT_OF_RANGE'],
  ['area', '-1', '#FACT_OUT_OF_RANGE'],
  ['soil-temperature', '500 F', '#FACT_OUT_OF_RANGE'],
  ['soil-temperature', '9 degrees at half a metre', '#DEPTH_NEEDS_HOUR'],
  ['soil-temperature', '-500 C', '#FACT_OUT_OF_RANGE'],
];
