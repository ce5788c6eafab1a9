import type { SoilModelConstants } from './model-constants.ts';

/** Constants at 30 cm. */
export const soilConstants30cm: SoilModelConstants = {
  depthM: 0.3,
  quickStep: 0.31,
  slowStep: 0.0677,
  quickShare: 0.661,
  slowShare: 0.154,
  offsetC: 3.02,
  offsetCosC: -1.9,
  offsetSinC: -1.05,
  frostShare: 0.179,
  siteKept: 0.995,
  siteSdC: 2,
  siteNoiseC: 0.06,
  passingKept: 0.723,
  passingNoiseC: 0.3,
  quickShareSd: 0.1,
  slowShareSd: 0.2,
  quickShareNoise: 0.003,
  slowShareNoise: 0.004,
  spotSdC: 0.05,
  reach80: 1.2816,
  reach95: 1.96,
};
