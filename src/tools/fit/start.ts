import type { SoilModelConstants } from '../../core/science/soil/temperature/model-constants.ts';

/** Where the search at 30 cm begins: the end of an earlier, longer search from plain guesses. */
const at30cm: SoilModelConstants = {
  depthM: 0.3,
  quickStep: 0.32,
  slowStep: 0.062,
  quickShare: 0.35,
  slowShare: 0.46,
  offsetC: 2.9,
  offsetCosC: -1.6,
  offsetSinC: -1,
  frostShare: 0.14,
  siteKept: 0.999,
  siteSdC: 0.8,
  siteNoiseC: 0.08,
  passingKept: 0.7,
  passingNoiseC: 0.33,
  quickShareSd: 0.15,
  slowShareSd: 0.2,
  quickShareNoise: 0.001,
  slowShareNoise: 0.001,
  summerNoise: 0.1,
  frostNoise: 0.2,
  firstWorth: 4,
  scaleWorth: 8,
  spotSdC: 0.04,
  reach80: 1.2816,
  reach95: 1.96,
};

/** Where the search begins at each depth that is fitted, by depth in m: nearer to the surface the air is felt sooner. */
export const starts: readonly SoilModelConstants[] = [
  at30cm,
  {
    ...at30cm,
    depthM: 0.1,
    quickStep: 0.68,
    slowStep: 0.14,
    quickShare: 0.62,
    slowShare: 0.28,
    offsetC: 2.2,
    offsetCosC: -2,
    offsetSinC: 0.25,
    passingKept: 0.33,
    passingNoiseC: 0.55,
    summerNoise: 1,
    spotSdC: 0.09,
  },
];
