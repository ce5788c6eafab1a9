import type { SoilModelConstants } from './model-constants.ts';

/** Constants at 30 cm. */
export const soilConstants30cm: SoilModelConstants = {
  depthM: 0.3,
  quickStep: 0.3214,
  slowStep: 0.06167,
  quickShare: 0.3499,
  slowShare: 0.4625,
  offsetC: 2.865,
  offsetCosC: -1.6,
  offsetSinC: -0.985,
  frostShare: 0.1365,
  siteKept: 0.999,
  siteSdC: 0.2234,
  siteNoiseC: 0.0794,
  passingKept: 0.7011,
  passingNoiseC: 0.3342,
  quickShareSd: 0.1564,
  slowShareSd: 0.205,
  quickShareNoise: 0.0008161,
  slowShareNoise: 0.000752,
  spotSdC: 0.04287,
  reach80: 1.2816,
  reach95: 1.96,
};
